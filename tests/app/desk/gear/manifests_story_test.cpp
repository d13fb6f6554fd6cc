#include "tests/app/desk/gear/gear_story.h"

#include "app/desk/gear/manifests/manifests_page.h"

#include <QCheckBox>
#include <QRadioButton>
#include <QSpinBox>

#include <fstream>

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
        const auto manifest = stored().manifests()->now(owner);
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
    EXPECT_FALSE(child("manifestAddButton")->isVisible());
}

TEST_F(ManifestsStory, aLineIsChangedByKeysAndTheRecordSaysByWhom) {
    openOffice("manifests");
    chooseRow("radio");
    press(Qt::Key_Return);
    ASSERT_TRUE(child("manifestNumberBox")->hasFocus());
    EXPECT_FALSE(child("manifestWriteButton")->isEnabled());
    type("2");
    focus("manifestRequiredCheck");
    press(Qt::Key_Space);
    typeInto("manifestNoteEdit", "one is spare");
    pressButton("manifestWriteButton");
    const auto line = storedLine(inflatable, "radio");
    EXPECT_EQ(line->quantity, 2);
    EXPECT_FALSE(line->required);
    EXPECT_EQ(line->note, "one is spare");
    const auto versions = stored().manifests()->versionsOf(inflatable);
    ASSERT_EQ(versions.size(), 2u);
    EXPECT_EQ(versions[1].by, "Joss Iveny");
    EXPECT_EQ(versions[1].since().iso(), "2026-03-14T06:40:00.000Z");
    EXPECT_EQ(rowOf("radio")->cells, (QStringList{"radio", "2", "no", ""}));
    ASSERT_EQ(rowsIn("manifestVersionsList").size(), 2u);
    EXPECT_EQ(rowsIn("manifestVersionsList")[0].remark, "Radio: 2, not required instead of 1, by Joss Iveny");
    EXPECT_TRUE(stored().verify(false)->problems.empty());
}

TEST_F(ManifestsStory, nothingOfTheOwnerBeforeCanBeWrittenOnceAnotherIsChosen) {
    openOffice("manifests");
    chooseRow("knife");
    child<QSpinBox>("manifestNumberBox")->setValue(2);
    auto* owners = child<QComboBox>("manifestOwnerBox");
    owners->setCurrentIndex(owners->findText("Dabchick")); // and no answer of the club's thread yet
    EXPECT_FALSE(child("manifestWriteButton")->isVisible());
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
    pressButton("manifestWriteButton");
    EXPECT_EQ(storedLine(inflatable, "knife")->quantity, 7);
}

TEST_F(ManifestsStory, aBoatsOwnLineLeavesTheClassAsItIs) {
    openOffice("manifests");
    choose("manifestOwnerBox", "Dabchick");
    chooseRow("knife");
    press(Qt::Key_Return);
    type("2");
    pressButton("manifestWriteButton");
    EXPECT_EQ(storedLine(dabchick, "knife")->quantity, 2);
    EXPECT_EQ(storedLine(inflatable, "knife")->quantity, 1);
    EXPECT_EQ(rowOf("knife")->cells[3], "class: 1");
    EXPECT_EQ(child<QComboBox>("manifestOwnerBox")->currentText(), "Dabchick");
}

TEST_F(ManifestsStory, aLineIsAddedAndTakenAway) {
    openOffice("manifests");
    pressButton("manifestAddButton");
    EXPECT_FALSE(child("manifestWriteButton")->isEnabled());
    EXPECT_LT(child<QComboBox>("manifestKitTypeBox")->findText("radio"), 0) << "is asked already";
    choose("manifestKitTypeBox", "throw line");
    pressButton("manifestWriteButton");
    EXPECT_EQ(storedLine(inflatable, "throw line")->quantity, 1);
    chooseRow("throw line");
    pressButton("manifestTakeAwayButton");
    EXPECT_FALSE(storedLine(inflatable, "throw line"));
    EXPECT_TRUE(textOf("manifestSaidLabel").startsWith("Throw line taken away"));
    EXPECT_EQ(rows().size(), 12u);
}

TEST_F(ManifestsStory, anEarlierVersionShowsWhatWasAskedThenAndChangesNothing) {
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        check(club, "Bittern", core::Phase::Launch, "Tobin Ashe", {}, "2026-03-10T07:00:00Z");
        ASSERT_TRUE(club.changeManifest(inflatable, {.kitType = "radio", .quantity = 2}, "Joss Iveny",
                                        moment("2026-03-11T09:00:00Z")));
        ASSERT_TRUE(club.changeManifest(inflatable, {.kitType = "bailer", .quantity = 0}, "Joss Iveny",
                                        moment("2026-03-12T09:00:00Z")));
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
    pressButton("manifestWriteButton");
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
    const auto versions = stored().manifests()->versionsOf(inflatable);
    ASSERT_EQ(versions.size(), 2u);
    EXPECT_EQ(versions[1].changes.front().pointAfter->limits.low, 19);
    EXPECT_EQ(rowsIn("manifestVersionsList").size(), 2u);
}
