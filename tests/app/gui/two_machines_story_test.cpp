#include "app/gui/board/boat_strip.h"
#include "app/gui/board/shed_board.h"
#include "app/gui/check/check_page.h"
#include "app/gui/club/check_session.h"
#include "app/gui/gear/exchange/file_exchange_panel.h"
#include "app/gui/gear/office/gear_office.h"
#include "core/club/club_record.h"
#include "tests/app/gui/demo_club.h"
#include "tests/app/gui/story_hand.h"

#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>

#include <memory>

using support::StoryHand;
using support::waitFor;

namespace {

namespace fs = std::filesystem;

/// One machine of the club: a window on a file of its own, and somebody with a mouse.
class Machine {
public:
    Machine(fs::path file, const fs::path& stick)
        : m_file(std::move(file)) {
        app::Choosers choosers;
        choosers.sticks = [stick] { return QStringList{QString::fromStdString(stick.string())}; };
        window = std::make_unique<app::MainWindow>(
            [] {
                return core::Moment{*core::Instant::parse("2026-03-14T06:40:00Z"),
                                    *core::CalendarDay::from(2026, 3, 14)};
            },
            choosers);
        window->setCameraWanted(false);
        hand = std::make_unique<StoryHand>(*window, StoryHand::Way::Mouse);
        window->show();
        QObject::connect(window.get(), &app::MainWindow::boardShown, window.get(), [this] { ++m_boards; });
        const int before = m_boards;
        window->openClub(m_file);
        EXPECT_TRUE(waitFor([&] { return m_boards > before; }));
    }

    void showBoats() {
        const int before = m_boards;
        key("Ctrl+B");
        EXPECT_TRUE(waitFor([&] { return m_boards > before; }));
    }
    /// What stands on the board, a line for each boat.
    QStringList board() {
        showBoats();
        QStringList lines;
        for (const core::BoatCondition& boat : window->board().state().boats) {
            const app::BoatWords words = app::wordsOf(boat, window->board().state());
            lines << (QStringList{words.boat, words.condition, words.next} + words.reasons).join(" | ");
        }
        return lines;
    }
    void launch(const QString& boat, const char* by) {
        showBoats();
        hand->press("boatStrip " + boat);
        app::CheckPage& page = window->checkPage();
        ASSERT_TRUE(waitFor([&] { return page.session() && page.session()->state(); }));
        page.session()->sign(by, "needed at once");
        ASSERT_TRUE(waitFor([&] { return !page.session()->isBusy(); }));
        ASSERT_TRUE(waitFor([&] { return page.findChild<QWidget*>("signedPanel")->isVisible(); }));
    }
    void noteInRegister(const QString& boat, const QString& note) {
        key("Ctrl+Alt+3");
        hand->chooseRow("registerTable", boat);
        hand->fill("cell_note", note);
        hand->press("registerSaveButton");
        expectSaid("registerSaidLabel", boat + ": saved.");
    }
    /// Both ways with the one file on the stick; what was said of what came in.
    QString exchange() {
        key("Ctrl+Shift+X");
        auto* page = window->gearOffice().page("exchange")->findChild<app::FileExchangePanel*>();
        EXPECT_NE(page, nullptr);
        EXPECT_TRUE(waitFor([&] { return !page->isBusy() && !answer().isEmpty(); }));
        if (!answer().contains("would", Qt::CaseInsensitive)) { // of the time before
            hand->pressLine("exchangeFiles", hand->lineOf("exchangeFiles", "club.tholepin"));
            EXPECT_TRUE(
                waitFor([&] { return !page->isBusy() && answer().contains("would", Qt::CaseInsensitive); }));
        }
        hand->press("exchangeGoButton");
        EXPECT_TRUE(
            waitFor([&] { return !page->isBusy() && answer().contains("came in", Qt::CaseInsensitive); }));
        return answer();
    }
    QString answer() { return window->findChild<QLabel*>("exchangeAnswerLabel")->text(); }
    void key(const char* keys) {
        window->activateWindow();
        EXPECT_TRUE(waitFor([&] { return window->isActiveWindow(); }));
        QTest::keySequence(window.get(), QKeySequence(keys));
    }
    void expectSaid(const char* label, const QString& words) {
        EXPECT_TRUE(waitFor([&] { return window->findChild<QLabel*>(label)->text() == words; }))
            << window->findChild<QLabel*>(label)->text().toStdString();
    }

    std::unique_ptr<app::MainWindow> window;
    std::unique_ptr<StoryHand> hand;

private:
    fs::path m_file;
    int m_boards = 0;
};

class TwoMachines : public support::DemoClub {
protected:
    void SetUp() override {
        DemoClub::SetUp();
        for (const fs::path& each : {stick(), folder() / "office"})
            fs::create_directory(each);
    }
    fs::path stick() const { return folder() / "STICK"; }
    fs::path officersFile() const { return folder() / "office" / "ours.tholepin"; }
};

} // namespace

// The shed's laptop and the officer's, and a stick that is carried between them.
TEST_F(TwoMachines, shedAndOfficerEndWithTheSameBoard) {
    Machine shed(file(), stick());
    shed.key("Ctrl+Shift+X");
    shed.hand->pressLine("exchangeFiles", shed.hand->lineOf("exchangeFiles", "STICK"));
    shed.hand->press("exchangeGoButton");
    const auto* said = shed.window->findChild<QLabel*>("exchangeSaidLabel");
    ASSERT_TRUE(waitFor([&] { return said->text().startsWith("A copy was made"); }));
    fs::copy_file(stick() / "club.tholepin", officersFile());
    Machine officer(officersFile(), stick());

    shed.launch("Grebe", "Petra Lund");
    officer.launch("Dabchick", "Marta Quill");
    shed.noteInRegister("Bittern", "port bung is stiff");
    officer.noteInRegister("Bittern", "first out on Sundays");
    officer.noteInRegister("Grebe", "new keel band");
    EXPECT_NE(shed.board(), officer.board());

    EXPECT_EQ(officer.exchange(), "Nothing new came in.") << "what is on the stick is as old as the copy";
    EXPECT_TRUE(shed.exchange().startsWith("Came in: ")) << shed.answer().toStdString();
    const QString toLookAt =
        "Note of Bittern was changed on two machines within an hour: the newer one holds";
    shed.hand->pressLine("exchangeLooks", shed.hand->lineOf("exchangeLooks", toLookAt));
    ASSERT_TRUE(waitFor([&] { return shed.window->gearOffice().currentPage() == "register"; }));
    auto* note = qobject_cast<QLineEdit*>(shed.hand->find("cell_note"));
    ASSERT_NE(note, nullptr);
    EXPECT_EQ(note->text(), "first out on Sundays");
    EXPECT_TRUE(officer.exchange().startsWith("Came in: ")) << officer.answer().toStdString();

    const QStringList board = shed.board();
    EXPECT_EQ(board, officer.board());
    EXPECT_EQ(board.filter("| out, launch signed").size(), 2) << board.join('\n').toStdString();
    for (const fs::path& each : {file(), officersFile(), stick() / "club.tholepin"}) {
        auto club = core::Club::open(each, core::Club::Access::ReadOnly);
        ASSERT_TRUE(club);
        EXPECT_TRUE(club->record().verify(false)->problems.empty()) << each;
    }
}
