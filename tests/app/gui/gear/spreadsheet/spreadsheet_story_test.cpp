#include "core/club/club_kit.h"
#include "core/club/club_manifests.h"
#include "core/club/club_register.h"
#include "core/register/manifest_record.h"
#include "tests/app/gui/gear/gear_story.h"

#include "app/gui/gear/spreadsheet/sheet_table_model.h"
#include "app/gui/gear/spreadsheet/sheet_table_view.h"
#include "app/gui/gear/spreadsheet/spreadsheet_page.h"

#include <QCheckBox>
#include <QFile>

#include <algorithm>
#include <fstream>

using support::GearStory;

namespace {

class SpreadsheetStory : public GearStory {
protected:
    app::SpreadsheetPage& page() {
        return *qobject_cast<app::SpreadsheetPage*>(office().page("spreadsheet"));
    }
    /// Chosen in the page, as a person does, and until it is planned.
    void openSheet(const std::string& text, const char* name = "ours.csv") {
        std::ofstream(folder() / name, std::ios::binary) << text;
        app::Choosers choosers;
        choosers.spreadsheet = [this, name](QWidget*) { return pathOf(name); };
        openOffice("spreadsheet", choosers);
        pressButton("spreadsheetChooseButton");
        waitForPlan();
    }
    void waitForPlan() {
        ASSERT_TRUE(support::waitFor([&] { return !page().isBusy(); }));
        settle();
        ASSERT_TRUE(support::waitFor([&] { return !page().isBusy(); }));
    }
    void mean(int column, const QString& meaning) {
        choose(QStringLiteral("column %1").arg(column).toUtf8().constData(), meaning);
        waitForPlan();
    }
    QString meaningOf(int column) {
        return child<QComboBox>(QStringLiteral("column %1").arg(column).toUtf8().constData())->currentText();
    }
    void make(const char* what) {
        focus(what);
        press(Qt::Key_Space);
        waitForPlan();
    }
    app::SheetTableModel& model() {
        return *static_cast<app::SheetTableModel*>(child<app::SheetTableView>("spreadsheetTable")->model());
    }
    QString summary() { return textOf("spreadsheetSummaryLabel"); }
    std::size_t kitCount() { return stored().kit().all().size(); }
    std::optional<core::Person> person(const std::string& name) {
        for (core::Person& each : stored().register_().people())
            if (each.name == name) return each;
        return std::nullopt;
    }
};

} // namespace

TEST_F(SpreadsheetStory, aPageWithoutAFileSaysWhatToDo) {
    openOffice("spreadsheet");
    EXPECT_TRUE(child("spreadsheetChooseButton")->isVisible());
    EXPECT_TRUE(textOf("spreadsheetFileLabel").contains(".xlsx"));
    EXPECT_FALSE(child("spreadsheetImportButton")->isVisible());
}

TEST_F(SpreadsheetStory, columnsAreGuessedAndAllRowsImportedAtOnce) {
    openSheet("Was;Seriennummer;Standort;Farbe\nknife;A-1;Gear store;rot\nknife;A-2;Bittern;rot\n");
    EXPECT_EQ(child<QComboBox>("spreadsheetKindBox")->currentText(), "a piece of kit");
    EXPECT_EQ(meaningOf(0), "kit type");
    EXPECT_EQ(meaningOf(1), "serial number");
    EXPECT_EQ(meaningOf(2), "boat or place");
    EXPECT_EQ(meaningOf(3), "leave out");
    ASSERT_EQ(model().rowCount(), 2);
    EXPECT_EQ(model().index(0, 2).data().toString(), "knife") << "as it stands in the sheet";
    EXPECT_EQ(summary(), "Kit: 2 new.");
    const auto before = kitCount();
    pressButton("spreadsheetImportButton");
    waitForPlan();
    EXPECT_EQ(kitCount(), before + 2);
    EXPECT_EQ(textOf("spreadsheetSaidLabel"), "Imported. Kit: 2 new.");
    // The same again: nothing is made twice.
    EXPECT_EQ(summary(), "Nothing would change: all of it is in the register already.");
    EXPECT_FALSE(child<QPushButton>("spreadsheetImportButton")->isEnabled());
}

