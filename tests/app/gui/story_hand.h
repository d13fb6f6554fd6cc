#pragma once

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QScrollArea>
#include <QTest>

#include "app/gui/camera/hand_scanner.h"
#include "app/gui/main_window.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "tests/support/wait_for.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

namespace support {

/// Somebody at the main window who has either the mouse or the keyboard. Things are found by their names in
/// the code, waited for, and then gone to as that person can: by a press of the mouse where it stands, or by
/// Tab and arrows from wherever the keyboard is. Nothing gets the keyboard in any other way.
class StoryHand {
public:
    enum class Way { Mouse, Keys };

    StoryHand(app::MainWindow& window, Way way)
        : m_window(window)
        , m_way(way) {
        m_window.handScanner().setClock([this] { return m_keyMs; });
    }

    bool hasMouse() const { return m_way == Way::Mouse; }

    /// What is in view by that name; waits until it is there and can be used. Null: it never was.
    QWidget* find(const QString& name) {
        QWidget* found = nullptr;
        waitFor([&] {
            const auto all = m_window.findChildren<QWidget*>(name);
            const auto usable = [](const QWidget* each) { return each->isVisible() && each->isEnabled(); };
            const auto at = std::find_if(all.begin(), all.end(), usable);
            found = at == all.end() ? nullptr : *at;
            return found != nullptr || testing::Test::HasFailure(); // then nothing is waited for any more
        });
        EXPECT_NE(found, nullptr) << name.toStdString();
        if (m_look) m_look();
        return found;
    }
    /// Called each time that something was looked for and came into view.
    void setLook(std::function<void()> look) { m_look = std::move(look); }

    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        m_keyMs += 80;
        ASSERT_NE(keyboard(), nullptr) << "nothing has the keyboard";
        QTest::keyClick(keyboard(), key, modifiers);
    }
    void type(const QString& text, int betweenMs = 80) {
        for (const QChar letter : text) {
            m_keyMs += betweenMs;
            ASSERT_NE(keyboard(), nullptr) << "nothing has the keyboard";
            QTest::keyClick(keyboard(), letter.toLatin1());
        }
    }
    /// As a hand-held scanner types.
    void scan(const QString& code) {
        m_keyMs += 1000;
        type(code, 3);
        m_keyMs += 3;
        QTest::keyClick(keyboard(), Qt::Key_Return);
    }

