#include "app/gui/camera/hand_scanner.h"
#include "tests/support/wait_for.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QDateEdit>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>
#include <QVBoxLayout>
#include <QWindow>

namespace {

const QString kitCode = "KMC20GKEK9"; // of the demo club

/// A window with a field of each kind, and keys that come when the test says.
class HandScanner : public testing::Test {
protected:
    void SetUp() override {
        auto* layout = new QVBoxLayout(&window);
        box->addItems({"Astrid", "Kim", "Mo"});
        list->addItems({"Astrid", "Kim", "Mo"});
        list->setCurrentRow(0);
        number->setRange(0, 99999);
        for (QWidget* part : parts())
            layout->addWidget(part);
        app::askForCode(*code);
        scanner.setClock([this] { return now; });
        QObject::connect(&scanner, &app::HandScanner::scanned, &window,
                         [this](const QString& text) { scans << text; });
        QObject::connect(button, &QPushButton::clicked, &window, [this] { ++presses; });
        window.show();
        window.activateWindow();
        ASSERT_TRUE(support::waitFor([&] { return window.isActiveWindow(); }));
        line->setFocus();
    }

    QList<QWidget*> parts() { return {line, text, number, day, box, list, button, code}; }

    void press(int key, const QString& letter = {}, quint64 stamp = 0, bool isRepeated = false,
               Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QWidget* popup = QApplication::activePopupWidget();
        QWidget* receiver = popup ? popup->focusWidget() : QApplication::focusWidget();
        ASSERT_NE(receiver, nullptr);
        QKeyEvent event(QEvent::KeyPress, key, modifiers, letter, isRepeated);
        event.setTimestamp(stamp);
        QApplication::sendEvent(receiver, &event);
    }
    void type(const QString& letters, int between) {
        for (const QChar letter : letters) {
            now += between;
            press(letter.toUpper().unicode(), letter);
        }
    }
    void end(int after, int key = Qt::Key_Return) {
        now += after;
        press(key, key == Qt::Key_Tab ? "\t" : "\r");
    }
    void scan(const QString& letters = kitCode, int key = Qt::Key_Return) {
        now += 1000;
        type(letters, 3);
        end(3, key);
    }

    qint64 now = 0; ///< ms
    QStringList scans;
    int presses = 0;
    QWidget window;
    QLineEdit* line = new QLineEdit("Strap torn");
    QPlainTextEdit* text = new QPlainTextEdit("Strap torn");
    QSpinBox* number = new QSpinBox;
    QDateEdit* day = new QDateEdit(QDate(2026, 3, 14));
    QComboBox* box = new QComboBox;
    QListWidget* list = new QListWidget;
    QPushButton* button = new QPushButton("Sign");
    QLineEdit* code = new QLineEdit;
    app::HandScanner scanner{window};
};

} // namespace

TEST_F(HandScanner, burstIsTextOfNoFieldAndIsTold) {
    for (QWidget* part : parts()) {
        if (part == code) continue;
        part->setFocus();
        line->setSelection(9, -5); // backwards, with the cursor before the "p"
        QTextCursor cursor = text->textCursor();
        cursor.setPosition(2);
        cursor.setPosition(7, QTextCursor::KeepAnchor);
        text->setTextCursor(cursor);
        number->setValue(12);
        scans.clear();
        for (const int key : {Qt::Key_Return, Qt::Key_Enter, Qt::Key_Tab}) {
            scan(kitCode, key);
            EXPECT_TRUE(part->hasFocus() || part->isAncestorOf(QApplication::focusWidget()));
        }
        EXPECT_EQ(scans, (QStringList{kitCode, kitCode, kitCode})) << part->metaObject()->className();
        EXPECT_EQ(line->text(), "Strap torn");
        EXPECT_EQ(line->selectedText(), "p tor");
        EXPECT_EQ(line->cursorPosition(), 4);
        EXPECT_EQ(text->toPlainText(), "Strap torn");
        EXPECT_EQ(text->textCursor().selectedText(), "rap t");
        EXPECT_EQ(number->value(), 12);
        EXPECT_EQ(day->date(), QDate(2026, 3, 14));
        EXPECT_EQ(box->currentText(), "Astrid");
        EXPECT_EQ(list->currentRow(), 0);
        EXPECT_EQ(presses, 0);
    }
}

