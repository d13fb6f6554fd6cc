#include "core/club/club_record.h"
#include "tests/app/gui/gear/manifests/manifests_story.h"

#include <QComboBox>
#include <QMenu>
#include <QPushButton>
#include <QSpinBox>

using support::dabchick;
using support::inflatable;
using support::ManifestsStory;

// Of demo/club: twelve lines and fifteen points of an inflatable; Dabchick without flares, with a pump, and
// with a keel chamber from 18 kPa.
TEST_F(ManifestsStory, aClassAndABoatsOwnDifferences) {
    openOffice("manifests");
    EXPECT_EQ(textOf("manifestSummaryLabel"),
              "inflatable: 12 lines and 15 points. Boats: Bittern, Dabchick (3 own).");
    ASSERT_EQ(rows().size(), 12u);
    EXPECT_EQ(rowOf("paddle")->cells, (QStringList{"paddle", "2", "yes", ""}));
    EXPECT_EQ(rowOf("flare")->cells, (QStringList{"flare", "2", "no", "not Dabchick"}));
    choose("manifestOwnerBox", "Dabchick");
    EXPECT_EQ(textOf("manifestSummaryLabel"),
              "Dabchick: 12 lines and 15 points; 3 unlike its class, inflatable.");
    EXPECT_EQ(rowOf("flare")->markWord, "removed");
    EXPECT_TRUE(rowOf("flare")->mark);
    EXPECT_EQ(rowOf("flare")->cells, (QStringList{"flare", "–", "–", "removed"}));
    EXPECT_EQ(rowOf("hand pump")->markWord, "own");
    EXPECT_EQ(rowOf("hand pump")->cells[3], "own");
    EXPECT_EQ(rowOf("paddle")->markWord, "");
    EXPECT_FALSE(rowOf("paddle")->mark);
    focus("manifestLinesChoice");
    press(Qt::Key_Right);
    EXPECT_EQ(rowOf("keel chamber")->cells,
              (QStringList{"keel chamber", "launch", "18 to 24 kPa", "class: 20 to 24 kPa"}));
    EXPECT_EQ(rowOf("engine flush")->cells[1], "return");
    EXPECT_EQ(child<QPushButton>("manifestAddButton")->text(), "New point…");
}

TEST_F(ManifestsStory, aLineIsChangedByKeysAndTheRecordSaysByWhom) {
    openOffice("manifests");
    chooseRow("radio");
    press(Qt::Key_Return);
    ASSERT_TRUE(child("manifestNumberBox")->hasFocus());
    EXPECT_FALSE(child("manifestLineWriteButton")->isEnabled());
    type("2");
    focus("manifestRequiredCheck");
    press(Qt::Key_Space);
    typeInto("manifestNoteEdit", "one is spare");
    pressButton("manifestLineWriteButton");
    const auto line = storedLine(inflatable, "radio");
    EXPECT_EQ(line->quantity, 2);
    EXPECT_FALSE(line->required);
    EXPECT_EQ(line->note, "one is spare");
    const auto versions = stored().manifests().read()->versionsOf(inflatable);
    ASSERT_EQ(versions.size(), 2u);
    EXPECT_EQ(versions[1].by, "Joss Iveny");
    EXPECT_EQ(versions[1].since().iso(), "2026-03-14T06:40:00.000Z");
    EXPECT_EQ(rowOf("radio")->cells, (QStringList{"radio", "2", "no", ""}));
    ASSERT_EQ(rowsIn("manifestVersionsList").size(), 2u);
    EXPECT_EQ(rowsIn("manifestVersionsList")[0].remark, "Radio: 2, not required instead of 1, by Joss Iveny");
    EXPECT_TRUE(stored().record().verify(false)->problems.empty());
}

TEST_F(ManifestsStory, nothingOfTheOwnerBeforeCanBeWrittenOnceAnotherIsChosen) {
    openOffice("manifests");
    chooseRow("knife");
    child<QSpinBox>("manifestNumberBox")->setValue(2);
    auto* owners = child<QComboBox>("manifestOwnerBox");
    owners->setCurrentIndex(owners->findText("Dabchick")); // and no answer of the club's thread yet
    EXPECT_FALSE(child("manifestLineWriteButton")->isVisible());
    settle();
    EXPECT_EQ(storedLine(inflatable, "knife")->quantity, 1);
    chooseRow("knife");
    EXPECT_EQ(textOf("manifestLineLabel"), "Knife, Dabchick");
    EXPECT_EQ(child<QSpinBox>("manifestNumberBox")->value(), 1);
}

