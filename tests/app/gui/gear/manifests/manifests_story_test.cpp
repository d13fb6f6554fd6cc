#include "core/club/club_manifests.h"
#include "core/club/club_record.h"
#include "tests/app/gui/gear/gear_story.h"

#include "app/gui/gear/manifests/manifests_page.h"
#include "app/gui/theme/language.h"
#include "app/text/words.h"
#include "core/store/database.h"

#include <QCheckBox>
#include <QMenu>
#include <QRadioButton>
#include <QSpinBox>

#include <fstream>
#include <utility>

using support::GearStory;

namespace {

using core::ManifestOwner;

const ManifestOwner inflatable{ManifestOwner::Kind::BoatClass, "inflatable"};
const ManifestOwner dabchick{ManifestOwner::Kind::Boat, "Dabchick"};

class ManifestsStory : public GearStory {
protected:
    const std::vector<app::TableRow>& rows() {
        return static_cast<app::PlainTableModel*>(child<app::PlainTable>("manifestTable")->model())->rows();
    }
    std::optional<app::TableRow> rowOf(const QString& name) {
        for (const app::TableRow& row : rows())
            if (row.cells[0] == name) return row;
        return std::nullopt;
    }
    std::optional<core::ManifestLine> storedLine(const ManifestOwner& owner, const std::string& kitType) {
        const auto manifest = stored().manifests().read()->now(owner);
        for (const core::AskedLine& line : manifest.lines)
            if (line.line.kitType == kitType) return line.line;
        return std::nullopt;
    }
    /// Goes down the table to that row.
    void chooseRow(const QString& name) {
        focus("manifestTable");
        press(Qt::Key_Home, Qt::ControlModifier);
        for (std::size_t i = 0; i < rows().size() && chosenRow() != name; ++i)
            press(Qt::Key_Down);
        ASSERT_EQ(chosenRow(), name);
    }
    QString chosenRow() { return child<app::PlainTable>("manifestTable")->chosen(); }
    /// The table of points, and that row of it.
    void choosePoint(const QString& key) {
        focus("manifestLinesChoice");
        press(Qt::Key_Right);
        chooseRow(key);
        press(Qt::Key_Return);
    }
    std::optional<core::BoatPoint> storedPoint(const ManifestOwner& owner, const std::string& name,
                                               const std::string& phase = "launch") {
        const auto manifest = stored().manifests().read()->now(owner);
        for (const core::AskedPoint& each : manifest.points)
            if (each.point.name == name && each.phase == phase) return each.point;
        return std::nullopt;
    }
    void chooseVersion(int down) {
        focus("manifestVersionsList");
        press(Qt::Key_Home);
        for (int i = 0; i < down; ++i)
            press(Qt::Key_Down);
    }
};

} // namespace

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
    EXPECT_EQ(rowOf("flare")->markWord, "taken away");
    EXPECT_TRUE(rowOf("flare")->mark);
    EXPECT_EQ(rowOf("flare")->cells, (QStringList{"flare", "–", "–", "taken away"}));
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
    EXPECT_TRUE(
        textOf("manifestLineQuestionLabel").startsWith("Take “throw line” away from class inflatable?"));
    pressButton("manifestLineReallyTakeAwayButton");
    EXPECT_FALSE(storedLine(inflatable, "throw line"));
    EXPECT_TRUE(textOf("manifestSaidLabel").startsWith("Throw line taken away"));
    EXPECT_EQ(rows().size(), 12u);
}

TEST_F(ManifestsStory, anEarlierVersionShowsWhatWasAskedThenAndChangesNothing) {
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        check(club, "Bittern", core::Phase::Launch, "Tobin Ashe", {}, "2026-03-10T07:00:00Z");
        ASSERT_TRUE(club.manifests().changeLine(inflatable, {.kitType = "radio", .quantity = 2}, "Joss Iveny",
                                                moment("2026-03-11T09:00:00Z")));
        ASSERT_TRUE(club.manifests().changeLine(inflatable, {.kitType = "bailer", .quantity = 0},
                                                "Joss Iveny", moment("2026-03-12T09:00:00Z")));
    }
    openOffice("manifests");
    ASSERT_EQ(rowsIn("manifestVersionsList").size(), 3u);
    EXPECT_FALSE(rowOf("bailer"));
    chooseVersion(2);
    EXPECT_EQ(rowOf("radio")->cells, (QStringList{"radio", "1", "yes", "2"}));
    EXPECT_EQ(rowOf("radio")->markWord, "different today");
    EXPECT_EQ(rowOf("bailer")->cells[3], "not asked");
    EXPECT_EQ(rowOf("paddle")->markWord, "");
    EXPECT_TRUE(textOf("manifestAboutLabel").contains("1 check was signed by it, the last of Bittern"))
        << textOf("manifestAboutLabel").toStdString();
    EXPECT_FALSE(child("manifestLinePanel")->isVisible());
    EXPECT_FALSE(child("manifestAddButton")->isVisible());
    chooseVersion(0);
    EXPECT_EQ(rowOf("radio")->cells[1], "2");
    EXPECT_TRUE(child("manifestAddButton")->isVisible());
}

