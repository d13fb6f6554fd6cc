#include "app/gui/club/import_run.h"
#include "app/text/cautions.h"
#include "tests/app/gui/gear/gear_story.h"

#include <fstream>

using support::GearStory;

namespace {

// Of demo/club/items.csv.
constexpr const char* withdrawnKnife = "KF9DPHVFJK"; // unserviceable
constexpr const char* goodOar = "KFGQ9XHHKJ";

class GearCautions : public GearStory {
protected:
    void openItem(const char* code) {
        typeInto("kitSearchEdit", code);
        settle();
        press(Qt::Key_Return);
        ASSERT_TRUE(child("kitItemPanel")->isVisible());
    }
    /// What the window says when the folder was imported.
    QString said(const std::filesystem::path& csv) {
        app::ClubThread club;
        bool isOpen = false;
        club.open(file(), [&](const core::Outcome& opened) { isOpen = static_cast<bool>(opened); });
        EXPECT_TRUE(support::waitFor([&] { return isOpen; }));
        app::ImportRun run(club);
        QString sentence;
        QObject::connect(&run, &app::ImportRun::finished, [&](const QString& told) { sentence = told; });
        run.start(QString::fromStdString(csv.string()), today());
        EXPECT_TRUE(support::waitFor([&] { return !sentence.isEmpty(); }));
        return sentence;
    }
    std::filesystem::path sheet(const char* name, const char* rows) {
        const auto in = folder() / name;
        std::filesystem::create_directories(in);
        std::ofstream(in / name) << rows;
        return in;
    }
};

} // namespace

TEST_F(GearCautions, serviceIsForWhoeverMayDoIt) {
    openOffice("bench");
    EXPECT_TRUE(textOf("benchCautionLabel").contains(app::serviceCaution()));
}

TEST_F(GearCautions, aRearmTakesNothingThatWasUsed) {
    openOffice("bench");
    choose("benchRuleBox", "float test");
    EXPECT_FALSE(child("benchRearmLabel")->isVisible());
    choose("benchRuleBox", "rearm");
    EXPECT_TRUE(child("benchRearmLabel")->isVisible());
    EXPECT_EQ(textOf("benchRearmLabel"), app::rearmCaution());
}

TEST_F(GearCautions, releaseIsForWhoeverMayDoIt) {
    openOffice("kit");
    openItem(goodOar);
    EXPECT_FALSE(child("kitReleaseCautionLabel")->isVisible()) << "nothing is to be released";
    openItem(withdrawnKnife);
    EXPECT_TRUE(child("kitReleaseCautionLabel")->isVisible());
    EXPECT_EQ(textOf("kitReleaseCautionLabel"), app::serviceCaution());
}

TEST_F(GearCautions, aPlanKnowsNoSizesAndHoldsNothingBackForTheLog) {
    openOffice("ready");
    EXPECT_TRUE(textOf("readyCautionLabel").contains(app::makeReadyCaution()));
    EXPECT_TRUE(textOf("readyCautionLabel").contains(app::launchCaution()));
}

TEST_F(GearCautions, aLastingCurveIsNoReasonToLengthenARule) {
    openOffice("replace");
    EXPECT_EQ(textOf("replaceLifeCautionLabel"), app::lastingCaution());
}

TEST_F(GearCautions, theEarlierOfTwoDaysHolds) {
    openOffice("due");
    EXPECT_TRUE(textOf("dueCautionLabel").contains(app::dueCaution()));
}

TEST_F(GearCautions, aToleranceMayNotBeAllowed) {
    const QString rules =
        said(sheet("life_rules.csv", "kit_type,rule,kind,n,source\noar,retire,from_made,240,example\n"));
    EXPECT_TRUE(rules.contains(app::toleranceCaution())) << rules.toStdString();
    const QString places = said(sheet("places.csv", "place\nLoft\n"));
    EXPECT_TRUE(places.startsWith("Imported")) << places.toStdString();
    EXPECT_FALSE(places.contains(app::toleranceCaution()));
}
