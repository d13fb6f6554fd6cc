#include "app/gui/menus/page_menu.h"

#include "tests/app/gui/keyless_buttons.h"
#include "tests/app/gui/window_story.h"

#include "app/gui/gear/office/gear_office.h"
#include "core/club/club_log.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QPushButton>
#include <QRadioButton>

#include <algorithm>
#include <cstdlib>
#include <set>

using support::keylessIn;
using support::keysTwice;

namespace {

class PageMenu : public support::WindowStory {
protected:
    app::PageMenu& menu() { return *window().findChild<app::PageMenu*>("pageMenu"); }
    QWidget& page() { return *window().findChild<QStackedWidget*>()->currentWidget(); }

    /// Until the page has read what it shows, and the menu is as the page is.
    void expectKeys(const QString& where) {
        support::waitFor(
            [&] {
                const auto buttons = page().findChildren<QPushButton*>();
                const auto inView = std::count_if(buttons.begin(), buttons.end(),
                                                  [](const auto* button) { return button->isVisible(); });
                return inView == menu().actions().size() && keylessIn(page(), *window().menuBar()).isEmpty();
            },
            std::chrono::seconds(5));
        EXPECT_EQ(keylessIn(page(), *window().menuBar()), QStringList()) << where.toStdString();
        EXPECT_EQ(keysTwice(*window().menuBar()), QStringList()) << where.toStdString();
    }

    /// The lines of the menu come as the eye goes through the page: from the left in a row, then the next
    /// row.
    void expectReadingOrder(const QString& where) {
        QPoint before(-1, -1);
        for (const QAction* line : menu().actions()) {
            const QPoint at = placeOf(line->text());
            const bool isSameRow = std::abs(at.y() - before.y()) < 48; // buttons are higher than that
            EXPECT_TRUE(isSameRow ? at.x() > before.x() : at.y() > before.y())
                << where.toStdString() << ": " << line->text().toStdString();
            before = at;
        }
    }
    QPoint placeOf(const QString& text) {
        for (const auto* button : page().findChildren<QPushButton*>())
            if (button->isVisible() && button->text() == text) return button->mapTo(&page(), QPoint());
        return {};
    }

    void expectKeysInOrder(const QString& where) {
        expectKeys(where);
        expectReadingOrder(where);
    }

    /// Whatever a choice, a line or a button for a new thing brings into view.
    void walkGearPage(const QString& id) {
        expectKeysInOrder(id);
        const auto* shown = window().gearOffice().page(id);
        for (auto* choice : shown->findChildren<QRadioButton*>()) {
            choice->setChecked(true);
            expectKeysInOrder(id + ' ' + choice->objectName());
        }
        for (auto* view : shown->findChildren<QAbstractItemView*>()) {
            if (!view->isVisible() || view->model()->rowCount() == 0) continue;
            view->setCurrentIndex(view->model()->index(view->model()->rowCount() > 1 ? 1 : 0, 0));
            expectKeysInOrder(id + ' ' + view->objectName());
        }
        for (const char* name :
             {"newKitButton", "newLogEntryButton", "manifestAddButton", "registerNewButton"})
            if (auto* button = shown->findChild<QPushButton*>(name)) {
                button->click();
                expectKeysInOrder(id + ' ' + name);
            }
    }

    QKeySequence keysOf(const QString& text) {
        for (const QAction* line : menu().actions())
            if (line->text() == text) return line->shortcut();
        return {};
    }
    /// Once the page has such a button that may be pressed.
    void pressByKeys(const QString& text) {
        ASSERT_TRUE(support::waitFor([&] {
            const auto lines = menu().actions();
            return std::any_of(lines.begin(), lines.end(), [&](const QAction* line) {
                return line->text() == text && line->isEnabled();
            });
        })) << text.toStdString();
        QTest::keySequence(QApplication::focusWidget(), keysOf(text));
    }
    std::optional<core::LogEntry> storedEntry(const std::string& text) {
        const auto entries = stored().log().entries();
        const auto found = std::find_if(entries->begin(), entries->end(),
                                        [&](const core::LogEntry& entry) { return entry.text == text; });
        return found == entries->end() ? std::nullopt : std::optional(*found);
    }
};

} // namespace

TEST_F(PageMenu, everyPlaceHasItsOwnKeys) {
    std::set<QString> keys;
    std::size_t place = 0;
    for (; !app::PageMenu::keysOf(place).isEmpty(); ++place)
        keys.insert(app::PageMenu::keysOf(place).toString());
    EXPECT_EQ(keys.size(), place);
    EXPECT_GE(place, 20u);
}