TEST_F(ManifestsStory, nobodyAtWorkChangesNothing) {
    openOffice("manifests");
    choose("officerBox", "choose a name");
    chooseRow("radio");
    press(Qt::Key_Return);
    type("2");
    pressButton("manifestLineWriteButton");
    EXPECT_EQ(storedLine(inflatable, "radio")->quantity, 1);
    EXPECT_TRUE(textOf("manifestSaidLabel").startsWith("Say who you are"));
    EXPECT_EQ(child<QSpinBox>("manifestNumberBox")->value(), 2) << "what was typed stays";
}

TEST_F(ManifestsStory, sheetsGoOutAreChangedAndComeBackAsAVersion) {
    app::Choosers choosers;
    choosers.exportFolder = choosers.importFolder = [this](QWidget*) { return pathOf("sheets"); };
    openOffice("manifests", choosers);
    pressButton("manifestExportButton");
    const auto folder = std::filesystem::path(pathOf("sheets").toStdString());
    ASSERT_TRUE(std::filesystem::exists(folder / "points.csv"));
    for (const auto& file : std::filesystem::directory_iterator(folder))
        std::filesystem::remove(file.path());
    std::ofstream(folder / "points.csv") << "boat_class,phase,point,low\ninflatable,launch,keel chamber,19\n";
    pressButton("manifestImportButton");
    settle();
    EXPECT_EQ(textOf("manifestSaidLabel"), "Imported: 1 row.");
    const auto versions = stored().manifests().read()->versionsOf(inflatable);
    ASSERT_EQ(versions.size(), 2u);
    EXPECT_EQ(versions[1].changes.front().pointAfter->limits.low, 19);
    EXPECT_EQ(rowsIn("manifestVersionsList").size(), 2u);
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
    EXPECT_TRUE(textOf("manifestSaidLabel").startsWith("Say who you are"));
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

TEST_F(ManifestsStory, versionsOfOneDayTellTheirTimeAndAnImportIsNobodys) {
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        for (const char* at : {"2026-03-11T09:00:00Z", "2026-03-12T08:05:00Z", "2026-03-12T15:40:00Z"})
            ASSERT_TRUE(club.manifests().changeLine(
                inflatable, {.kitType = "radio", .quantity = 2 + at[12] - '0'}, "Joss Iveny", moment(at)));
    }
    openOffice("manifests");
    const auto rows = rowsIn("manifestVersionsList");
    ASSERT_EQ(rows.size(), 4u);
    const auto timeOf = [](const char* at) { return app::timeInWords(*core::Instant::parse(at)); };
    EXPECT_EQ(rows[0].title, "12 March 2026");
    EXPECT_EQ(rows[0].remark, timeOf("2026-03-12T15:40:00Z") + " · Radio: 7 instead of 10, by Joss Iveny");
    EXPECT_EQ(rows[1].title, "12 March 2026");
    EXPECT_TRUE(rows[1].remark.startsWith(timeOf("2026-03-12T08:05:00Z") + " · Radio: 10"));
    EXPECT_EQ(rows[2].title, "11 March 2026");
    EXPECT_EQ(rows[2].remark, "Radio: 11 instead of 1, by Joss Iveny") << "the only one of its day";
    EXPECT_EQ(rows[3].remark, "The first, by an import of sheets");
}

TEST_F(ManifestsStory, aRecordThatCannotBeReadIsOneErrorAndThePageComesBackWithIt) {
    const auto setKind = [this](const char* kind) {
        core::Database(file(), core::Database::Mode::ReadWrite)
            .script(std::string("DROP TRIGGER IF EXISTS fact_is_never_changed; UPDATE fact SET body = "
                                "json_set(body, '$.set.kind', '") +
                    kind + "') WHERE kind = 'point' AND body LIKE '%keel chamber%'");
    };
    setKind("squint");
    openOffice("manifests");
    EXPECT_TRUE(textOf("manifestSaidLabel").startsWith("The record of the manifests cannot be read"))
        << textOf("manifestSaidLabel").toStdString();
    EXPECT_TRUE(rows().empty());
    EXPECT_TRUE(rowsIn("manifestVersionsList").empty());
    EXPECT_FALSE(child("manifestAddButton")->isVisible());
    EXPECT_FALSE(child("manifestLinePanel")->isVisible());
    setKind("measure");
    office().showPage("missing");
    settle();
    office().showPage("manifests");
    settle();
    EXPECT_EQ(textOf("manifestSaidLabel"), "");
    EXPECT_EQ(rows().size(), 12u);
}

TEST_F(ManifestsStory, aSheetThatIsRefusedSaysWhyInTheWindowsLanguage) {
    app::Choosers choosers;
    choosers.importFolder = [this](QWidget*) { return pathOf("sheets"); };
    std::filesystem::create_directory(pathOf("sheets").toStdString());
    std::ofstream(pathOf("sheets/points.csv").toStdString())
        << "boat_class,phase,point,low\ninflatable,launch,keel chamber,\"19,5\"\n";
    for (const auto& [language, said] :
         {std::pair("de",
                    "points.csv, Zeile 2 low: „19,5“ ist hier keine Zahl: mit Punkt schreiben, ohne Komma"),
          std::pair("en", "points.csv, row 2 low: '19,5' is no number: write it with a full stop, "
                          "without a comma")}) {
        app::speak(language);
        openOffice("manifests", choosers);
        pressButton("manifestImportButton");
        settle();
        EXPECT_EQ(textOf("manifestSaidLabel").section('\n', 1), said);
    }
    app::speak("en");
}
