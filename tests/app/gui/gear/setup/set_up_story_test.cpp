#include "core/answers/set_up.h"
#include "core/club/club_kit.h"
#include "core/club/club_register.h"
#include "tests/app/gui/gear/gear_story.h"

#include "app/gui/gear/setup/set_up_notes.h"
#include "app/gui/gear/setup/set_up_page.h"

#include <QFile>
#include <QSpinBox>

#include <algorithm>
#include <fstream>
#include <numeric>

using support::GearStory;

namespace {

// Of demo/club: three boats, and the club that trains with them.
class SetUpStory : public GearStory {
protected:
    void import(const char* name, const std::string& rows) {
        const auto more = folder() / "more";
        std::filesystem::create_directories(more);
        std::ofstream(more / name) << rows;
        const auto plan = stored(core::Club::Access::ReadWrite).register_().importCsv(more, today(), false);
        ASSERT_TRUE(plan && plan->rejected.empty());
        std::filesystem::remove_all(more);
    }
    QString titleOf(int step) {
        return child<QWidget>(QStringLiteral("setUpRow %1").arg(step).toUtf8().constData())
            ->findChild<QLabel*>("setUpTitleLabel")
            ->text();
    }
    QString stateOf(int step) {
        return child<QWidget>(QStringLiteral("setUpRow %1").arg(step).toUtf8().constData())
            ->findChild<QLabel*>("setUpStateLabel")
            ->text();
    }
    std::vector<int> lackingOf(const char* boat) {
        std::vector<int> lacking;
        const core::Club club = stored();
        const auto lines = club.kit().fitOutOf(boat);
        for (const core::FitOutLine& each : lines->lines)
            lacking.push_back(each.lacking());
        return lacking;
    }
    void fitOutHeron() {
        import("boats.csv", "boat,boat_class\nHeron,inflatable\n");
        openOffice("setup", choosers());
        pressButton("setUpButton 2");
        ASSERT_TRUE(child("fitOutPanel")->isVisible());
        choose("fitOutHomeBox", "Heron");
    }
    app::Choosers choosers() {
        app::Choosers choosers;
        choosers.saveFile = [this](QWidget*, const QString&) { return pathOf("tags.pdf"); };
        return choosers;
    }
    void goTo(const QString& key) {
        auto* list = child<app::RowList>("fitOutList");
        auto* model = static_cast<app::RowListModel*>(list->model());
        ASSERT_GE(model->indexOfKey(key), 0) << key.toStdString();
        list->setFocus();
        press(Qt::Key_Home);
        for (int i = 0; i < model->rowCount() && list->currentKey() != key; ++i)
            press(Qt::Key_Down);
        ASSERT_EQ(list->currentKey(), key);
    }
    QString keyOfLine(const QString& kitType) {
        for (const app::ListRow& row : rowsIn("fitOutList"))
            if (row.title == kitType) return row.key;
        return {};
    }
    std::vector<core::Item> kitOf(const std::string& boat) {
        std::vector<core::Item> kit = stored().kit().all();
        std::erase_if(kit, [&](const core::Item& item) { return item.boat != boat; });
        return kit;
    }
};

} // namespace

TEST_F(SetUpStory, everyStepSaysHowItStands) {
    openOffice("setup");
    EXPECT_EQ(titleOf(1), "Boats: done");
    EXPECT_EQ(stateOf(1), "3 boats are in the register.");
    EXPECT_EQ(titleOf(3), "Rules looked at: done");
    EXPECT_EQ(titleOf(4), "Tags printed: still to do");
    EXPECT_EQ(titleOf(5), "First check signed: still to do");
    import("boats.csv", "boat,boat_class\nHeron,no class that has a list\n");
    office().showPage("tags");
    office().showPage("setup");
    settle();
    EXPECT_TRUE(
        stateOf(2).contains("Nothing is asked of Heron: the class “no class that has a list” has no list."))
        << stateOf(2).toStdString();
    EXPECT_EQ(titleOf(1), "Boats: done") << "its list may come";
    EXPECT_EQ(stateOf(1), "4 boats are in the register.");
}

TEST_F(SetUpStory, aMistypedClassIsToldAtTheBoats) {
    import("boats.csv", "boat,boat_class\nHeron,inflatible\n");
    openOffice("setup");
    EXPECT_EQ(titleOf(1), "Boats: still to do");
    EXPECT_EQ(stateOf(1),
              "“inflatible”, the class of Heron, has no list and is almost “inflatable”: if they are "
              "one, write them alike.");
    import("boats.csv", "boat,boat_class\nHeron,inflatable\n");
    office().showPage("tags");
    office().showPage("setup");
    settle();
    EXPECT_EQ(titleOf(1), "Boats: done");
}