TEST_F(HandScanner, sixCharactersWithinSixtyMillisecondsAreABurst) {
    line->clear();
    type("ABCDEF", 60);
    end(60);
    EXPECT_EQ(scans, QStringList{"ABCDEF"});
    EXPECT_EQ(line->text(), "");
}

TEST_F(HandScanner, fiveCharactersOrOnePauseOrALateReturnAreText) {
    line->clear();
    type("ABCDE", 3);
    end(3);
    EXPECT_EQ(line->text(), "ABCDE");
    type("FGH", 60);
    type("I", 61);
    type("JK", 60);
    end(60);
    EXPECT_EQ(line->text(), "ABCDEFGHIJK");
    type("LMNOPQ", 60);
    end(61);
    EXPECT_EQ(line->text(), "ABCDEFGHIJKLMNOPQ");
    EXPECT_TRUE(scans.isEmpty());
}

TEST_F(HandScanner, scanIntoAHalfTypedSentenceLeavesTheHalf) {
    line->clear();
    type("Two swimmers ", 90);
    scan();
    EXPECT_EQ(line->text(), "Two swimmers ");
    EXPECT_EQ(scans, QStringList{kitCode});
}

TEST_F(HandScanner, tagCodeAloneIsAScanAtAnySpeed) {
    for (const char* each : {"KMC20GKEK9", "PWX3VJVX6Q", "BB60Q6WX54", "C00000001Y"}) {
        scans.clear();
        line->setText("torn ");
        now += 1000;
        type(each, 400);
        end(900);
        EXPECT_EQ(scans, QStringList{each});
        EXPECT_EQ(line->text(), "torn ") << each;
    }
}

TEST_F(HandScanner, tagCodeInASentenceIsText) {
    line->clear();
    type("looks like KMC20GKEK9", 90);
    end(90);
    EXPECT_EQ(line->text(), "looks like KMC20GKEK9");
    line->clear();
    now += 1000;
    type("KMC20GKEK8", 90); // a slip in it
    end(90);
    EXPECT_EQ(line->text(), "KMC20GKEK8");
    EXPECT_TRUE(scans.isEmpty());
}

// A window that was busy deals with keys late and all at once; when they were pressed, their events say.
TEST_F(HandScanner, timesOfTheWindowSystemCountNotWhenAKeyIsDealtWith) {
    line->clear();
    quint64 stamp = 5000;
    for (const QChar letter : QString("Swimmer"))
        press(letter.unicode(), letter, stamp += 90);
    press(Qt::Key_Return, "\r", stamp + 90);
    EXPECT_EQ(line->text(), "Swimmer");
    EXPECT_TRUE(scans.isEmpty());
    line->clear();
    stamp = 0xFFFFFFF0; // X11's clock, about to begin anew
    for (const QChar letter : QString("Swimmer")) {
        now += 500;
        press(letter.unicode(), letter, stamp = (stamp + 5) & 0xFFFFFFFF);
    }
    press(Qt::Key_Return, "\r", stamp + 5);
    EXPECT_EQ(scans, QStringList{"Swimmer"});
    EXPECT_EQ(line->text(), "");
}

TEST_F(HandScanner, keyHeldDownIsNoScanner) {
    line->clear();
    press('X', "x");
    for (int i = 0; i < 9; ++i) {
        now += 30;
        press('X', "x", 0, true);
    }
    end(30);
    EXPECT_EQ(line->text(), "xxxxxxxxxx");
    EXPECT_TRUE(scans.isEmpty());
}

