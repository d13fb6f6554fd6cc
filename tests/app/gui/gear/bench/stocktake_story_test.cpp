#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "tests/app/gui/gear/gear_story.h"

#include <algorithm>

using support::GearStory;

namespace {

// Drying rack, by demo/club/items.csv.
constexpr const char* jacket = "KG7RCVBA55";
constexpr const char* jacketGone = "K5M9AR38J5";
constexpr const char* bitternsTube = "KPZ36AE62R";

class StocktakeStory : public GearStory {
protected:
    void begin(const QString& place) {
        choose("stocktakePlaceBox", place);
        pressButton("stocktakeBeginButton");
        focus("stocktakeList");
    }
};

} // namespace

TEST_F(StocktakeStory, whatIsShownIsFoundAndTheRestIsMissingOnceSigned) {
    openOffice("stocktake");
    begin("Drying rack");
    EXPECT_EQ(headingOf("stocktakeList", jacket), "still to find");
    EXPECT_EQ(headingOf("stocktakeList", jacketGone), "still to find");
    typeCode("kg7r cvba 55");
    EXPECT_NE(headingOf("stocktakeList", jacket), "still to find");
    EXPECT_EQ(textOf("saidLabel").isEmpty(), false);
    EXPECT_EQ(child<QPushButton>("stocktakeSignButton")->text(), "Sign: 1 missing");
    pressButton("stocktakeSignButton");
    EXPECT_EQ(stored().kit().item(jacketGone)->state, core::ItemState::Missing);
    EXPECT_EQ(stored().kit().item(jacket)->state, core::ItemState::Serviceable);
    EXPECT_TRUE(stored().checks().unfinished().empty());
    EXPECT_EQ(textOf("stocktakeSummaryLabel"), "Drying rack: signed by Joss Iveny. 1 marked missing.");
}

TEST_F(StocktakeStory, withNothingShownItAsksHowManyWillBeMissing) {
    openOffice("stocktake");
    begin("Drying rack");
    EXPECT_TRUE(child("stocktakeNumberEdit")->isVisible());
    EXPECT_EQ(textOf("stocktakeEmptyLabel"),
              "Nothing was shown. Signed like this, 2 items would be missing: type that number first.");
    EXPECT_EQ(child<QPushButton>("stocktakeSignButton")->text(), "Sign: 2 missing");
    EXPECT_FALSE(child("stocktakeSignButton")->isEnabled());
    focus("stocktakeList");
    typeCode("C00000001Y"); // finish, twice
    typeCode("C00000001Y");
    EXPECT_EQ(textOf("saidLabel"), textOf("stocktakeEmptyLabel"));
    typeInto("stocktakeNumberEdit", "1");
    EXPECT_FALSE(child("stocktakeSignButton")->isEnabled());
    typeInto("stocktakeNumberEdit", "2");
    press(Qt::Key_Return);
    EXPECT_TRUE(child("stocktakeSignButton")->hasFocus());
    EXPECT_EQ(stored().checks().unfinished().size(), 1u);
    pressButton("stocktakeSignButton");
    EXPECT_TRUE(stored().checks().unfinished().empty()) << textOf("saidLabel").toStdString();
    EXPECT_EQ(stored().kit().item(jacketGone)->state, core::ItemState::Missing);
}

TEST_F(StocktakeStory, recordRefusesAnEmptyPlaceWithoutItsNumber) {
    auto club = stored(core::Club::Access::ReadWrite);
    const auto open = club.checks().openStocktake("Drying rack", moment());
    ASSERT_TRUE(open);
    EXPECT_FALSE(club.checks().sign(open->check, "Joss Iveny", {}, moment()));
    EXPECT_FALSE(club.checks().sign(open->check, "Joss Iveny", {}, moment(), 1));
    EXPECT_EQ(club.kit().item(jacketGone)->state, core::ItemState::Serviceable);
    EXPECT_TRUE(club.checks().sign(open->check, "Joss Iveny", {}, moment(), 2));
    EXPECT_EQ(club.kit().item(jacketGone)->state, core::ItemState::Missing);
}

TEST_F(StocktakeStory, onceSomethingIsShownNoNumberIsAskedFor) {
    openOffice("stocktake");
    begin("Drying rack");
    typeCode(jacket);
    EXPECT_FALSE(child("stocktakeNumberEdit")->isVisible());
    EXPECT_FALSE(child("stocktakeEmptyLabel")->isVisible());
    EXPECT_TRUE(child("stocktakeSignButton")->isEnabled());
}

TEST_F(StocktakeStory, begunByMistakeItIsDiscarded) {
    openOffice("stocktake");
    begin("Drying rack");
    typeCode(jacket);
    EXPECT_EQ(child<QPushButton>("stocktakeUndoButton")->text(), "Take back the last");
    pressButton("stocktakeUndoButton");
    EXPECT_EQ(child<QPushButton>("stocktakeUndoButton")->text(), "Discard")
        << "nothing stands in it any more";
    EXPECT_EQ(stored().checks().unfinished().size(), 1u);
    pressButton("stocktakeUndoButton");
    EXPECT_TRUE(stored().checks().unfinished().empty());
    EXPECT_EQ(stored().kit().item(jacketGone)->state, core::ItemState::Serviceable)
        << "nothing is missing for it";
    EXPECT_TRUE(rowsIn("stocktakeList").empty());
}

TEST_F(StocktakeStory, kitOfElsewhereIsToLookAtAndSaysItsHome) {
    openOffice("stocktake");
    begin("Drying rack");
    typeCode(bitternsTube);
    EXPECT_EQ(headingOf("stocktakeList", bitternsTube), "look at this");
    EXPECT_TRUE(rowOf("stocktakeList", bitternsTube)->remark.startsWith("Its home is Bittern"))
        << rowOf("stocktakeList", bitternsTube)->remark.toStdString();
    pressButton("stocktakeUndoButton");
    EXPECT_EQ(headingOf("stocktakeList", bitternsTube), "");
}

TEST_F(StocktakeStory, choosingAPlaceBeginsNothingUntilItIsPressed) {
    openOffice("stocktake");
    choose("stocktakePlaceBox", "Repair bench");
    EXPECT_TRUE(stored().checks().unfinished().empty());
    focus("stocktakeList");
    typeCode(jacket);
    EXPECT_TRUE(textOf("saidLabel").startsWith("Choose the place first"));
    EXPECT_TRUE(stored().checks().unfinished().empty());
    pressButton("stocktakeBeginButton");
    ASSERT_EQ(stored().checks().unfinished().size(), 1u);
    EXPECT_EQ(stored().checks().unfinished()[0].location.name, "Repair bench");
}

TEST_F(StocktakeStory, isGoneOnWithAfterAnotherPage) {
    openOffice("stocktake");
    begin("Drying rack");
    typeCode(jacket);
    office().showPage("log");
    settle();
    office().showPage("stocktake");
    settle();
    EXPECT_NE(headingOf("stocktakeList", jacket), "still to find");
    TearDown();
    openOffice("stocktake");
    choose("stocktakePlaceBox", "Drying rack");
    EXPECT_EQ(child<QPushButton>("stocktakeBeginButton")->text(), "Go on");
    pressButton("stocktakeBeginButton");
    EXPECT_EQ(headingOf("stocktakeList", jacketGone), "still to find");
    EXPECT_NE(headingOf("stocktakeList", jacket), "still to find");
    EXPECT_EQ(stored().checks().unfinished().size(), 1u);
}