TEST_F(SpreadsheetStory, aMeaningIsChangedByTheListAndTakenFromTheOther) {
    openSheet("Serial,Marking,What\nA-1,B-9,knife\n");
    EXPECT_EQ(meaningOf(0), "serial number");
    mean(1, "serial number");
    EXPECT_EQ(meaningOf(1), "serial number");
    EXPECT_EQ(meaningOf(0), "leave out");
    pressButton("spreadsheetImportButton");
    waitForPlan();
    const auto kit = stored().kit().all();
    EXPECT_TRUE(std::any_of(kit.begin(), kit.end(), [](const auto& item) { return item.serial == "B-9"; }));
    EXPECT_FALSE(std::any_of(kit.begin(), kit.end(), [](const auto& item) { return item.serial == "A-1"; }));
}

TEST_F(SpreadsheetStory, headingsThatNobodyKnowsAreShownToBeChosen) {
    openSheet("Dings,Bums\nknife,B-9\n");
    ASSERT_EQ(model().rowCount(), 1);
    EXPECT_FALSE(child<QPushButton>("spreadsheetImportButton")->isEnabled());
    mean(0, "kit type");
    mean(1, "serial number");
    EXPECT_EQ(summary(), "Kit: 1 new.");
}

TEST_F(SpreadsheetStory, aRefusedRowSaysWhyInItsRowAndNothingIsImported) {
    std::string rows = "What,Made\n";
    for (int i = 0; i < 30; ++i)
        rows += i == 20 ? "knife,sometime\n" : "knife,2025-03\n";
    openSheet(rows);
    EXPECT_TRUE(summary().startsWith("1 row is refused")) << summary().toStdString();
    EXPECT_EQ(model().reasonOf(19), "");
    EXPECT_TRUE(model().reasonOf(20).contains("sometime")) << model().reasonOf(20).toStdString();
    EXPECT_FALSE(child<QPushButton>("spreadsheetImportButton")->isEnabled());
    pressButton("spreadsheetNextButton");
    EXPECT_EQ(child<app::SheetTableView>("spreadsheetTable")->currentIndex().row(), 20);
    EXPECT_TRUE(textOf("spreadsheetRowLabel").contains("sometime"));
    mean(1, "leave out");
    EXPECT_TRUE(summary().startsWith("Kit: ")) << summary().toStdString();
    EXPECT_TRUE(child<QPushButton>("spreadsheetImportButton")->isEnabled());
}

TEST_F(SpreadsheetStory, whatIsMissingIsMadeWhereTheOfficerAgrees) {
    openSheet("What,Location\nanchor,Cellar\n");
    EXPECT_TRUE(summary().startsWith("1 row is refused")) << summary().toStdString();
    make("make kit_types");
    make("make places");
    EXPECT_TRUE(summary().contains("Kit types: 1 new.") && summary().contains("Places: 1 new.") &&
                summary().contains("Kit: 1 new."))
        << summary().toStdString();
    make("make places"); // and not so
    EXPECT_TRUE(summary().startsWith("1 row is refused"));
}

TEST_F(SpreadsheetStory, theOrderOfDayAndMonthIsAskedOnceWhereItMayBeTwo) {
    openSheet("What,Serial,Made\nknife,A-1,03/04/2024\nknife,A-2,05/06/2024\n");
    ASSERT_TRUE(child("spreadsheetDaysBox"));
    EXPECT_TRUE(child("spreadsheetDaysBox")->isVisible());
    EXPECT_FALSE(child<QPushButton>("spreadsheetImportButton")->isEnabled());
    choose("spreadsheetDaysBox", "the day first, then the month");
    waitForPlan();
    EXPECT_EQ(summary(), "Kit: 2 new.");
    EXPECT_TRUE(child("spreadsheetDaysBox")->isVisible()) << "it can be changed";
    pressButton("spreadsheetImportButton");
    waitForPlan();
    const auto kit = stored().kit().all();
    const auto first =
        std::find_if(kit.begin(), kit.end(), [](const core::Item& item) { return item.serial == "A-1"; });
    ASSERT_NE(first, kit.end());
    EXPECT_EQ(first->made->text(), "2024-04-03");
}

