#include "app/gui/gear/office/gear_office.h"
#include "app/gui/widgets/plain_table.h"
#include "core/club/club_checks.h"
#include "tests/app/gui/shown_texts.h"
#include "tests/app/gui/window_story.h"

#include <QPushButton>
#include <QScrollArea>

#include <fstream>
#include <sqlite3.h>

using support::WindowStory;

namespace {

/// What was wrong is not said any longer than it is so, and what was refused disturbs nothing.
class ErrorsGoStory : public WindowStory {
protected:
    QString chosen;

    void openWithChoice() {
        app::Choosers choosers;
        choosers.openClub = [this](QWidget*) { return chosen; };
        openWindow(false, choosers);
    }
    void choose(const std::filesystem::path& file) {
        chosen = QString::fromStdString(file.string());
        press(Qt::Key_O, Qt::ControlModifier);
    }
    static void run(const std::filesystem::path& file, const char* sql) {
        sqlite3* database = nullptr;
        ASSERT_EQ(sqlite3_open(file.c_str(), &database), SQLITE_OK);
        EXPECT_EQ(sqlite3_exec(database, sql, nullptr, nullptr, nullptr), SQLITE_OK) << sql;
        sqlite3_close(database);
    }
    QString onBoard() { return child<QLabel>("boardSaidLabel")->text(); }
};

} // namespace

TEST_F(ErrorsGoStory, anErrorOfACheckGoesWithTheNextStepThatWorks) {
    openWindow();
    openBoat("Bittern");
    typeCode("HELLO");
    ASSERT_EQ(child<QLabel>("saidLabel")->property("role"), "look") << said().toStdString();
    press(Qt::Key_P, Qt::ControlModifier);
    press(Qt::Key_Space);
    settle();
    EXPECT_TRUE(support::waitFor([&] { return said().isEmpty(); })) << said().toStdString();
    typeCode("HELLO");
    EXPECT_EQ(child<QLabel>("saidLabel")->property("role"), "look");
    typeCode("KPZ36AE62R");
    EXPECT_NE(child<QLabel>("saidLabel")->property("role"), "look") << said().toStdString();
}

TEST_F(ErrorsGoStory, anErrorOfThePageKitGoesWithWhatIsFoundNext) {
    openWindow();
    QTest::keySequence(&window(), QKeySequence("Alt+3"));
    ASSERT_TRUE(support::waitFor([&] { return window().gearOffice().currentPage() == "kit"; }));
    auto* table = window().findChild<app::PlainTable*>("kitTable");
    ASSERT_TRUE(support::waitFor([&] { return table->model()->rowCount() > 0; }));
    table->setFocus();
    typeAsScanner("K00000001A"); // no tag of the demo club has so many zeros
    const auto shown = [&] {
        QString all;
        for (const auto* label : window().gearOffice().page("kit")->findChildren<QLabel*>())
            if (label->isVisible() && label->property("role") == "look") all += label->text();
        return all;
    };
    ASSERT_TRUE(support::waitFor([&] { return shown().contains("not this club's kit"); }))
        << support::textsIn(*window().gearOffice().page("kit")).join('|').right(900).toStdString();
    typeAsScanner("KPZ36AE62R");
    EXPECT_TRUE(support::waitFor([&] { return !shown().contains("not this club's kit"); }));
}