TEST_F(SetUpStory, eachStepIsAPressAway) {
    openOffice("setup");
    bool isBoardWanted = false;
    QObject::connect(&office(), &app::GearOffice::boardWanted, &office(), [&] { isBoardWanted = true; });
    pressButton("setUpButton 5");
    EXPECT_TRUE(isBoardWanted);
    pressButton("setUpButton 4");
    EXPECT_EQ(office().currentPage(), "tags");
    office().showPage("setup");
    settle();
    pressButton("setUpSpreadsheetButton");
    EXPECT_EQ(office().currentPage(), "spreadsheet");
}

TEST_F(SetUpStory, tagsAreTickedWhenTheyWerePrintedHere) {
    openOffice("setup", choosers());
    EXPECT_EQ(titleOf(4), "Tags printed: still to do");
    pressButton("setUpButton 4");
    pressButton("tagsWriteButton");
    ASSERT_TRUE(support::waitFor([&] { return QFile::exists(pathOf("tags.pdf")); }));
    settle();
    office().showPage("setup");
    settle();
    EXPECT_EQ(titleOf(4), "Tags printed: done");
}

TEST_F(SetUpStory, aBoatIsFittedOutInOnePressAndItsTagsPrinted) {
    fitOutHeron();
    const auto lacking = lackingOf("Heron");
    const int all = std::accumulate(lacking.begin(), lacking.end(), 0);
    ASSERT_GT(all, 5);
    EXPECT_EQ(child<QPushButton>("fitOutRegisterButton")->text(), QString("Register %1 items").arg(all));
    goTo("all");
    typeInto("fitOutMadeEdit", "2025-11");
    goTo(keyOfLine("knife"));
    typeInto("fitOutSerialEdit", "A-77");
    goTo(keyOfLine("paddle") + " 1"); // the second of two
    typeInto("fitOutMadeEdit", "2024");
    pressButton("fitOutRegisterButton");
    EXPECT_EQ(lackingOf("Heron"), std::vector<int>(lacking.size(), 0));
    EXPECT_TRUE(textOf("fitOutSaidLabel").startsWith(QString("%1 items registered").arg(all)));
    std::vector<std::string> paddlesMade;
    for (const core::Item& item : kitOf("Heron")) {
        if (item.kitType == "paddle")
            paddlesMade.push_back(item.made->text());
        else
            EXPECT_EQ(item.made->text(), "2025-11") << item.kitType;
        EXPECT_EQ(item.serial, item.kitType == "knife" ? "A-77" : "");
        EXPECT_EQ(item.registered->text(), "2026-03-14");
    }
    std::sort(paddlesMade.begin(), paddlesMade.end());
    EXPECT_EQ(paddlesMade, (std::vector<std::string>{"2024", "2025-11"}));
    EXPECT_FALSE(child<QPushButton>("fitOutRegisterButton")->isEnabled()) << "nothing is lacking any more";
    pressButton("fitOutTagsButton");
    ASSERT_TRUE(support::waitFor([&] { return QFile::exists(pathOf("tags.pdf")); }));
    pressButton("fitOutBackButton");
    EXPECT_TRUE(child("setUpSummaryLabel")->isVisible());
}

TEST_F(SetUpStory, whatIsRefusedRegistersNothingAndIsSaid) {
    fitOutHeron();
    const auto before = stored().kit().all().size();
    goTo(keyOfLine("knife"));
    typeInto("fitOutMadeEdit", "next week");
    pressButton("fitOutRegisterButton");
    EXPECT_TRUE(textOf("fitOutSaidLabel").contains("next week")) << textOf("fitOutSaidLabel").toStdString();
    EXPECT_EQ(stored().kit().all().size(), before);
    typeInto("fitOutMadeEdit", "2026-01");
    pressButton("fitOutRegisterButton");
    EXPECT_GT(stored().kit().all().size(), before);
}

TEST_F(SetUpStory, theNumberOfALineIsTheOfficersToSay) {
    fitOutHeron();
    goTo(keyOfLine("paddle"));
    typeInto("fitOutCountBox", "3");
    goTo("all");
    goTo(keyOfLine("knife"));
    typeInto("fitOutCountBox", "0");
    pressButton("fitOutRegisterButton");
    const auto kit = kitOf("Heron");
    const auto countOf = [&](const char* kitType) {
        return std::count_if(kit.begin(), kit.end(),
                             [&](const auto& item) { return item.kitType == kitType; });
    };
    EXPECT_EQ(countOf("paddle"), 3);
    EXPECT_EQ(countOf("knife"), 0);
}

TEST_F(SetUpStory, sparesAreRegisteredAtAPlace) {
    import("kit_types.csv", "kit_type,spares\nknife,9\n");
    openOffice("setup");
    pressButton("setUpButton 2");
    choose("fitOutHomeBox", "spares at Gear store");
    goTo(keyOfLine("knife"));
    const int lacking = child<QSpinBox>("fitOutCountBox")->value();
    ASSERT_GT(lacking, 0);
    pressButton("fitOutRegisterButton");
    int atStore = 0;
    for (const core::FitOutLine& each : stored().kit().fitOutOfSpares())
        if (each.line.kitType == "knife") atStore = each.there;
    EXPECT_EQ(atStore, 9);
}
