#include "tests/app/gui/window_story.h"

#include "app/gui/gear/office/gear_office.h"

#include <QAction>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>

using support::WindowStory;

namespace {

class OfficeInWindow : public WindowStory {
protected:
    bool isOfficeShown() { return window().gearOffice().isVisible(); }
    void pressLine(const char* name) {
        auto* line = window().findChild<QPushButton*>(name);
        ASSERT_NE(line, nullptr);
        line->setFocus();
        press(Qt::Key_Return);
    }
};

} // namespace

TEST_F(OfficeInWindow, eachPageHasAnActionInTheGearOfficersMenu) {
    openWindow();
    QList<QAction*> inMenus;
    for (const QAction* menu : window().menuBar()->actions())
        inMenus << menu->menu()->actions();
    ASSERT_FALSE(window().gearOffice().pageActions().isEmpty());
    for (QAction* action : window().gearOffice().pageActions()) {
        EXPECT_TRUE(inMenus.contains(action)) << action->text().toStdString();
        action->trigger();
        EXPECT_TRUE(isOfficeShown());
        EXPECT_EQ("gearPage " + window().gearOffice().currentPage(), action->objectName());
    }
}

TEST_F(OfficeInWindow, keysGoThereFromTheBoardAndBack) {
    openWindow();
    const int boards = boardsShown();
    QTest::keySequence(&window(), QKeySequence("Alt+1"));
    ASSERT_TRUE(isOfficeShown());
    EXPECT_EQ(window().gearOffice().currentPage(), "missing");
    QTest::keySequence(&window(), QKeySequence("Ctrl+B"));
    waitForBoard(boards);
    EXPECT_FALSE(isOfficeShown());
}

TEST_F(OfficeInWindow, theBoardsLineOpensWhatIsMissing) {
    openWindow();
    EXPECT_EQ(window().findChild<QPushButton*>("missingLine")->text(), "1 item missing");
    pressLine("missingLine");
    EXPECT_TRUE(isOfficeShown());
    EXPECT_EQ(window().gearOffice().currentPage(), "missing");
}

TEST_F(OfficeInWindow, withoutAClubThereIsNoOffice) {
    app::MainWindow fresh;
    fresh.show();
    fresh.gearOffice().pageActions().front()->trigger();
    EXPECT_FALSE(fresh.gearOffice().isVisible());
}