    void press(const QString& name) {
        QWidget* button = goTo(name);
        if (!button) return;
        if (hasMouse())
            click(*button, button->rect().center());
        else
            key(Qt::Key_Space);
    }
    void fill(const QString& name, const QString& text) {
        QWidget* field = goTo(name);
        if (!field) return;
        if (hasMouse()) click(*field, QPoint(20, field->height() / 2));
        key(Qt::Key_A, Qt::ControlModifier);
        type(text);
        if (qobject_cast<QComboBox*>(field) && QApplication::activePopupWidget())
            key(Qt::Key_Escape); // the names that were offered
    }
    void choose(const QString& name, const QString& words) {
        auto* box = qobject_cast<QComboBox*>(goTo(name));
        ASSERT_NE(box, nullptr) << name.toStdString();
        ASSERT_TRUE(waitFor([&] { return box->findText(words) >= 0; })) << words.toStdString();
        if (hasMouse()) {
            click(*box, QPoint(20, box->height() / 2));
            // A press that follows too soon is the second half of a double click.
            waitFor([] { return false; },
                    std::chrono::milliseconds(QApplication::doubleClickInterval() + 10));
            const QModelIndex wanted = box->model()->index(box->findText(words), 0);
            // On a busy machine the list may not yet take a press; then it is open still, and pressed again.
            const auto isClosed = [] { return !QApplication::activePopupWidget(); };
            for (int i = 0; i < 5 && !isClosed(); ++i) {
                box->view()->scrollTo(wanted);
                QTest::mouseMove(box->view()->viewport(), box->view()->visualRect(wanted).center());
                clickRow(*box->view(), wanted);
                waitFor(isClosed, std::chrono::seconds(2));
            }
            ASSERT_TRUE(isClosed());
        } else {
            // In the list of names, so that none on the way counts as chosen.
            key(Qt::Key_Down, Qt::AltModifier);
            ASSERT_TRUE(waitFor([&] { return box->view()->isVisible(); }));
            const int wanted = box->findText(words);
            QTest::keyClick(box->view(), Qt::Key_Home);
            for (int i = 0; i < box->count() && box->view()->currentIndex().row() != wanted; ++i)
                QTest::keyClick(box->view(), Qt::Key_Down);
            QTest::keyClick(box->view(), Qt::Key_Return);
            ASSERT_TRUE(waitFor([&] { return !QApplication::activePopupWidget(); }));
        }
        ASSERT_EQ(box->currentText().toStdString(), words.toStdString());
    }
    /// Of a table, by what stands in its first column; of a list, see `lineOf`.
    void chooseRow(const QString& name, const QString& words) {
        auto* view = qobject_cast<QAbstractItemView*>(goTo(name));
        ASSERT_NE(view, nullptr);
        const int row = waitForRow(name, words);
        ASSERT_GE(row, 0);
        goToRow(*view, row, Qt::ControlModifier);
    }
    /// Where it stands in the table, as soon as it does; -1: it never did.
    int waitForRow(const QString& name, const QString& words) {
        const auto* view = qobject_cast<QAbstractItemView*>(find(name));
        int found = -1;
        waitFor([&] {
            for (int row = 0; view && row < view->model()->rowCount(); ++row)
                if (view->model()->index(row, 0).data().toString().trimmed() == words) found = row;
            return found >= 0 || testing::Test::HasFailure();
        });
        EXPECT_GE(found, 0) << words.toStdString();
        return found;
    }
    /// Stands on that line of a list afterwards; the mouse presses it by that.
    void chooseLine(const QString& name, const QString& key) {
        auto* list = qobject_cast<app::RowList*>(goTo(name));
        ASSERT_NE(list, nullptr);
        auto* model = static_cast<app::RowListModel*>(list->model());
        ASSERT_TRUE(waitFor([&] { return model->indexOfKey(key) >= 0; })) << key.toStdString();
        goToRow(*list, model->indexOfKey(key), Qt::NoModifier);
    }
    void pressLine(const QString& name, const QString& key) {
        chooseLine(name, key);
        if (!hasMouse()) this->key(Qt::Key_Space);
    }
    QString lineOf(const QString& name, const QString& title) {
        auto* list = qobject_cast<app::RowList*>(find(name));
        if (!list) return {};
        QString key;
        EXPECT_TRUE(waitFor([&] {
            for (const app::ListRow& row : static_cast<app::RowListModel*>(list->model())->rows())
                if (row.title == title && !row.isHeading) key = row.key;
            return !key.isEmpty();
        })) << title.toStdString();
        return key;
    }
    /// Chooses one of some radio buttons that stand in one group.
    void pick(const QString& name) {
        auto* wanted = qobject_cast<QAbstractButton*>(find(name));
        ASSERT_NE(wanted, nullptr);
        activate();
        if (hasMouse()) {
            click(*wanted, QPoint(12, wanted->height() / 2));
        } else {
            for (int i = 0; i < 80 && !inGroupOf(*wanted); ++i)
                key(Qt::Key_Tab);
            // Choices stand beneath each other or beside each other.
            ASSERT_TRUE(inGroupOf(*wanted)) << name.toStdString() << " is not reached by Tab";
            for (int i = 0; i < 8 && !wanted->isChecked(); ++i)
                key(wanted->y() == QApplication::focusWidget()->y() ? Qt::Key_Right : Qt::Key_Down);
        }
        ASSERT_TRUE(wanted->isChecked());
    }
    /// A page of the gear officer's, by its name at the left or by its keys.
    void showPage(const QString& name, const char* keys) {
        activate();
        if (!hasMouse()) return QTest::keySequence(&m_window, QKeySequence(keys));
        auto* names = qobject_cast<QAbstractItemView*>(find("gearPageNames"));
        ASSERT_NE(names, nullptr);
        for (int row = 0; row < names->model()->rowCount(); ++row)
            if (names->model()->index(row, 0).data().toString() == name)
                return clickRow(*names, names->model()->index(row, 0));
        FAIL() << name.toStdString();
    }

private:
    static QWidget* keyboard() {
        if (QWidget* popup = QApplication::activePopupWidget()) return popup;
        // A window in which nothing has the keyboard takes its keys itself, and Tab begins anew.
        QWidget* focus = QApplication::focusWidget();
        return focus ? focus : QApplication::activeWindow();
    }
    static bool inGroupOf(const QAbstractButton& button) {
        const auto* at = qobject_cast<QAbstractButton*>(QApplication::focusWidget());
        return at && at->inherits("QRadioButton") && at->parentWidget() == button.parentWidget();
    }
    static bool hasKeyboard(const QWidget& widget) {
        return widget.hasFocus() || widget.isAncestorOf(QApplication::focusWidget());
    }
    /// Without a display no window is active any more once a list of names has closed.
    void activate() {
        if (!m_window.isActiveWindow()) m_window.activateWindow();
        EXPECT_TRUE(waitFor([&] { return m_window.isActiveWindow(); }));
    }
    /// By keys: Tab until it has the keyboard. With the mouse nothing is done yet.
    QWidget* goTo(const QString& name) {
        QWidget* widget = find(name);
        activate();
        if (!widget || hasMouse()) return widget;
        for (int i = 0; i < 120 && !hasKeyboard(*widget); ++i)
            key(Qt::Key_Tab);
        EXPECT_TRUE(hasKeyboard(*widget)) << name.toStdString() << " is not reached by Tab";
        return widget;
    }
    void goToRow(QAbstractItemView& view, int row, Qt::KeyboardModifier withHome) {
        const QPersistentModelIndex wanted = view.model()->index(row, 0);
        if (hasMouse()) return clickRow(view, wanted);
        activate(); // a list of names that closed may have told its window only now
        key(Qt::Key_Home, withHome);
        for (int i = 0; i < view.model()->rowCount() && view.currentIndex().row() != wanted.row(); ++i)
            key(Qt::Key_Down);
        ASSERT_EQ(view.currentIndex().row(), wanted.row());
    }
    /// Scrolls there first, as a hand would.
    static void click(QWidget& widget, QPoint at) {
        // What was just laid out anew is not yet where it will be.
        EXPECT_TRUE(waitFor([&] {
            for (QWidget* over = widget.parentWidget(); over; over = over->parentWidget())
                if (auto* area = qobject_cast<QScrollArea*>(over)) area->ensureWidgetVisible(&widget);
            return widget.visibleRegion().contains(at);
        })) << widget.objectName().toStdString();
        QTest::mouseClick(&widget, Qt::LeftButton, {}, at);
    }
    static void clickRow(QAbstractItemView& view, const QModelIndex& index) {
        view.scrollTo(index);
        const QPoint at = view.visualRect(index).topLeft() + QPoint(20, view.visualRect(index).height() / 2);
        QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, at);
    }

    std::function<void()> m_look;
    app::MainWindow& m_window;
    Way m_way;
    qint64 m_keyMs = 0;
};

} // namespace support