TEST_F(ManifestsStory, whatIsTypedOutlastsALookAtAnotherPage) {
    openOffice("manifests");
    chooseRow("knife");
    child<QSpinBox>("manifestNumberBox")->setValue(7);
    office().showPage("missing");
    settle();
    office().showPage("manifests");
    settle();
    EXPECT_EQ(child<QSpinBox>("manifestNumberBox")->value(), 7);
    pressButton("manifestLineWriteButton");
    EXPECT_EQ(storedLine(inflatable, "knife")->quantity, 7);
}

TEST_F(ManifestsStory, aBoatsOwnLineLeavesTheClassAsItIs) {
    openOffice("manifests");
    choose("manifestOwnerBox", "Dabchick");
    chooseRow("knife");
    press(Qt::Key_Return);
    type("2");
    pressButton("manifestLineWriteButton");
    EXPECT_EQ(storedLine(dabchick, "knife")->quantity, 2);
    EXPECT_EQ(storedLine(inflatable, "knife")->quantity, 1);
    EXPECT_EQ(rowOf("knife")->cells[3], "class: 1");
    EXPECT_EQ(child<QComboBox>("manifestOwnerBox")->currentText(), "Dabchick");
}

TEST_F(ManifestsStory, aLineIsAddedAndTakenAway) {
    openOffice("manifests");
    pressButton("manifestAddButton");
    EXPECT_FALSE(child("manifestLineWriteButton")->isEnabled());
    EXPECT_LT(child<QComboBox>("manifestKitTypeBox")->findText("radio"), 0) << "is asked already";
    choose("manifestKitTypeBox", "throw line");
    pressButton("manifestLineWriteButton");
    EXPECT_EQ(storedLine(inflatable, "throw line")->quantity, 1);
    chooseRow("throw line");
    pressButton("manifestLineTakeAwayButton");
    EXPECT_TRUE(storedLine(inflatable, "throw line")) << "it is asked first";
    EXPECT_TRUE(textOf("manifestLineQuestionLabel").startsWith("Remove “throw line” from class inflatable?"));
    pressButton("manifestLineReallyTakeAwayButton");
    EXPECT_FALSE(storedLine(inflatable, "throw line"));
    EXPECT_TRUE(textOf("manifestSaidLabel").startsWith("Throw line removed"));
    EXPECT_EQ(rows().size(), 12u);
}

TEST_F(ManifestsStory, nobodyAtWorkChangesNothing) {
    openOffice("manifests");
    choose("officerBox", "choose a name");
    chooseRow("radio");
    press(Qt::Key_Return);
    type("2");
    pressButton("manifestLineWriteButton");
    EXPECT_EQ(storedLine(inflatable, "radio")->quantity, 1);
    EXPECT_TRUE(textOf("manifestSaidLabel").startsWith("Choose your name first"));
    EXPECT_EQ(child<QSpinBox>("manifestNumberBox")->value(), 2) << "what was typed stays";
}

TEST_F(ManifestsStory, aBoatIsAskedAsItsClassAgain) {
    openOffice("manifests");
    choose("manifestOwnerBox", "Dabchick");
    chooseRow("flare"); // taken away from Dabchick alone
    EXPECT_FALSE(child("manifestLineTakeAwayButton")->isVisible());
    pressButton("manifestLineAsClassButton");
    EXPECT_EQ(storedLine(dabchick, "flare")->quantity, 2);
    EXPECT_EQ(rowOf("flare")->cells, (QStringList{"flare", "2", "no", ""}));
    EXPECT_TRUE(textOf("manifestSaidLabel").startsWith("Flare is asked of Dabchick as of its class"));
    EXPECT_FALSE(child("manifestLineAsClassButton")->isVisible());
    EXPECT_TRUE(child("manifestTable")->hasFocus());
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        ASSERT_TRUE(
            club.manifests().changeLine(inflatable, {.kitType = "flare", .quantity = 3}, {}, moment()));
    }
    EXPECT_EQ(storedLine(dabchick, "flare")->quantity, 3) << "it follows its class";
    EXPECT_TRUE(stored().record().verify(false)->problems.empty());
}

TEST_F(ManifestsStory, anOwnLineLikeTheClassSaysSoAndOnlyABoatsOwnOffersTheClasss) {
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        const auto line = *storedLine(inflatable, "knife");
        ASSERT_TRUE(club.manifests().changeLine(dabchick, line, "Joss Iveny", moment()));
    }
    openOffice("manifests");
    chooseRow("knife");
    EXPECT_FALSE(child("manifestLineAsClassButton")->isVisible());
    choose("manifestOwnerBox", "Dabchick");
    EXPECT_EQ(rowOf("knife")->cells[3], "own, like its class");
    chooseRow("knife");
    EXPECT_EQ(textOf("manifestLineAboutLabel"), "Own, like its class.");
    pressButton("manifestLineAsClassButton");
    EXPECT_EQ(rowOf("knife")->cells[3], "");
    chooseRow("hand pump"); // asked of Dabchick alone: no class's line could hold
    EXPECT_FALSE(child("manifestLineAsClassButton")->isVisible());
}

