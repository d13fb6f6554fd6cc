#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "tests/app/gui/gear/gear_story.h"

#include "app/gui/gear/missing/missing_page.h"

using support::GearStory;

namespace {

// Of demo/club/items.csv: Dabchick's knife is missing since 8 March; the other two are Grebe's.
constexpr const char* lostKnife = "KMRMQRZM66";
constexpr const char* tube = "KMC20GKEK9";
constexpr const char* knife = "KD0XPAMAJG";

class MissingStory : public GearStory {
protected:
    /// Grebe goes out with Petra Lund and comes back with Sami Reeve, without its rescue tube.
    void loseTheTube() {
        core::Club club = stored(core::Club::Access::ReadWrite);
        check(club, "Grebe", core::Phase::Launch, "Petra Lund", {tube, knife}, "2026-03-13T07:00:00Z");
        check(club, "Grebe", core::Phase::Return, "Sami Reeve", {knife}, "2026-03-13T11:00:00Z");
    }
    void beginStocktake(const char* place) {
        ASSERT_TRUE(stored(core::Club::Access::ReadWrite).checks().openStocktake(place, moment()));
    }
    core::ItemState stateOf(const char* code) { return stored().kit().item(code)->state; }
};

} // namespace

TEST_F(MissingStory, whatIsMissingLongestStandsFirst) {
    loseTheTube();
    openOffice("missing");
    const auto rows = rowsIn("missingList");
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows[0].code, lostKnife);
    EXPECT_TRUE(rows[0].remark.contains("since 8 March 2026, 6 days")) << rows[0].remark.toStdString();
    EXPECT_EQ(rows[1].code, tube);
    EXPECT_EQ(textOf("missingSummaryLabel"), "2 items missing. The longest: knife, since 8 March 2026.");
}

TEST_F(MissingStory, theChainAndWhatToDoNextAreSaid) {
    loseTheTube();
    openOffice("missing");
    focus("missingList");
    press(Qt::Key_Down);
    ASSERT_TRUE(textOf("missingNameLabel").startsWith("rescue tube"));
    QStringList chain;
    for (const app::ListRow& row : rowsIn("missingChain"))
        chain << row.title;
    ASSERT_EQ(chain.size(), 3) << chain.join('\n').toStdString();
    EXPECT_TRUE(chain[0].startsWith("Launched on Grebe by Petra Lund")) << chain[0].toStdString();
    EXPECT_TRUE(chain[1].startsWith("Last seen: Grebe")) << chain[1].toStdString();
    EXPECT_TRUE(chain[2].startsWith("Not seen when Grebe came back by Sami Reeve")) << chain[2].toStdString();
    const QString next = textOf("missingNextLabel");
    EXPECT_TRUE(next.contains("Ask Petra Lund, who took it out on Grebe.")) << next.toStdString();
    EXPECT_TRUE(next.contains("Ask Sami Reeve, who signed the check that did not see it."));
}

TEST_F(MissingStory, aTypedCodeFindsItInAnOpenStocktake) {
    loseTheTube();
    beginStocktake("Drying rack");
    openOffice("missing");
    focus("missingList");
    typeCode("kmc2 0gke k9");
    EXPECT_EQ(stateOf(tube), core::ItemState::Serviceable);
    EXPECT_EQ(stateOf(lostKnife), core::ItemState::Missing);
    EXPECT_EQ(rowsIn("missingList").size(), 1u);
    EXPECT_TRUE(textOf("missingSaidLabel").startsWith("Found: rescue tube KMC2 0GKE K9, at Drying rack."))
        << textOf("missingSaidLabel").toStdString();
}

TEST_F(MissingStory, withoutAStocktakeItSaysSoAndRecordsNothing) {
    const auto facts = stored(core::Club::Access::ReadWrite).record().verify(false)->facts;
    openOffice("missing");
    focus("missingList");
    typeCode(lostKnife);
    EXPECT_TRUE(textOf("missingSaidLabel").startsWith("No stocktake is open"));
    EXPECT_EQ(stateOf(lostKnife), core::ItemState::Missing);
    pressButton("beginStocktakeButton");
    EXPECT_EQ(office().currentPage(), "stocktake");
    TearDown();
    EXPECT_EQ(stored(core::Club::Access::ReadWrite).record().verify(false)->facts, facts);
}

TEST_F(MissingStory, writtenOffWithItsReasonAndWho) {
    openOffice("missing");
    EXPECT_FALSE(child("writeOffButton")->isEnabled());
    choose("writeOffReasonBox", "lost");
    EXPECT_EQ(textOf("missingNameLabel"), "knife KMRM QRZM 66");
    pressButtonTwice("writeOffButton");
    EXPECT_EQ(stateOf(lostKnife), core::ItemState::WrittenOff);
    EXPECT_EQ(stored().kit().item(lostKnife)->why, "lost");
    EXPECT_EQ(stored().answers().history(lostKnife)->back().by, "Joss Iveny");
    EXPECT_EQ(textOf("missingSummaryLabel"), "Nothing is missing.");
}

TEST_F(MissingStory, nothingIsWrittenOffByNobody) {
    openOffice("missing");
    choose("officerBox", "choose a name");
    choose("writeOffReasonBox", "lost");
    pressButtonTwice("writeOffButton");
    EXPECT_TRUE(textOf("missingSaidLabel").startsWith("Choose your name first"));
    EXPECT_EQ(stateOf(lostKnife), core::ItemState::Missing);
}
