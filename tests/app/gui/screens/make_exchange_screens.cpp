// Pictures of a club on more than one machine: the page Exchange before and after, and when it refuses.
//     gui_exchange_screens FOLDER

#include "app/gui/board/shed_board.h"
#include "app/gui/gear/exchange/file_exchange_panel.h"
#include "app/gui/main_window.h"
#include "app/gui/widgets/row_list.h"
#include "core/club/club_copy.h"
#include "core/club/register_edit.h"
#include "tests/app/gui/screens/screens.h"

#include <QPushButton>

#include <fstream>

namespace {

namespace fs = std::filesystem;
using support::waitFor;

const QList<QSize> smallSizes{{1280, 800}, {1024, 768}};

class ExchangeScreens {
public:
    explicit ExchangeScreens(const support::ScreensProgram& program)
        : m_file(program.clubFile())
        , m_stick(fs::path(program.scratch().toStdString()) / "SHED STICK")
        , m_window([] { return support::at("2026-03-14T06:40:00Z"); }, choosers())
        , m_pictures(m_window, program.folder()) {
        m_window.setCameraWanted(false);
        m_window.show();
        QObject::connect(&m_window, &app::MainWindow::boardShown, &m_window, [this] { ++m_boards; });
        m_window.openClub(m_file);
        m_isWritten &= waitFor([&] { return m_boards > 0; });
    }

    bool isWritten() const { return m_isWritten; }

    void takeExchange() {
        show();
        take("exchange-empty");
        fs::create_directories(m_stick);
        press("exchangeAgainButton");
        page().findChild<app::RowList*>("exchangeFiles")->rowPressed(keyOf("club.tholepin"));
        take("exchange-copy");
        press("exchangeGoButton");
        writeOnBoth();
        std::ofstream(m_stick / "list.tholepin") << "a shopping list";
        press("exchangeAgainButton");
        take("exchange-plan");
        speak("de", "exchange-plan-german");
        press("exchangeGoButton");
        take("exchange-done");
        speak("de", "exchange-empty-german");
    }

private:
    app::Choosers choosers() const {
        app::Choosers choosers;
        choosers.sticks = [stick = m_stick] {
            return fs::exists(stick) ? QStringList{QString::fromStdString(stick.string())} : QStringList();
        };
        return choosers;
    }
    app::FileExchangePanel& page() {
        return *m_window.gearOffice().page("exchange")->findChild<app::FileExchangePanel*>();
    }
    QString keyOf(const char* name) const { return QString::fromStdString((m_stick / name).string()); }
    void show() {
        m_window.gearOffice().showPage("exchange");
        emit m_window.gearOffice().pageWanted("exchange");
        settle();
    }
    void settle() {
        waitFor([&] { return !page().isBusy(); });
        waitFor([] { return false; }, std::chrono::milliseconds(200));
        waitFor([&] { return !page().isBusy(); });
    }
    void press(const char* button) {
        page().findChild<QPushButton*>(button)->click();
        settle();
    }
    void take(const QString& name) { m_isWritten &= m_pictures.take(name, support::allThemes, smallSizes); }
    /// The page as it is in another language, and back.
    void speak(const char* language, const QString& name) {
        m_window.setLanguage(language);
        show();
        take(name);
        m_window.setLanguage("en");
        show();
    }
    static void write(core::Club& club, core::SheetId sheet, const core::CellTexts& key,
                      const core::CellTexts& cells) {
        (void)club.register_().write({sheet, {{key, cells, {}}}}, "Joss Iveny",
                                     support::at("2026-03-14T06:30:00Z"));
    }
    void writeOnBoth() {
        auto here = core::Club::open(m_file), van = core::Club::open(m_stick / "club.tholepin");
        if (!here || !van) return;
        support::checkWithAllKit(*van, "Bittern", core::Phase::Launch, support::at("2026-03-14T06:05:00Z"),
                                 {"Marta Quill", "Hal Okoro"});
        write(*here, core::SheetId::People, {}, {{"person", "Nia Marsh"}, {"role", "crew"}});
        write(*van, core::SheetId::People, {}, {{"person", "Nia Marsch"}, {"role", "crew"}});
        write(*here, core::SheetId::Boats, {{"boat", "Bittern"}}, {{"note", "port bung is stiff"}});
        write(*van, core::SheetId::Boats, {{"boat", "Bittern"}}, {{"note", "first out on Sundays"}});
    }

    fs::path m_file;
    fs::path m_stick;
    app::MainWindow m_window;
    app::WindowPictures m_pictures;
    int m_boards = 0;
    bool m_isWritten = true;
};

} // namespace

int main(int argc, char** argv) {
    const support::ScreensProgram program(argc, argv);
    if (!program.hasFolder() || !program.makeClub()) return 2;
    ExchangeScreens screens(program);
    screens.takeExchange();
    return screens.isWritten() ? 0 : 3;
}
