#include "tests/app/gui/nameless_controls.h"
#include "tests/app/gui/window_story.h"

#include <QAction>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>

#include <set>

namespace {

using support::namelessIn;

class Accessibility : public support::WindowStory {};

} // namespace

TEST_F(Accessibility, walkFindsANamelessControl) {
    QWidget parent;
    QPushButton named("Sign", &parent);
    QPushButton nameless(&parent);
    nameless.setObjectName("namelessButton");
    parent.show();
    EXPECT_EQ(namelessIn(parent), QStringList{"QPushButton namelessButton"});
}

TEST_F(Accessibility, everyControlOfTheWelcomePageHasAName) {
    app::MainWindow fresh;
    fresh.show();
    EXPECT_EQ(namelessIn(fresh), QStringList());
}

TEST_F(Accessibility, everyControlOfTheBoardHasAName) {
    openWindow();
    EXPECT_EQ(namelessIn(window()), QStringList());
}

TEST_F(Accessibility, everyControlOfACheckHasAName) {
    openWindow();
    openBoat("Bittern");
    typeCode("KPZ36AE62R");
    EXPECT_EQ(namelessIn(window()), QStringList());
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(namelessIn(window()), QStringList());
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(namelessIn(window()), QStringList());
}

TEST_F(Accessibility, everyActionIsInAMenuWithAShortcut) {
    openWindow();
    int actions = 0;
    for (const QAction* menu : window().menuBar()->actions()) {
        for (const QAction* action : menu->menu()->actions()) {
            if (action->isSeparator()) continue;
            ++actions;
            EXPECT_FALSE(action->shortcut().isEmpty()) << action->text().toStdString();
        }
    }
    EXPECT_GT(actions, 20);
}

TEST_F(Accessibility, tabGoesRoundTheCheckPageAndBack) {
    openWindow();
    openBoat("Grebe");
    std::set<QWidget*> reached;
    for (int i = 0; i < 40; ++i) {
        press(Qt::Key_Tab);
        reached.insert(QApplication::focusWidget());
    }
    for (const char* name : {"driverBox", "crewBox1", "checkList", "cameraButton", "logReadButton",
                             "codeEdit", "signButton", "saveForLaterButton"})
        EXPECT_TRUE(reached.contains(child(name))) << name;
    QWidget* here = QApplication::focusWidget();
    press(Qt::Key_Tab);
    press(Qt::Key_Backtab);
    EXPECT_EQ(QApplication::focusWidget(), here);
}