TEST_F(ManifestsStory, takingAwayIsAskedAndKeptByEscapeAndByTheFirstKey) {
    openOffice("manifests");
    chooseRow("flare");
    pressButton("manifestLineTakeAwayButton");
    ASSERT_TRUE(child("manifestLineKeepButton")->hasFocus());
    EXPECT_FALSE(child("manifestLineWriteButton")->isVisible());
    press(Qt::Key_Escape);
    ASSERT_TRUE(child("manifestLineTakeAwayButton")->hasFocus());
    press(Qt::Key_Space);
    press(Qt::Key_Return); // on Keep
    EXPECT_TRUE(storedLine(inflatable, "flare")->quantity == 2);
    press(Qt::Key_Space);
    press(Qt::Key_Tab);
    ASSERT_TRUE(child("manifestLineReallyTakeAwayButton")->hasFocus());
    press(Qt::Key_Return);
    EXPECT_FALSE(storedLine(inflatable, "flare"));
}

TEST_F(ManifestsStory, theQuestionNamesTheBoatThatStaysAskedAndGoesWithItsLine) {
    openOffice("manifests");
    choose("manifestOwnerBox", "Dabchick");
    chooseRow("knife");
    press(Qt::Key_Return);
    type("2");
    pressButton("manifestLineWriteButton");
    choose("manifestOwnerBox", "class inflatable");
    chooseRow("knife");
    pressButton("manifestLineTakeAwayButton");
    EXPECT_TRUE(textOf("manifestLineQuestionLabel").endsWith("Still asked by a line of its own: Dabchick."));
    chooseRow("paddle");
    EXPECT_FALSE(child("manifestLineQuestionLabel")->isVisible());
    EXPECT_TRUE(child("manifestLineWriteButton")->isVisible());
    pressButton("manifestLineTakeAwayButton");
    EXPECT_FALSE(textOf("manifestLineQuestionLabel").contains("Still asked"));
}

TEST_F(ManifestsStory, nobodyAtWorkIsAskedForANameBeforeTheQuestion) {
    openOffice("manifests");
    choose("officerBox", "choose a name");
    chooseRow("radio");
    pressButton("manifestLineTakeAwayButton");
    EXPECT_FALSE(child("manifestLineKeepButton")->isVisible());
    EXPECT_TRUE(textOf("manifestSaidLabel").startsWith("Choose your name first"));
}

TEST_F(ManifestsStory, tabGoesThroughTheFieldsAsTheyStand) {
    openOffice("manifests");
    choose("manifestOwnerBox", "Dabchick");
    const auto follows = [this](const std::vector<const char*>& names) {
        for (const char* name : names) {
            press(Qt::Key_Tab);
            EXPECT_EQ(QApplication::focusWidget()->objectName(), name);
        }
    };
    chooseRow("hand pump");
    press(Qt::Key_Return);
    type("3");
    follows({"manifestRequiredCheck", "manifestSubstitutesButton", "manifestNoteEdit",
             "manifestLineTakeAwayButton", "manifestLineWriteButton"});
    choosePoint("launch/keel chamber");
    type("17");
    follows({"manifestPointHighEdit", "manifestPointUnitEdit", "manifestPointNoteEdit",
             "manifestPointAsClassButton", "manifestPointWriteButton"});
}

TEST_F(ManifestsStory, substitutesAreChosenByKeys) {
    openOffice("manifests");
    chooseRow("paddle");
    EXPECT_EQ(textOf("manifestSubstitutesLabel"), "or oar");
    pressButton("manifestSubstitutesButton");
    auto* menu = child<QMenu>("manifestSubstitutesMenu");
    ASSERT_EQ(QApplication::activePopupWidget(), menu);
    const QList<QAction*> names = menu->actions();
    for (const QAction* action : names) {
        EXPECT_NE(action->text(), "paddle");
        EXPECT_NE(action->text(), "life jacket") << "worn: it cannot stand in";
        EXPECT_EQ(action->isChecked(), action->text() == "oar") << action->text().toStdString();
    }
    QTest::keyClick(menu, Qt::Key_Down);
    const QString first = names.front()->text();
    QTest::keyClick(menu, Qt::Key_Return);
    settle();
    EXPECT_EQ(textOf("manifestSubstitutesLabel"), "or oar and " + first);
    pressButton("manifestLineWriteButton");
    EXPECT_EQ(storedLine(inflatable, "paddle")->substitutes,
              (std::vector<std::string>{"oar", first.toStdString()}));
    EXPECT_EQ(storedLine(inflatable, "paddle")->quantity, 2);
}