TEST_F(SpreadsheetStory, aWordThatIsNotOursIsAskedOnceAndRemembered) {
    const char* sheet = "Name,Role\nAnna Berg,bow hand\nBen Carter,Bow Hand\nCarla Diaz,helm\n";
    openSheet(sheet);
    EXPECT_EQ(child<QComboBox>("spreadsheetKindBox")->currentText(), "a person");
    EXPECT_TRUE(summary().startsWith("2 rows are refused")) << summary().toStdString();
    choose("word bow hand", "crew");
    waitForPlan();
    EXPECT_TRUE(summary().startsWith("People: 3 new.")) << summary().toStdString();
    pressButton("spreadsheetImportButton");
    waitForPlan();
    ASSERT_TRUE(person("Ben Carter"));
    EXPECT_EQ(person("Ben Carter")->role, "crew");
    EXPECT_EQ(person("Carla Diaz")->role, "driver");
    TearDown();
    openSheet("Name,Role\nDora Ek,bow hand\n");
    EXPECT_TRUE(summary().startsWith("People: 1 new.")) << summary().toStdString();
    choose("word bow hand", "driver"); // it can be changed
    waitForPlan();
    pressButton("spreadsheetImportButton");
    waitForPlan();
    EXPECT_EQ(person("Dora Ek")->role, "driver");
}

TEST_F(SpreadsheetStory, aWordThatTheClubToldCanBeForgottenAndIsAskedAgain) {
    const char* sheet = "Name,Role\nAnna Berg,bow hand\nBen Carter,Bow Hand\n";
    openSheet(sheet);
    EXPECT_FALSE(child("sheetToldWordsLabel")->isVisible());
    EXPECT_FALSE(child("forget bow hand")) << "nobody told the club yet";
    choose("word bow hand", "crew");
    waitForPlan();
    EXPECT_EQ(summary(), "People: 2 new. Your words: “bow hand” → crew, 2 rows.");
    pressButton("spreadsheetImportButton");
    waitForPlan();
    EXPECT_TRUE(textOf("spreadsheetSaidLabel").contains("“bow hand” → crew, 2 rows"));
    EXPECT_TRUE(child("sheetToldWordsLabel")->isVisible());
    pressButton("forget bow hand");
    ASSERT_TRUE(support::waitFor([&] { return summary().startsWith("2 rows are refused"); }))
        << summary().toStdString() << textOf("spreadsheetSaidLabel").toStdString();
    EXPECT_FALSE(child("sheetToldWordsLabel")->isVisible());
    choose("word bow hand", "driver");
    waitForPlan();
    EXPECT_TRUE(summary().startsWith("People: 2 changed.")) << summary().toStdString();
}

TEST_F(SpreadsheetStory, aFileThatIsNoSpreadsheetSaysHowToSaveIt) {
    openSheet("PK\x03\x04 no workbook at all", "broken.xlsx");
    EXPECT_TRUE(textOf("spreadsheetSaidLabel").contains("CSV"))
        << textOf("spreadsheetSaidLabel").toStdString();
    EXPECT_FALSE(child("spreadsheetImportButton")->isVisible());
    std::ofstream(folder() / "good.csv") << "What,Serial\nknife,Z-9\n";
    page().readFile(pathOf("good.csv"));
    waitForPlan();
    EXPECT_EQ(summary(), "Kit: 1 new.");
    std::ofstream(folder() / "empty.csv") << "";
    page().readFile(pathOf("empty.csv"));
    waitForPlan();
    EXPECT_FALSE(textOf("spreadsheetSaidLabel").isEmpty());
    EXPECT_EQ(textOf("spreadsheetFileLabel"), "good.csv") << "what was read before stays";
}

TEST_F(SpreadsheetStory, anotherSpreadsheetMayBeChosenWhileRowsAreLookedAt) {
    openSheet("What,Serial\nknife,Q-1\n");
    std::ofstream(folder() / "other.csv") << "What,Serial\nknife,Q-2\nknife,Q-3\n";
    child<QCheckBox>("make places")->toggle(); // planned anew
    ASSERT_TRUE(page().isBusy());
    page().readFile(pathOf("other.csv"));
    waitForPlan();
    EXPECT_EQ(textOf("spreadsheetFileLabel"), "other.csv");
    EXPECT_EQ(summary(), "Kit: 2 new.");
    pressButton("spreadsheetImportButton");
    waitForPlan();
    EXPECT_EQ(textOf("spreadsheetSaidLabel"), "Imported. Kit: 2 new.");
}

