// Pictures of a club on more than one machine: the page Exchange before and after, and when it refuses.
//     gui_exchange_screens FOLDER

#include "app/gui/board/shed_board.h"
#include "app/gui/club/club_lock.h"
#include "app/gui/club/hub_watch.h"
#include "app/gui/gear/exchange/exchange_page.h"
#include "app/gui/gear/exchange/file_exchange_panel.h"
#include "app/gui/gear/register/register_page.h"
#include "app/gui/gear/register/register_rows.h"
#include "app/gui/main_window.h"
#include "app/gui/widgets/row_list.h"
#include "core/base/error_code.h"
#include "core/club/club_copy.h"
#include "core/club/club_pins.h"
#include "core/club/register_edit.h"
#include "core/record/pin.h"
#include "tests/app/gui/screens/screens.h"

#include <QLineEdit>
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

    /// The district's server, as if there were one.
    void takeDistrict() {
        settleALittle();
        app::HubNews news{.isJoined = true, .exchanged = core::Instant::parse("2026-03-14T06:38:00Z")};
        news.cameIn.lookAt.resize(2);
        m_window.board().sayOfHub(news);
        take("exchange-board");
        news.hindrance = core::Error{core::ErrorCode::HubNotReached, {"no route"}};
        m_window.board().sayOfHub(news);
        take("exchange-board-alone");
        show();
        qobject_cast<app::ExchangePage*>(m_window.gearOffice().page("exchange"))->showDistrict();
        take("exchange-district");
    }

    void takePins() {
        {
            auto club = core::Club::open(m_file);
            if (!club || !club->pins().set("Joss Iveny", *core::Pin::from("4711"), {})) return;
        }
        showPerson("Petra Lund");
        find<QPushButton>("registerPinButton")->click();
        settleALittle();
        take("pin-panel");
        find<QLineEdit>("pinNewEdit")->setText("8215");
        find<QLineEdit>("pinAgainEdit")->setText("8215");
        find<QPushButton>("pinSetButton")->click();
        settleALittle();
        take("pin-asked");
        find<QLineEdit>("unlockPinEdit")->setText("4711");
        find<QPushButton>("unlockButton")->click();
        waitFor([&] { return !m_window.lock().person().isEmpty(); });
        settleALittle();
        take("pin-unlocked");
        m_window.setLanguage("de");
        showPerson("Sami Reeve");
        find<QPushButton>("registerPinButton")->click();
        m_window.lock().lock();
        settleALittle();
        find<QLineEdit>("pinNewEdit")->setText("8215");
        find<QLineEdit>("pinAgainEdit")->setText("8215");
        find<QPushButton>("pinSetButton")->click();
        settleALittle();
        take("pin-asked-german");
        m_window.setLanguage("en");
    }

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
    template <class Widget>
    Widget* find(const char* name) {
        return m_window.findChild<Widget*>(name);
    }
    static void settleALittle() {
        waitFor([] { return false; }, std::chrono::milliseconds(500));
    }
    void showPerson(const QString& name) {
        m_window.gearOffice().showPage("register");
        emit m_window.gearOffice().pageWanted("register");
        auto* page = qobject_cast<app::RegisterPage*>(m_window.gearOffice().page("register"));
        page->showSheet(core::SheetId::People, app::keyOfRow(core::SheetId::People, {name.toStdString()}));
        settleALittle();
    }
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
    screens.takePins();
    screens.takeDistrict();
    return screens.isWritten() ? 0 : 3;
}