TEST_F(PageMenu, everyButtonOfTheWelcomePageAndTheBoardHasKeys) {
    app::MainWindow fresh;
    fresh.show();
    const auto& welcome = *fresh.findChild<QStackedWidget*>()->currentWidget();
    ASSERT_TRUE(support::waitFor([&] { return keylessIn(welcome, *fresh.menuBar()).isEmpty(); }));
    EXPECT_EQ(fresh.findChild<app::PageMenu*>("pageMenu")->actions().size(), 3);
    openWindow();
    expectKeysInOrder("board");
    EXPECT_GE(menu().actions().size(), 3);
}

TEST_F(PageMenu, everyButtonOfEveryGearPageHasKeys) {
    openWindow();
    std::set<QString> withoutButtons;
    for (QAction* action : window().gearOffice().pageActions()) {
        action->trigger();
        const QString id = window().gearOffice().currentPage();
        walkGearPage(id);
        if (menu().actions().isEmpty()) withoutButtons.insert(id);
    }
    EXPECT_EQ(withoutButtons, std::set<QString>());
    // Where no menu stands for them, the same walk finds them.
    menu().showPage(nullptr);
    EXPECT_FALSE(keylessIn(page(), *window().menuBar()).isEmpty());
    EXPECT_FALSE(menu().menuAction()->isEnabled());
}

TEST_F(PageMenu, everyButtonOfACheckHasKeys) {
    openWindow();
    openBoat("Bittern");
    expectKeys("check");
    typeCode("KPZ36AE62R");
    press(Qt::Key_D, Qt::ControlModifier);
    expectKeys("damaged");
    press(Qt::Key_Return, Qt::ControlModifier);
    expectKeys("signing");
}

TEST_F(PageMenu, aLineIsEnabledAsItsButtonIsAndSaysTheSame) {
    QWidget page;
    auto* button = new QPushButton("Register 1 item", &page);
    auto* other = new QPushButton("Take it away", &page);
    app::PageMenu pageMenu;
    pageMenu.showPage(&page);
    EXPECT_TRUE(pageMenu.actions().isEmpty()) << "nothing is in view yet";
    page.show();
    ASSERT_TRUE(support::waitFor([&] { return pageMenu.actions().size() == 2; }));
    const QKeySequence keysOfOther = pageMenu.actions()[1]->shortcut();
    int pressed = 0;
    QObject::connect(button, &QPushButton::clicked, button, [&] { ++pressed; });
    pageMenu.actions().front()->trigger();
    EXPECT_EQ(pressed, 1);
    button->setEnabled(false);
    button->setText("Register 2 items");
    EXPECT_TRUE(support::waitFor([&] {
        return !pageMenu.actions().front()->isEnabled() &&
               pageMenu.actions().front()->text() == "Register 2 items";
    }));
    button->hide();
    ASSERT_TRUE(support::waitFor([&] { return pageMenu.actions().size() == 1; }));
    EXPECT_EQ(pageMenu.actions().front()->text(), "Take it away");
    EXPECT_EQ(pageMenu.actions().front()->shortcut(), keysOfOther) << "a hand has learnt them";
    delete other;
    EXPECT_TRUE(support::waitFor([&] { return pageMenu.actions().isEmpty(); }));
    EXPECT_FALSE(pageMenu.menuAction()->isEnabled());
}

TEST_F(PageMenu, aLogEntryIsWrittenByKeysAlone) {
    openWindow();
    QTest::keySequence(&window(), QKeySequence("Alt+6"));
    pressByKeys("New entry…");
    auto* about = child<QComboBox>("logAboutBox");
    ASSERT_TRUE(support::waitFor([&] { return about->hasFocus() && about->count() > 1; }));
    press(Qt::Key_Down); // the first boat
    press(Qt::Key_Tab);
    press(Qt::Key_Tab);
    type("Painter frayed at the eye");
    EXPECT_FALSE(storedEntry("Painter frayed at the eye"));
    pressByKeys("Write it into the log");
    EXPECT_TRUE(support::waitFor([&] { return storedEntry("Painter frayed at the eye").has_value(); }));
    EXPECT_EQ(storedEntry("Painter frayed at the eye")->by, "Joss Iveny");
}

TEST_F(PageMenu, keysOfABoardsLineOpenItsPageWhileACodeIsTyped) {
    openWindow();
    const QString missing = window().findChild<QPushButton*>("missingLine")->text();
    type("B7"); // a code that was begun
    EXPECT_TRUE(support::waitFor([&] { return child<QLineEdit>("codeEdit")->text() == "B7"; }));
    pressByKeys(missing);
    EXPECT_EQ(window().gearOffice().currentPage(), "missing");
}
