#include "core/club/club_record.h"
#include "tests/app/gui/gear/manifests/manifests_story.h"

#include <QLineEdit>
#include <QPushButton>

using support::dabchick;
using support::inflatable;
using support::ManifestsStory;

// Of demo/club: the keel chamber of an inflatable from 20 to 24 kPa, Dabchick's from 18.
TEST_F(ManifestsStory, aPointIsChangedByKeysAndTheRecordSaysByWhom) {
    openOffice("manifests");
    choosePoint("launch/keel chamber");
    ASSERT_TRUE(child("manifestPointLowEdit")->hasFocus());
    EXPECT_FALSE(child("manifestPointWriteButton")->isEnabled());
    type("19,5");
    typeInto("manifestPointNoteEdit", "cold, at the slip");
    pressButton("manifestPointWriteButton");
    const auto point = storedPoint(inflatable, "keel chamber");
    EXPECT_EQ(point->limits.low, 19.5);
    EXPECT_EQ(point->limits.high, 24);
    EXPECT_EQ(point->unit, "kPa");
    EXPECT_EQ(point->note, "cold, at the slip");
    EXPECT_EQ(rowOf("keel chamber")->cells[2], "19.5 to 24 kPa");
    EXPECT_EQ(storedPoint(dabchick, "keel chamber")->limits.low, 18);
    EXPECT_EQ(stored().manifests().read()->versionsOf(inflatable).back().by, "Joss Iveny");
    EXPECT_TRUE(rowsIn("manifestVersionsList")[0].remark.startsWith(
        "Keel chamber (launch): 19.5 to 24 kPa instead of 20 to 24 kPa"));
}

TEST_F(ManifestsStory, aPointsLimitsAreCheckedAsAnImportDoes) {
    openOffice("manifests");
    choosePoint("launch/keel chamber");
    type("-");
    EXPECT_FALSE(child("manifestPointWriteButton")->isEnabled()) << "no number yet";
    typeInto("manifestPointLowEdit", "30");
    pressButton("manifestPointWriteButton");
    EXPECT_TRUE(textOf("manifestSaidLabel").contains("Low 30 is above high 24"));
    EXPECT_EQ(storedPoint(inflatable, "keel chamber")->limits.low, 20);
    EXPECT_EQ(child<QLineEdit>("manifestPointLowEdit")->text(), "30") << "what was typed stays";
    typeInto("manifestPointHighEdit", "31");
    pressButton("manifestPointWriteButton");
    EXPECT_EQ(storedPoint(inflatable, "keel chamber")->limits.high, 31);
}

TEST_F(ManifestsStory, aPointIsAddedTimedRenamedAndTakenAway) {
    openOffice("manifests");
    focus("manifestLinesChoice");
    press(Qt::Key_Right);
    pressButton("manifestAddButton");
    ASSERT_TRUE(child("manifestPointNameEdit")->hasFocus());
    EXPECT_FALSE(child("manifestPointWriteButton")->isEnabled());
    EXPECT_FALSE(child("manifestPointLowEdit")->isVisible()) << "a look has no limits";
    type("horn test");
    choose("manifestPointPhaseBox", "return");
    choose("manifestPointKindBox", "timed");
    EXPECT_FALSE(child("manifestPointUnitEdit")->isVisible());
    typeInto("manifestPointLowEdit", "3");
    typeInto("manifestPointHighEdit", "90");
    pressButton("manifestPointWriteButton");
    const auto added = storedPoint(inflatable, "horn test", "return");
    ASSERT_TRUE(added);
    EXPECT_EQ(added->kind, core::PointKind::Timed);
    EXPECT_EQ(added->limits.high, 90);
    EXPECT_EQ(added->unit, "s");
    EXPECT_EQ(rowOf("horn test")->cells, (QStringList{"horn test", "return", "0:03 to 1:30 min", ""}));

    chooseRow("return/horn test");
    EXPECT_FALSE(child("manifestPointWriteButton")->isEnabled()) << "nothing was changed yet";
    typeInto("manifestPointNameEdit", "horn");
    pressButton("manifestPointWriteButton");
    EXPECT_FALSE(storedPoint(inflatable, "horn test", "return"));
    EXPECT_TRUE(storedPoint(inflatable, "horn", "return"));

    chooseRow("return/horn");
    pressButton("manifestPointTakeAwayButton");
    EXPECT_TRUE(storedPoint(inflatable, "horn", "return")) << "it is asked first";
    pressButton("manifestPointReallyTakeAwayButton");
    EXPECT_FALSE(storedPoint(inflatable, "horn", "return"));
    EXPECT_FALSE(rowOf("horn"));
    EXPECT_TRUE(stored().record().verify(false)->problems.empty());
}

TEST_F(ManifestsStory, aBoatsOwnPointIsMadeAndGivenUp) {
    openOffice("manifests");
    choose("manifestOwnerBox", "Dabchick");
    choosePoint("launch/keel chamber");
    EXPECT_FALSE(child("manifestPointNameEdit")->isVisible()) << "its name is the class's";
    EXPECT_FALSE(child("manifestPointTakeAwayButton")->isVisible());
    pressButton("manifestPointAsClassButton");
    EXPECT_EQ(storedPoint(dabchick, "keel chamber")->limits.low, 20);
    EXPECT_EQ(rowOf("keel chamber")->cells[3], "");
    chooseRow("launch/keel chamber");
    press(Qt::Key_Return);
    type("17");
    pressButton("manifestPointWriteButton");
    EXPECT_EQ(storedPoint(dabchick, "keel chamber")->limits.low, 17);
    EXPECT_EQ(storedPoint(inflatable, "keel chamber")->limits.low, 20);
    EXPECT_EQ(rowOf("keel chamber")->cells[3], "class: 20 to 24 kPa");
}

TEST_F(ManifestsStory, aPointThatAnotherProgramChangedMeanwhileIsNotOverwritten) {
    openOffice("manifests");
    choosePoint("launch/keel chamber");
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        const core::PhasePoint seen{"launch", *storedPoint(inflatable, "keel chamber")};
        core::PhasePoint theirs = seen;
        theirs.point.limits.low = 21;
        ASSERT_TRUE(club.manifests().changePoint(inflatable, theirs, "Tobin Ashe", moment(), &seen));
    }
    type("17");
    pressButton("manifestPointWriteButton");
    EXPECT_EQ(storedPoint(inflatable, "keel chamber")->limits.low, 21);
    EXPECT_TRUE(textOf("manifestSaidLabel").contains("changed meanwhile"));
}
