#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QStackedWidget>
#include <QTest>

#include "app/gui/board/set_up_strip.h"
#include "app/gui/board/shed_board.h"
#include "app/gui/camera/hand_scanner.h"
#include "app/gui/club/new_club.h"
#include "app/gui/gear/office/gear_office.h"
#include "app/gui/gear/spreadsheet/spreadsheet_page.h"
#include "app/gui/main_window.h"
#include "core/club/club.h"
#include "core/club/club_register.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/wait_for.h"

#include <gtest/gtest.h>

#include <QDir>

#include <fstream>
#include <memory>

using support::waitFor;

namespace {

/// A window without a club file, in the hands of somebody who starts one.
class StartStory : public testing::Test {
protected:
    void SetUp() override {
        app::Choosers choosers;
        choosers.newClub = [this](QWidget*) { return m_chosenFile; };
        choosers.importFolder = [this](QWidget*) { return pathOf("csv"); };
        choosers.spreadsheet = [this](QWidget*) { return pathOf("kit.csv"); };
        m_window = std::make_unique<app::MainWindow>(
            [] {
                return core::Moment{*core::Instant::parse("2026-03-14T06:40:00Z"),
                                    *core::CalendarDay::from(2026, 3, 14)};
            },
            choosers);
        m_window->setCameraWanted(false);
        m_window->handScanner().setClock([this] { return m_keyMs; });
        m_window->show();
        m_window->activateWindow();
        ASSERT_TRUE(waitFor([&] { return m_window->isActiveWindow(); }));
    }
    void TearDown() override { m_window.reset(); }

    app::MainWindow& window() { return *m_window; }
    QString pathOf(const char* name) const { return QString::fromStdString((m_folder / name).string()); }
    void write(const char* name, const char* text) {
        const std::filesystem::path file = m_folder / name;
        std::filesystem::create_directories(file.parent_path());
        std::ofstream(file) << text;
    }
    template <class Widget>
    Widget* child(const char* name) {
        return m_window->findChild<Widget*>(name);
    }
    QString said(const char* label) {
        const auto* shown = child<QLabel>(label);
        return shown->isVisible() ? shown->text() : QString();
    }
    /// As a person types: a scanner is quicker.
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        m_keyMs += 80;
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
    }
    void type(const QString& text) {
        for (const QChar letter : text) {
            m_keyMs += 80;
            QTest::keyClick(QApplication::focusWidget(), letter.toLatin1());
        }
    }
    /// By Tab alone, as somebody without a mouse goes there.
    void tabTo(const char* name) {
        for (int i = 0; i < 60 && QApplication::focusWidget()->objectName() != name; ++i)
            press(Qt::Key_Tab);
        ASSERT_EQ(QApplication::focusWidget()->objectName(), name);
    }
    /// Goes through the choices with the arrow keys.
    void begin(const char* choice) {
        const QString wanted = QStringLiteral("clubBegins ") + choice;
        for (int i = 0; i < 60 && !qobject_cast<QRadioButton*>(QApplication::focusWidget()); ++i)
            press(Qt::Key_Tab);
        // They stand in two columns: starters, and what a club has already.
        const auto* wantedButton = child<QRadioButton>(wanted.toUtf8().constData());
        if (wantedButton->x() > QApplication::focusWidget()->x()) press(Qt::Key_Right);
        for (int i = 0; i < 8 && QApplication::focusWidget()->objectName() != wanted; ++i)
            press(Qt::Key_Down);
        ASSERT_TRUE(wantedButton->isChecked());
    }
    void nameIt(const QString& club, const char* file) {
        tabTo("clubNameEdit");
        type(club);
        tabTo("clubFileEdit");
        press(Qt::Key_A, Qt::ControlModifier);
        type(pathOf(file));
    }
    void start() {
        tabTo("newClubButton");
        press(Qt::Key_Return);
    }
    bool isOnPage(const char* id) {
        return waitFor(
            [&] { return window().gearOffice().isVisible() && window().gearOffice().currentPage() == id; });
    }
    core::Club stored(const char* name) {
        auto club = core::Club::open(m_folder / name, core::Club::Access::ReadOnly);
        EXPECT_TRUE(club);
        return std::move(club).value();
    }

