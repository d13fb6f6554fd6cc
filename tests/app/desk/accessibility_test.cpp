#include "tests/app/desk/desk_story.h"

#include <QAccessible>
#include <QAction>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>

#include <set>

namespace {

bool isControl(QAccessible::Role role) {
    static const std::set<QAccessible::Role> controls{
        QAccessible::Button,      QAccessible::CheckBox, QAccessible::ComboBox, QAccessible::EditableText,
        QAccessible::MenuItem,    QAccessible::List,     QAccessible::ListItem, QAccessible::RadioButton,
        QAccessible::ProgressBar, QAccessible::Slider,   QAccessible::SpinBox,  QAccessible::ButtonMenu};
    return controls.contains(role);
}

/// Visible controls without a name, by their object's name.
void collectNameless(QAccessibleInterface* at, QStringList& nameless) {
    if (!at || at->state().invisible) return;
    // A combo box's own list and arrow speak through the box.
    if (isControl(at->role()) && at->text(QAccessible::Name).trimmed().isEmpty())
        nameless << (at->object()
                         ? at->object()->metaObject()->className() + QString(" ") + at->object()->objectName()
                         : QString("item"));
    if (at->role() == QAccessible::ComboBox) return;
    for (int i = 0; i < at->childCount(); ++i)
        collectNameless(at->child(i), nameless);
}

QStringList namelessIn(QWidget& widget) {
    QStringList nameless;
    collectNameless(QAccessible::queryAccessibleInterface(&widget), nameless);
    return nameless;
}

class Accessibility : public support::DeskStory {};

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
