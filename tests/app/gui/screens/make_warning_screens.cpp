// Pictures of what is warned of, in English and German, to be looked at: the set-up page with a mistyped
// class, forms of one row and of several things, a manifest's line, a class that no boat has, a spreadsheet.
//     gui_warning_screens FOLDER

#include "app/gui/gear/record/history_panel.h"
#include "app/gui/gear/record/record_page.h"
#include "app/gui/gear/setup/set_up_page.h"
#include "app/gui/gear/spreadsheet/sheet_table_view.h"
#include "app/gui/gear/spreadsheet/spreadsheet_page.h"
#include "app/gui/theme/language.h"
#include "app/gui/widgets/plain_table.h"
#include "tests/app/gui/screens/screens.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSpinBox>

#include <fstream>

namespace {

using core::SheetId;

/// Two boats of mistyped classes, one of a class with no list, a place that ends, kit types that nobody has.
bool makeClub(const support::ScreensProgram& program) {
    auto club = program.makeClub();
    if (!club) return false;
    const auto folder = std::filesystem::path(program.scratch().toStdString()) / "more";
    std::filesystem::create_directories(folder);
    const auto write = [&](const char* name, const char* rows) { std::ofstream(folder / name) << rows; };
    write("kit_types.csv", "kit_type\nanchor\ndrogue\n");
    write("boats.csv",
          "boat,boat_class\nHeron,inflatible\nSandpiper,inflatible\nTern,skif\nCurlew,rescue jet\n");
    write("places.csv", "place,until\nGear store,2026-12-31\n");
    write("manifest_lines.csv",
          "boat_class,kit_type,quantity\nrowing skiff,knife,2\nrowing skiff,throw line,1\n");
    write("points.csv", "boat_class,phase,point,kind\nrowing skiff,launch,hull,look\n");
    const auto plan = club->register_().importCsv(folder, support::screensDay(), false);
    return plan && plan->rejected.empty();
}

class Screens : public support::ScreensOffice {
public:
    Screens(const support::ScreensProgram& program, QString language)
        : ScreensOffice(program)
        , m_pictures(office(), program.folder())
        , m_language(std::move(language))
        , m_scratch(program.scratch()) {}

    void takeAll() {
        takeSetUp();
        takeRegister();
        takeKit();
        takeManifests();
        takeSpreadsheet();
        takeHistory();
    }
    bool isWritten() const { return m_isWritten; }

private:
    void take(const QString& name) {
        settle();
        m_isWritten &= m_pictures.take(QStringLiteral("%1-%2").arg(name, m_language), {"light"},
                                       {{1280, 800}, {1024, 768}});
    }
    void press(const char* button) {
        find<QPushButton>(button)->click();
        settle();
    }
    void chooseData(const char* box, const QVariant& data) {
        auto* choices = find<QComboBox>(box);
        choices->setCurrentIndex(choices->findData(data));
        settle();
    }
    /// As when it is typed.
    void type(const char* edit, const QString& text) { find<QLineEdit>(edit)->setText(text); }
    void typeName(const char* box, const QString& text) { find<QComboBox>(box)->setEditText(text); }
    void waitFor(const char* label) {
        m_isWritten &= support::waitFor([&] { return find<QLabel>(label)->isVisible(); });
    }
    void openRow(SheetId sheet, const std::string& row) {
        chooseData("registerSheetBox", static_cast<int>(sheet));
        auto* table = find<app::PlainTable>("registerTable");
        table->choose(QString::fromStdString(row));
        emit table->rowPressed(table->chosen());
        settle();
    }

    void takeSetUp() {
        show("setup");
        take("warn-setup");
        qobject_cast<app::SetUpPage*>(office().page("setup"))->showFitOut("Heron");
        take("warn-fit-out");
        qobject_cast<app::SetUpPage*>(office().page("setup"))->showSteps();
    }