    support::ScratchFolder m_folder;
    QString m_chosenFile;

private:
    qint64 m_keyMs = 0;
    std::unique_ptr<app::MainWindow> m_window;
};

} // namespace

TEST_F(StartStory, aStarterIsChosenByKeysAloneAndLeadsToWhatIsToDo) {
    nameIt("Lake club", "lake.tholepin");
    begin("rowing");
    EXPECT_TRUE(said("clubBeginsLabel").contains("example: put your maker's and your club's in its place"));
    start();
    ASSERT_TRUE(isOnPage("setup"));
    const core::Club club = stored("lake.tholepin");
    EXPECT_EQ(club.name(), "Lake club");
    const auto kitTypes = club.register_().kitTypes();
    EXPECT_EQ(kitTypes.size(), 10u) << "as many as app/starters/rowing/kit_types.csv has";
    ASSERT_TRUE(waitFor([&] { return said("setUpSummaryLabel").startsWith("0 of 6 are done"); }));
}

TEST_F(StartStory, theFileIsSuggestedByTheNameUntilSomebodySaysOtherwise) {
    tabTo("clubNameEdit");
    type("North / South");
    const QString documents = app::documentsFolder();
    EXPECT_TRUE(QDir(documents).exists()) << "a file can be made there";
    EXPECT_EQ(child<QLineEdit>("clubFileEdit")->text(),
              QDir::toNativeSeparators(documents + "/North South.tholepin"));
    m_chosenFile = pathOf("ours.tholepin");
    tabTo("clubFileButton");
    press(Qt::Key_Return);
    EXPECT_EQ(child<QLineEdit>("clubFileEdit")->text(), QDir::toNativeSeparators(m_chosenFile));
    press(Qt::Key_Backtab);
    press(Qt::Key_Backtab);
    type(" East");
    EXPECT_EQ(child<QLineEdit>("clubFileEdit")->text(), QDir::toNativeSeparators(m_chosenFile));
}

TEST_F(StartStory, aFileThatIsThereAlreadyIsLeftAloneAndSaidBesideIt) {
    write("lake.tholepin", "somebody's");
    nameIt("Lake club", "lake.tholepin");
    begin("nothing");
    start();
    ASSERT_TRUE(waitFor([&] { return !said("clubFileSaidLabel").isEmpty(); }));
    EXPECT_TRUE(said("clubFileSaidLabel").contains("lake.tholepin"));
    EXPECT_FALSE(window().gearOffice().isVisible());
    EXPECT_EQ(std::filesystem::file_size(m_folder / "lake.tholepin"), 10u);
    // Another name, and it goes.
    tabTo("clubFileEdit");
    press(Qt::Key_A, Qt::ControlModifier);
    type(pathOf("other.tholepin"));
    EXPECT_EQ(said("clubFileSaidLabel"), "");
    start();
    ASSERT_TRUE(isOnPage("setup"));
    EXPECT_EQ(stored("other.tholepin").register_().boats().size(), 0u);
}

TEST_F(StartStory, aFolderWithABadRowMakesNoFileAndSaysWhichRow) {
    write("csv/boats.csv", "boat,boat_class,priority\nTeal,inflatable,often\n");
    nameIt("Lake club", "lake.tholepin");
    begin("folder");
    start();
    EXPECT_EQ(said("clubRegisterSaidLabel"), "Choose the folder of CSV files.");
    tabTo("clubFolderButton");
    press(Qt::Key_Return);
    start();
    ASSERT_TRUE(waitFor([&] { return said("clubRegisterSaidLabel").contains("boats.csv, row 2"); }))
        << said("clubRegisterSaidLabel").toStdString();
    EXPECT_FALSE(std::filesystem::exists(m_folder / "lake.tholepin"));
    write("csv/boats.csv", "boat,boat_class,priority\nTeal,inflatable,2\n");
    start();
    ASSERT_TRUE(isOnPage("setup"));
    EXPECT_EQ(stored("lake.tholepin").register_().boats().size(), 1u);
}

