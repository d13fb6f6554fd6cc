// Pictures of a club's first start: the welcome page, what is still to do, a boat that is fitted out, and a
// spreadsheet on its way into the register.
//     gui_start_screens FOLDER

#include "app/gui/board/shed_board.h"
#include "app/gui/gear/setup/fit_out_panel.h"
#include "app/gui/gear/setup/set_up_page.h"
#include "app/gui/gear/spreadsheet/sheet_table_view.h"
#include "app/gui/gear/spreadsheet/spreadsheet_page.h"
#include "app/gui/main_window.h"
#include "app/gui/widgets/row_list.h"
#include "tests/app/gui/screens/screens.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>

#include <fstream>

namespace {

using support::waitFor;

const QStringList twoThemes{"light", "sun"};
const QList<QSize> smallSizes{{1280, 800}, {1024, 768}};

class StartScreens {
public:
    explicit StartScreens(const support::ScreensProgram& program)
        : m_scratch(program.scratch())
        , m_window([] { return support::at("2026-03-14T06:40:00Z"); }, app::Choosers{})
        , m_pictures(m_window, program.folder()) {
        m_window.setCameraWanted(false);
        m_window.show();
    }

    bool isWritten() const { return m_isWritten; }

    void takeWelcome() {
        find<QLineEdit>("clubNameEdit")->setText("Quillmere Lake Rescue");
        find<QLineEdit>("clubFileEdit")->setText("/home/joss/Documents/Quillmere Lake Rescue.tholepin");
        take("start-welcome");
        find<QRadioButton>("clubBegins folder")->setChecked(true);
        find<QPushButton>("newClubButton")->click();
        take("start-welcome-folder");
        find<QRadioButton>("clubBegins inflatable")->setChecked(true);
        find<QLineEdit>("clubFileEdit")->setText(m_scratch + "/lake.tholepin");
        find<QPushButton>("newClubButton")->click();
        m_isWritten &= waitFor([&] { return m_window.gearOffice().isVisible(); });
    }

    void takeSetUp() {
        settle();
        take("start-setup-empty");
        import();
        auto& page = setUp();
        page.refresh();
        settle();
        take("start-setup");
        page.showFitOut("Dabchick");
        settle();
        auto* list = page.findChild<app::RowList*>("fitOutList");
        list->setCurrentIndex(list->model()->index(2, 0));
        page.findChild<QLineEdit*>("fitOutMadeEdit")->setText("2025-11");
        emit page.findChild<QLineEdit*>("fitOutMadeEdit")->textEdited("2025-11");
        take("start-fit-out");
        page.showSteps();
    }

    void takeSpreadsheet() {
        m_window.gearOffice().showPage("spreadsheet");
        take("start-spreadsheet-empty");
        const QString file = m_scratch + "/Our kit.csv";
        std::ofstream(file.toStdString())
            << "Item;Size;Where;Serial no.;Made;Expiry;Condition;Colour\n"
               "Knife;;Boat store;K-114;03/04/2024;;ok;orange\nPaddle;;Dabchick;;05/06/2023;;fine;\n"
               "Life jacket;adult M;Dabchick;LJ-7;2022;01/11/2026;sound;red\nThrow bag;;Dabchick;;2021;;ok;\n"
               "Tow line;;Dabchick;;last year;;ok;blue\nRadio;;Dabchick;R-2;2020;;a bit rusty;\n";
        auto& page = *qobject_cast<app::SpreadsheetPage*>(m_window.gearOffice().page("spreadsheet"));
        page.readFile(file);
        waitForPlan(page);
        take("start-spreadsheet-days");
        page.findChild<QComboBox*>("spreadsheetDaysBox")->setCurrentIndex(1);
        waitForPlan(page);
        page.findChild<QCheckBox*>("make kit_types")->setChecked(true);
        waitForPlan(page);
        page.findChild<app::SheetTableView*>("spreadsheetTable")->goTo(4);
        take("start-spreadsheet");
        m_window.setLanguage("de");
        m_window.gearOffice().showPage("setup");
        emit m_window.gearOffice().pageWanted("setup");
        settle();
        m_isWritten &= m_pictures.take("start-setup-german", {"light"}, smallSizes);
        setUp().showFitOut("Dabchick");
        settle();
        m_isWritten &= m_pictures.take("start-fit-out-german", {"light"}, smallSizes);
        m_window.gearOffice().showPage("spreadsheet");
        auto& german = *qobject_cast<app::SpreadsheetPage*>(m_window.gearOffice().page("spreadsheet"));
        german.readFile(file);
        waitForPlan(german);
        m_isWritten &= m_pictures.take("start-spreadsheet-german", {"light"}, smallSizes);
        m_window.setLanguage("en");
    }

    void takeBoard() {
        bool isShown = false;
        QObject::connect(&m_window, &app::MainWindow::boardShown, &m_window, [&] { isShown = true; });
        m_window.openClub((m_scratch + "/lake.tholepin").toStdString());
        m_isWritten &= waitFor([&] { return isShown; });
        take("start-board");
    }

private:
    template <class Widget>
    Widget* find(const char* name) {
        return m_window.findChild<Widget*>(name);
    }
    app::SetUpPage& setUp() { return *qobject_cast<app::SetUpPage*>(m_window.gearOffice().page("setup")); }
    void take(const QString& name) { m_isWritten &= m_pictures.take(name, twoThemes, smallSizes); }
    /// What was asked of the club file is there by then.
    static void settle() {
        waitFor([] { return false; }, std::chrono::milliseconds(300));
    }
    static void waitForPlan(const app::SpreadsheetPage& page) {
        settle();
        waitFor([&] { return !page.isBusy(); });
    }
    /// Two boats, and people, by a second reader.
    void import() {
        const std::filesystem::path folder = (m_scratch + "/more").toStdString();
        std::filesystem::create_directories(folder);
        std::ofstream(folder / "places.csv") << "place\nBoat store\n";
        std::ofstream(folder / "boats.csv") << "boat,boat_class\nDabchick,inflatable\nGrebe,inflatable\n";
        std::ofstream(folder / "people.csv") << "person,role\nJoss Iveny,gear officer\nMarta Quill,driver\n";
        auto club = core::Club::open((m_scratch + "/lake.tholepin").toStdString());
        m_isWritten &= club && club->register_().importCsv(folder, support::screensDay(), false);
    }

    QString m_scratch;
    app::MainWindow m_window;
    app::WindowPictures m_pictures;
    bool m_isWritten = true;
};

} // namespace

int main(int argc, char** argv) {
    const support::ScreensProgram program(argc, argv);
    if (!program.hasFolder()) return 2;
    StartScreens screens(program);
    screens.takeWelcome();
    screens.takeSetUp();
    screens.takeSpreadsheet();
    screens.takeBoard();
    return screens.isWritten() ? 0 : 3;
}