TEST_F(SpreadsheetStory, tenThousandRowsAreShownAndImported) {
    std::string rows = "What,Serial\n";
    for (int i = 0; i < 10'000; ++i)
        rows += "knife,S-" + std::to_string(i) + "\n";
    openSheet(rows);
    ASSERT_TRUE(support::waitFor([&] { return summary() == "Kit: 10000 new."; }, std::chrono::seconds(60)))
        << summary().toStdString();
    EXPECT_EQ(model().rowCount(), 10'000);
    child<app::SheetTableView>("spreadsheetTable")->goTo(9'999);
    EXPECT_EQ(model().index(9'999, 3).data().toString(), "S-9999");
}

// In the words of the register's forms; docs/command-line.md, "warnings", says what is warned of.
TEST_F(SpreadsheetStory, rowsThatMayNotBeMeantSoAreToldAndCanBeImported) {
    openSheet("boat_class,kit_type,quantity\nskiff,knife,1\nskif,knife,1\n");
    EXPECT_EQ(child<QComboBox>("spreadsheetKindBox")->currentText(), "a line of a boat's list");
    EXPECT_EQ(
        textOf("spreadsheetWarningsLabel"),
        "Row 3: Is it meant so? No boat has the class 'skif': its manifest is asked of none.\n"
        "Row 3: Is it meant so? The class 'skif' is almost 'skiff': if they are one, write them alike.");
    EXPECT_TRUE(child("spreadsheetWarningsLabel")->isVisible());
    EXPECT_FALSE(child("spreadsheetRowLabel")->isVisible()) << "it is told already";
    EXPECT_EQ(model().reasonOf(0), "");
    EXPECT_TRUE(model().reasonOf(1).startsWith("no boat has the class 'skif'"));
    EXPECT_EQ(model().headerData(app::SheetTableModel::ReasonColumn, Qt::Horizontal, Qt::DisplayRole),
              "Is it meant so?");
    pressButton("spreadsheetNextButton");
    EXPECT_EQ(child<app::SheetTableView>("spreadsheetTable")->currentIndex().row(), 1);
    pressButton("spreadsheetImportButton");
    waitForPlan();
    EXPECT_TRUE(textOf("spreadsheetSaidLabel").startsWith("Imported."));
    EXPECT_EQ(stored().manifests().read()->classesWithoutBoat(), std::vector<std::string>{"skif"});
    EXPECT_FALSE(child("spreadsheetWarningsLabel")->isVisible()) << "nothing of it would be written now";
}

TEST_F(SpreadsheetStory, rowsThatAreMeantSoAreToldNothingOf) {
    openSheet("boat_class,kit_type,quantity\nskiff,knife,1\nskiff,flare,1\n");
    EXPECT_TRUE(child<QPushButton>("spreadsheetImportButton")->isEnabled());
    EXPECT_FALSE(child("spreadsheetWarningsLabel")->isVisible());
    EXPECT_FALSE(child("spreadsheetNextButton")->isVisible());
    EXPECT_TRUE(
        child<app::SheetTableView>("spreadsheetTable")->isColumnHidden(app::SheetTableModel::ReasonColumn));
}

TEST_F(SpreadsheetStory, ofManySuchRowsThoseFromTheKeyboardsOnAreTold) {
    std::string rows = "kit_type,rule,kind,n\n";
    for (int i = 1; i <= 9; ++i)
        rows += "knife,rule " + std::to_string(i) + ",inspect_every,12\n";
    openSheet(rows);
    const QStringList lines = textOf("spreadsheetWarningsLabel").split('\n');
    ASSERT_EQ(lines.size(), 3);
    EXPECT_EQ(lines[0],
              "Row 2: Is it meant so? The rule 'rule 1' of 'knife' has no source: write who says so, "
              "such as the maker's manual.");
    EXPECT_EQ(lines[2], "and 7 more, each in its row above");
    for (int press = 0; press < 9; ++press)
        pressButton("spreadsheetNextButton");
    EXPECT_EQ(child<app::SheetTableView>("spreadsheetTable")->currentIndex().row(), 8);
    EXPECT_TRUE(textOf("spreadsheetWarningsLabel").startsWith("Row 10: Is it meant so? The rule 'rule 9' of"))
        << textOf("spreadsheetWarningsLabel").toStdString();
}

TEST_F(SpreadsheetStory, aRefusedRowIsToldBeforeWhatMayNotBeMeantSo) {
    openSheet("boat_class,kit_type,quantity\nskif,knife,1\nskiff,knife,many\n");
    EXPECT_TRUE(summary().startsWith("1 row is refused")) << summary().toStdString();
    EXPECT_FALSE(child("spreadsheetWarningsLabel")->isVisible());
    EXPECT_EQ(child<QPushButton>("spreadsheetNextButton")->text(), "Next refused row");
    EXPECT_EQ(model().headerData(app::SheetTableModel::ReasonColumn, Qt::Horizontal, Qt::DisplayRole),
              "Why it is refused");
}