TEST_F(StartStory, aSpreadsheetIsReadOnceTheFileIsMade) {
    write("kit.csv", "What,Serial\nKnife,A-1\n");
    nameIt("Lake club", "lake.tholepin");
    begin("spreadsheet");
    start();
    ASSERT_TRUE(isOnPage("spreadsheet"));
    const auto* page = qobject_cast<app::SpreadsheetPage*>(window().gearOffice().page("spreadsheet"));
    ASSERT_TRUE(waitFor([&] { return said("spreadsheetFileLabel") == "kit.csv" && !page->isBusy(); }));
    EXPECT_TRUE(child<QPushButton>("spreadsheetNextButton")->isVisible()) << "there is no kit type yet";
}

TEST_F(StartStory, aClubThatIsOpenStaysOpenWhereANewOneIsRefused) {
    nameIt("Lake club", "lake.tholepin");
    begin("nothing");
    start();
    ASSERT_TRUE(isOnPage("setup"));
    EXPECT_EQ(child<QLabel>("welcomeTitleLabel")->text(), "No club file is open.");
    QTest::keySequence(&window(), QKeySequence("Ctrl+B"));
    ASSERT_TRUE(waitFor([&] { return window().board().state().club == "Lake club"; }));
    press(Qt::Key_N, Qt::ControlModifier);
    EXPECT_EQ(said("welcomeTitleLabel"), "“Lake club” is open until another file is.");
    auto* back = child<QPushButton>("welcomeBackButton");
    ASSERT_TRUE(back->isVisible());
    back->setFocus(Qt::TabFocusReason);
    press(Qt::Key_Space);
    ASSERT_TRUE(window().isBoardShown());
    press(Qt::Key_N, Qt::ControlModifier);
    ASSERT_EQ(QApplication::focusWidget()->objectName(), "clubNameEdit");
    nameIt("Other club", "lake.tholepin"); // the same file
    start();
    ASSERT_TRUE(waitFor([&] { return !said("clubFileSaidLabel").isEmpty(); }));
    QTest::keySequence(&window(), QKeySequence("Ctrl+B"));
    ASSERT_TRUE(
        waitFor([&] { return window().isBoardShown() && window().board().state().club == "Lake club"; }));
}

TEST_F(StartStory, theBoardSaysWhatIsToDoUntilItIsPutAway) {
    nameIt("Lake club", "lake.tholepin");
    begin("inflatable");
    start();
    ASSERT_TRUE(isOnPage("setup"));
    QTest::keySequence(&window(), QKeySequence("Ctrl+B"));
    auto* strip = window().board().findChild<app::SetUpStrip*>();
    ASSERT_TRUE(waitFor([&] { return strip->isVisible(); }));
    EXPECT_TRUE(said("setUpStripLabel").contains("Still to do: people, boats"))
        << said("setUpStripLabel").toStdString();
    tabTo("setUpAwayButton");
    press(Qt::Key_Return);
    ASSERT_TRUE(waitFor([&] { return !strip->isVisible(); }));
    // It is said again from its own page.
    QTest::keySequence(&window(), QKeySequence("Ctrl+Alt+8"));
    ASSERT_TRUE(isOnPage("setup"));
    auto* away = child<QPushButton>("setUpPutAwayButton");
    ASSERT_TRUE(waitFor([&] { return away->text() == "Say it on the board"; }));
    away->setFocus();
    press(Qt::Key_Return);
    QTest::keySequence(&window(), QKeySequence("Ctrl+B"));
    ASSERT_TRUE(waitFor([&] { return strip->isVisible(); }));
}