// What somebody may choose in its place: no database at all, one of another program, a club of a newer
// program, a damaged one. SQLite's header is its file format, 1.3.
TEST_F(ErrorsGoStory, aWrongFileLeavesTheGoodOneOpenAndSaysWhy) {
    openWithChoice();
    const std::filesystem::path text = folder() / "notes.tholepin", foreign = folder() / "foreign.tholepin",
                                newer = folder() / "newer.tholepin", damaged = folder() / "damaged.tholepin";
    std::ofstream(text) << "These are notes.";
    run(foreign, "CREATE TABLE songs (name TEXT)");
    std::filesystem::copy_file(file(), newer);
    run(newer, "PRAGMA user_version = 9999");
    std::filesystem::copy_file(file(), damaged);
    std::filesystem::resize_file(damaged, std::filesystem::file_size(damaged) / 2);
    QStringList reasons;
    for (const auto& wrong : {text, foreign, newer, damaged, folder() / "none.tholepin"}) {
        choose(wrong);
        ASSERT_TRUE(support::waitFor([&] {
            return onBoard().contains("“Quillmere Lake Rescue” stays open.") && !reasons.contains(onBoard());
        })) << wrong
            << onBoard().toStdString();
        EXPECT_TRUE(window().isBoardShown());
        reasons << onBoard();
    }
    openBoat("Grebe");
    typeCode("KMC20GKEK9");
    EXPECT_EQ(markOf("KMC20GKEK9"), app::Mark::Found) << "in the good one";
    EXPECT_EQ(stored().checks().unfinished().size(), 1u);
    choose(text);
    ASSERT_TRUE(support::waitFor([&] { return said().contains("stays open"); }))
        << "on the check, which goes on";
    typeCode("KFC3K7GM79");
    EXPECT_EQ(markOf("KFC3K7GM79"), app::Mark::Found);
}

TEST_F(ErrorsGoStory, fromTheWelcomePageTabAndEscapeLeadBackToTheBoats) {
    openWithChoice();
    press(Qt::Key_N, Qt::ControlModifier);
    ASSERT_TRUE(support::waitFor([&] { return child("welcomeBackButton")->isVisible(); }));
    bool isReached = false;
    for (int i = 0; i < 60 && !isReached; ++i) {
        press(Qt::Key_Tab);
        isReached = child("welcomeBackButton")->hasFocus();
    }
    ASSERT_TRUE(isReached);
    int shown = boardsShown();
    press(Qt::Key_Return);
    waitForBoard(shown);
    press(Qt::Key_N, Qt::ControlModifier);
    ASSERT_TRUE(support::waitFor([&] { return child("welcomeBackButton")->isVisible(); }));
    shown = boardsShown();
    press(Qt::Key_Escape);
    waitForBoard(shown);
}

// Those of a check, of a PIN, a camera and the help have tests of their own.
TEST_F(ErrorsGoStory, escapeLeavesEveryPanelOfThePages) {
    struct Panel {
        const char* page;
        std::function<void()> open;
        const char* field; ///< on the panel
    };
    openWindow();
    const auto click = [this](const char* button) {
        ASSERT_TRUE(support::waitFor([&] { return child(button) && child(button)->isVisible(); })) << button;
        child<QPushButton>(button)->click();
    };
    const auto openFirstRow = [this](const char* table) {
        auto* rows = child<app::PlainTable>(table);
        ASSERT_TRUE(support::waitFor([&] { return rows->model()->rowCount() > 0; })) << table;
        rows->setCurrentIndex(rows->model()->index(0, 0));
        rows->setFocus();
        press(Qt::Key_Return);
    };
    const std::vector<Panel> panels{
        {"Alt+3", [&] { click("newKitButton"); }, "newKitTypeBox"},
        {"Alt+3", [&] { openFirstRow("kitTable"); }, "kitItemList"},
        {"Ctrl+Alt+1", [&] { click("manifestAddButton"); }, "manifestKitTypeBox"},
        {"Ctrl+Alt+3", [&] { click("registerNewButton"); }, "cell_note"},
        {"Ctrl+Alt+3", [&] { openFirstRow("registerTable"); }, "cell_note"},
        {"Ctrl+Alt+8", [&] { click("setUpButton 2"); }, "fitOutHomeBox"},
    };
    for (const Panel& panel : panels) {
        QTest::keySequence(&window(), QKeySequence(panel.page));
        panel.open();
        ASSERT_TRUE(support::waitFor([&] { return child(panel.field) && child(panel.field)->isVisible(); }))
            << panel.field;
        child(panel.field)->setFocus();
        press(Qt::Key_Escape);
        EXPECT_TRUE(support::waitFor([&] { return !child(panel.field)->isVisible(); })) << panel.field;
    }
}
