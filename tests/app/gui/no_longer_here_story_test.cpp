#include "app/gui/gear/office/gear_office.h"
#include "core/club/club_register.h"
#include "tests/app/gui/window_story.h"

#include <QComboBox>

#include <fstream>

namespace {

// docs/rules.md, "No longer here", where a crew stands.

class NoLongerHereStory : public support::WindowStory {
protected:
    void SetUp() override {
        support::WindowStory::SetUp();
        std::filesystem::create_directories(folder() / "ends");
        std::ofstream(folder() / "ends" / "boats.csv") << "boat,until\nDabchick,2026-03-13\n";
        std::ofstream(folder() / "ends" / "people.csv")
            << "person,until\nSami Reeve,2026-03-13\nHal Okoro,2026-03-14\n";
        const auto plan =
            stored(core::Club::Access::ReadWrite).register_().importCsv(folder() / "ends", today(), false);
        ASSERT_TRUE(plan && plan->rejected.empty());
        openWindow();
    }
    static QStringList textsOf(const QComboBox* box) {
        QStringList texts;
        for (int i = 0; box && i < box->count(); ++i)
            texts << box->itemText(i);
        return texts;
    }
};

TEST_F(NoLongerHereStory, aBoatIsNotOnTheBoardAndItsTagSaysWhy) {
    EXPECT_EQ(window().findChild<app::BoatStrip*>("boatStrip Dabchick"), nullptr);
    ASSERT_NE(window().findChild<app::BoatStrip*>("boatStrip Grebe"), nullptr);
    auto* label = child<QLabel>("boardSaidLabel");
    ASSERT_NE(label, nullptr);
    typeAsScanner("BXSW78G7S1");
    EXPECT_TRUE(support::waitFor([&] {
        return label->text().contains("'Dabchick' is no longer here") && label->text().contains("2026-03-13");
    })) << label->text().toStdString();
}

TEST_F(NoLongerHereStory, aPersonIsNotOfferedAndTheTagSaysWhy) {
    openBoat("Grebe");
    const QStringList drivers = textsOf(child<QComboBox>("driverBox"));
    EXPECT_FALSE(drivers.contains("Sami Reeve"));
    EXPECT_TRUE(drivers.contains("Hal Okoro"));
    scanByHand("PZ3VKS21SH");
    EXPECT_TRUE(said().contains("Sami Reeve is no longer here")) << said().toStdString();
    scanByHand("P4K3DXDST4");
    EXPECT_TRUE(said().contains("Hal Okoro is aboard")) << said().toStdString();
}

TEST_F(NoLongerHereStory, theOfficerAtWorkIsSomebodyWhoIsHere) {
    auto* office = window().findChild<app::GearOffice*>();
    office->showPage("missing");
    auto* officers = window().findChild<QComboBox*>("officerBox");
    ASSERT_TRUE(support::waitFor([&] { return officers->count() > 2; }));
    EXPECT_FALSE(textsOf(officers).contains("Sami Reeve"));
    EXPECT_TRUE(textsOf(officers).contains("Hal Okoro"));
}

} // namespace
