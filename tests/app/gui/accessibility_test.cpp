#include "app/gui/gear/office/gear_office.h"
#include "tests/app/gui/every_field.h"
#include "tests/app/gui/nameless_controls.h"
#include "tests/app/gui/window_story.h"

#include <QAbstractItemView>
#include <QAction>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QRadioButton>

#include <set>

namespace {

using support::namelessIn;

class Accessibility : public support::WindowStory {
protected:
    /// Fields, in view or not, of which a screen reader has no sentence to say besides their name.
    static QStringList fieldsWithoutSentence(const QWidget& page) {
        QStringList without;
        for (QWidget* field : support::everyFieldOf(page)) {
            const auto* told = QAccessible::queryAccessibleInterface(field);
            const QString sentence = told->text(QAccessible::Description);
            if (!sentence.contains(' ')) without << field->objectName();
        }
        return without;
    }
    void expectTold(const QString& where, const QWidget& page) {
        EXPECT_EQ(namelessIn(window()).join(' ').toStdString(), "") << where.toStdString();
        EXPECT_EQ(fieldsWithoutSentence(page).join(' ').toStdString(), "") << where.toStdString();
    }
    QWidget& shownPage() { return *window().findChild<QStackedWidget*>()->currentWidget(); }
    /// Whatever a choice, a line or a button for a new thing brings into view.
    void walkPage(const QString& id) {
        auto* page = window().gearOffice().page(id);
        support::waitFor([&] { return page->isVisible(); });
        expectTold(id, *page);
        for (auto* choice : page->findChildren<QRadioButton*>()) {
            choice->setChecked(true);
            expectTold(id + ' ' + choice->objectName(), *page);
        }
        for (auto* view : page->findChildren<QAbstractItemView*>()) {
            if (!view->isVisible() || view->model()->rowCount() == 0) continue;
            view->setCurrentIndex(view->model()->index(view->model()->rowCount() > 1 ? 1 : 0, 0));
            expectTold(id + ' ' + view->objectName(), *page);
        }
        for (const char* name :
             {"newKitButton", "newLogEntryButton", "manifestAddButton", "registerNewButton"})
            if (auto* button = page->findChild<QPushButton*>(name)) {
                button->click();
                expectTold(id + ' ' + name, *page);
            }
    }
};

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

TEST_F(Accessibility, aFieldWithoutASentenceIsFound) {
    QWidget page;
    QLineEdit told(&page), untold(&page);
    told.setAccessibleDescription("The day on which it was looked at.");
    untold.setObjectName("dayEdit");
    EXPECT_EQ(fieldsWithoutSentence(page), QStringList{"dayEdit"});
}

TEST_F(Accessibility, everyControlOfEveryPageHasANameAndEveryFieldASentence) {
    {
        app::MainWindow fresh;
        fresh.show();
        EXPECT_EQ(fieldsWithoutSentence(*fresh.findChild<QStackedWidget*>()->currentWidget()), QStringList());
    }
    openWindow();
    expectTold("board", shownPage());
    for (QAction* page : window().gearOffice().pageActions()) {
        page->trigger();
        walkPage(window().gearOffice().currentPage());
    }
    window().startCheck("Bittern", core::Phase::Return);
    ASSERT_TRUE(support::waitFor(
        [&] { return window().checkPage().session() && window().checkPage().session()->state(); }));
    expectTold("check", shownPage());
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