    void takeRegister() {
        show("register");
        press("registerNewButton");
        typeName("cell_boat", "Whimbrel");
        typeName("cell_boat_class", "inflatible");
        waitFor("registerWarningsLabel");
        take("warn-register-boat");
        press("registerDiscardButton");
        openRow(SheetId::KitTypes, "life_rule\x1Elife jacket\x1F\x1F"
                                   "float test");
        type("cell_n", "6");
        type("cell_source", "");
        waitFor("registerWarningsLabel");
        take("warn-register-rule");
        press("registerDiscardButton");
        openRow(SheetId::Boats, "boat\x1Etern");
        press("registerRenameButton");
        find<QComboBox>("renameWhatBox")->setCurrentIndex(1);
        type("renameNameEdit", "inflatable raft");
        type("renameNameEdit", "skiffs");
        waitFor("renameWarningsLabel");
        take("warn-rename");
        press("renameKeepButton");
    }

    void takeKit() {
        show("kit");
        auto* table = find<app::PlainTable>("kitTable");
        static_cast<app::PlainTableModel*>(table->model())->setTicked({"KGNNWAZAVX", "KVP5CYVRE7"});
        emit table->ticksChanged();
        settle();
        typeName("kitSeveralNameBox", "Gear store");
        waitFor("kitSeveralWarningsLabel");
        take("warn-kit-several");
        press("kitUntickButton");
        type("kitSearchEdit", "K5M9AR38J5");
        emit find<QLineEdit>("kitSearchEdit")->returnPressed();
        settle();
        press("kitChangeButton");
        type("cell_made", "2024-05");
        type("cell_first_use", "2023");
        settle();
        support::waitFor([] { return false; }, std::chrono::milliseconds(900));
        take("warn-kit-change");
    }

    void takeManifests() {
        show("manifests");
        press("manifestAddButton");
        chooseData("manifestKitTypeBox", m_language == "en" ? "anchor" : "drogue"); // each once
        waitFor("manifestLineWarningsLabel");
        take("warn-manifest-line");
        press("manifestLineWriteButton");
        take("warn-manifest-saved");
        chooseData("manifestOwnerBox", QStringLiteral("crowing skiff"));
        find<app::PlainTable>("manifestTable")->choose("knife");
        take("warn-manifest-no-boat");
        press("manifestLineTakeAwayButton");
        take("warn-manifest-no-boat-question");
        find<QRadioButton>("manifestPointsChoice")->setChecked(true);
        find<app::PlainTable>("manifestTable")->choose("launch/hull");
        take("warn-manifest-no-boat-point");
        find<QRadioButton>("manifestLinesChoice")->setChecked(true);
    }

    void takeSpreadsheet() {
        show("spreadsheet");
        auto& page = *qobject_cast<app::SpreadsheetPage*>(office().page("spreadsheet"));
        read(page, "Our boats' lists.csv",
             "Class;Kit type;Number\nskiff;knife;1\nskif;throw line;1\nskiff;anchor;2\nskiff;oar;2\n");
        take("warn-spreadsheet");
        std::string rules = "Kit type;Rule;Kind;n\n";
        for (int i = 1; i <= 9; ++i)
            rules += "knife;look " + std::to_string(i) + ";inspect_every;12\n";
        read(page, "Our rules.csv", rules);
        find<app::SheetTableView>("spreadsheetTable")->goTo(6);
        take("warn-spreadsheet-many");
    }
    void read(app::SpreadsheetPage& page, const QString& name, const std::string& rows) {
        const QString file = m_scratch + '/' + name;
        std::ofstream(file.toStdString()) << rows;
        page.readFile(file);
        settle();
        m_isWritten &= support::waitFor([&] { return !page.isBusy(); });
    }

    void takeHistory() {
        show("record");
        auto* record = qobject_cast<app::RecordPage*>(office().page("record"));
        record->showPanel(record->historyPanel());
        settle();
        record->historyPanel().tell("KGYD21XNA5");
        take("warn-history-item");
        record->historyPanel().tell("Dabchick");
        take("warn-history-boat");
    }

    app::WindowPictures m_pictures;
    QString m_language;
    QString m_scratch;
    bool m_isWritten = true;
};

} // namespace

int main(int argc, char** argv) {
    const support::ScreensProgram program(argc, argv);
    if (!program.hasFolder()) return 2;
    if (!makeClub(program)) return 3;
    bool isWritten = true;
    for (const char* language : {"en", "de"}) {
        app::speak(language);
        Screens screens(program, language);
        if (!screens.isOpen()) return 3;
        screens.takeAll();
        isWritten &= screens.isWritten();
    }
    return isWritten ? 0 : 3;
}