TEST_F(HandScanner, capitalsAndElementSeparatorsBelongToTheBurst) {
    line->clear();
    now += 1000;
    for (const QChar letter : QString("0107612345")) {
        now += 2;
        press(Qt::Key_Shift, {}, 0, false, Qt::ShiftModifier);
        press(letter.unicode(), letter);
    }
    now += 2;
    press(Qt::Key_BracketRight, "\x1d", 0, false, Qt::ControlModifier);
    type("21AB", 2);
    end(2);
    EXPECT_EQ(scans, QStringList{"0107612345\x1d"
                                 "21AB"});
    EXPECT_EQ(line->text(), "");
}

TEST_F(HandScanner, secondEndOfAScannerIsSwallowedAndAPersonsTabIsNot) {
    scan();
    end(3, Qt::Key_Tab);
    EXPECT_TRUE(line->hasFocus());
    end(100, Qt::Key_Tab);
    EXPECT_FALSE(line->hasFocus());
    EXPECT_EQ(scans.size(), 1);
}

TEST_F(HandScanner, letterFindsALineOfAListAsBefore) {
    for (QWidget* part : {static_cast<QWidget*>(list), static_cast<QWidget*>(box)}) {
        part->setFocus();
        now += 1000;
        press('K', "k");
        EXPECT_TRUE(support::waitFor([&] {
            return part == list ? list->currentItem()->text() == "Kim" : box->currentText() == "Kim";
        })) << part->metaObject()->className();
    }
    EXPECT_TRUE(scans.isEmpty());
}

// By way of the system's window, as real keys come, with its times: they are typed without a pause.
TEST_F(HandScanner, openBoxOfChoicesIsNotChosenFrom) {
    const auto openBox = [this]() -> QWindow* {
        box->setFocus();
        box->showPopup();
        EXPECT_TRUE(support::waitFor([] { return QApplication::activePopupWidget(); }));
        return QApplication::activePopupWidget()->windowHandle();
    };
    QWindow* opened = openBox();
    for (const char letter : std::string("KIMKIMKIM"))
        QTest::keyClick(opened, letter);
    QTest::keyClick(opened, Qt::Key_Return);
    EXPECT_EQ(scans, QStringList{"KIMKIMKIM"});
    box->hidePopup();
    EXPECT_EQ(box->currentText(), "Astrid");
    opened = openBox();
    QTest::keyClick(opened, 'K');
    QTest::keyClick(opened, Qt::Key_Return); // by a person it is
    EXPECT_EQ(box->currentText(), "Kim");
}

TEST_F(HandScanner, spaceAndReturnPressAButtonAsBefore) {
    button->setFocus();
    press(Qt::Key_Space, " ");
    QKeyEvent release(QEvent::KeyRelease, Qt::Key_Space, Qt::NoModifier, " ");
    QApplication::sendEvent(button, &release);
    EXPECT_EQ(presses, 1);
}

TEST_F(HandScanner, burstGoesOnWhenTheKeyboardIsMovedMeanwhile) {
    list->setFocus();
    now += 1000;
    type("KMC20", 3);
    line->setFocus();
    type("GKEK9", 3);
    end(3);
    EXPECT_EQ(scans, QStringList{kitCode});
    EXPECT_EQ(line->text(), "Strap torn");
    EXPECT_EQ(list->currentRow(), 0);
}

TEST_F(HandScanner, fieldThatAsksForACodeTakesItInPlaceOfWhatItHeld) {
    QStringList sent;
    QObject::connect(code, &QLineEdit::returnPressed, &window, [&] { sent << code->text(); });
    for (const int key : {Qt::Key_Return, Qt::Key_Tab}) {
        code->setText("K7");
        code->setFocus();
        scan(kitCode, key);
        EXPECT_EQ(code->text(), kitCode);
    }
    EXPECT_EQ(sent, (QStringList{kitCode, kitCode}));
    EXPECT_TRUE(scans.isEmpty());
    code->clear();
    type("km", 90); // and by hand as ever
    end(90);
    EXPECT_EQ(sent.last(), "km");
}
