#pragma once

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QStackedWidget>
#include <QTest>

#include "app/gui/board/boat_strip.h"
#include "app/gui/board/shed_board.h"
#include "app/gui/camera/hand_scanner.h"
#include "app/gui/check/check_page.h"
#include "app/gui/club/check_session.h"
#include "app/gui/main_window.h"
#include "app/gui/widgets/row_list_model.h"
#include "core/answers/board.h"
#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "tests/app/gui/demo_club.h"

#include <gtest/gtest.h>

#include <memory>

namespace support {

/// The window on the demo club, used as a person does: by keys that go to whatever has the keyboard. The time
/// between keys is told, not waited for.
class WindowStory : public DemoClub {
protected:
    void TearDown() override { m_window.reset(); }

    app::MainWindow& window() { return *m_window; }

    void openWindow(bool withCamera = false, app::Choosers choosers = {}) {
        m_window = std::make_unique<app::MainWindow>([] { return moment(); }, std::move(choosers));
        m_window->setCameraWanted(withCamera);
        m_window->handScanner().setClock([this] { return m_keyMs; });
        m_window->show();
        m_window->activateWindow();
        m_boardsShown = 0;
        QObject::connect(m_window.get(), &app::MainWindow::boardShown, m_window.get(),
                         [this] { ++m_boardsShown; });
        m_window->openClub(file());
        waitForBoard(0);
        ASSERT_TRUE(waitFor([&] { return m_window->isActiveWindow(); }));
    }

    int boardsShown() const { return m_boardsShown; }
    void waitForBoard(int shownBefore) {
        ASSERT_TRUE(waitFor([&] { return m_boardsShown > shownBefore; }));
    }

    void closeWindow() { m_window.reset(); }

    template <class Widget = QWidget>
    Widget* child(const char* name) {
        const auto* pages = m_window->findChild<QStackedWidget*>();
        auto* onPage = pages->currentWidget()->findChild<Widget*>(name);
        return onPage ? onPage : m_window->findChild<Widget*>(name);
    }

    /// A label of that name is in view and says that, sooner or later.
    bool says(const char* label, const QString& words) {
        return waitFor([&] {
            for (const auto* each : window().findChildren<QLabel*>(label))
                if (each->isVisible() && each->text().contains(words)) return true;
            return false;
        });
    }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QWidget* focus = QApplication::focusWidget();
        ASSERT_NE(focus, nullptr) << "nothing has the keyboard";
        m_keyMs += betweenKeys;
        QTest::keyClick(focus, key, modifiers);
    }

    void type(const QString& text,
              std::chrono::milliseconds between = std::chrono::milliseconds(betweenKeys)) {
        for (const QChar letter : text) {
            QWidget* focus = QApplication::focusWidget();
            ASSERT_NE(focus, nullptr) << "nothing has the keyboard";
            m_keyMs += between.count();
            QTest::keyClick(focus, letter.toLatin1());
        }
    }

    /// Nothing is typed for a second.
    void pauseKeys() { m_keyMs += 1000; }

    /// As a hand-held scanner types: a few milliseconds from key to key, from 1 to 5.
    void typeAsScanner(const QString& code, Qt::Key end = Qt::Key_Return) {
        pauseKeys();
        for (int at = 0; at < code.size(); ++at)
            type(code.mid(at, 1), std::chrono::milliseconds(1 + at % 5));
        m_keyMs += 3;
        QTest::keyClick(QApplication::focusWidget(), end);
    }

    /// The same, and until what came of it is on disk and shown.
    void scanByHand(const QString& code, Qt::Key end = Qt::Key_Return) {
        typeAsScanner(code, end);
        settle();
    }

    /// A code and Enter, and until it is on disk and shown.
    void typeCode(const QString& code) {
        type(code);
        press(Qt::Key_Return);
        settle();
    }

    /// Until everything asked of the club file is done and shown.
    void settle() {
        ASSERT_TRUE(waitFor([&] {
            app::CheckSession* session = window().checkPage().session();
            return !session || !session->isBusy();
        }));
    }

    /// Opens what the boat needs next, by the keyboard, from the board.
    void openBoat(const QString& boat) {
        auto* strip = m_window->findChild<app::BoatStrip*>("boatStrip " + boat);
        ASSERT_NE(strip, nullptr);
        ASSERT_TRUE(waitFor([&] {
            strip->setFocus();
            return QApplication::focusWidget() == strip;
        }));
        press(Qt::Key_Return);
        ASSERT_TRUE(waitFor([&] {
            return window().checkPage().session() && window().checkPage().session()->state();
        })) << "pressed: "
            << (window().checkPage().session() != nullptr) << ", said: " << said().toStdString()
            << ", keyboard: "
            << (QApplication::focusWidget() ? QApplication::focusWidget()->objectName().toStdString()
                                            : "none");
        ASSERT_EQ(window().checkPage().boat(), boat);
    }

    /// To the board, with all it has to say.
    void saveForLater() {
        const int shownBefore = boardsShown();
        press(Qt::Key_S, Qt::ControlModifier);
        waitForBoard(shownBefore);
    }

    /// A press that follows too soon is the second half of a double click.
    static void waitOutADoubleClick() {
        const std::chrono::milliseconds interval(QApplication::doubleClickInterval() + 10);
        EXPECT_FALSE(support::waitFor([] { return false; }, interval));
    }

    /// Enter on the signature, and once more where somebody has no life jacket.
    void pressSignature() {
        ASSERT_EQ(QApplication::focusWidget()->objectName(), "signNowButton");
        press(Qt::Key_Return);
        if (child("withoutJacketLabel")->isVisible()) {
            waitOutADoubleClick();
            press(Qt::Key_Return);
        }
        settle();
    }

    QString outcome() { return child<QLabel>("outcomeLabel")->text(); }
    QString said() { return child<QLabel>("saidLabel")->text(); }

    /// The line of that item in the list, by its mark; empty when it is not there.
    std::optional<app::Mark> markOf(const QString& code) {
        for (const app::CheckRow& row : app::rowsOf(window().checkPage().session()->state()->answer))
            if (row.code == code) return row.mark;
        return std::nullopt;
    }

    core::BoatCondition storedCondition(const std::string& boat) {
        for (core::BoatCondition& condition : stored().answers().boatConditions(today()))
            if (condition.boat == boat) return condition;
        ADD_FAILURE() << "no boat " << boat;
        return {};
    }

private:
    static constexpr int betweenKeys = 80; ///< milliseconds

    int m_boardsShown = 0;
    qint64 m_keyMs = 0;
    std::unique_ptr<app::MainWindow> m_window;
};

} // namespace support
