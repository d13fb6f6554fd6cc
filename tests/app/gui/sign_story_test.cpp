#include "app/gui/widgets/reason_words.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "tests/app/gui/window_story.h"

#include "app/gui/gear/office/gear_office.h"

#include <QAction>
#include <QComboBox>
#include <QPushButton>

#include <algorithm>

namespace {

/// How a signature is asked for, and then given.
enum class Way { Button, Keys, Tag };

class SignStory : public support::WindowStory {
protected:
    void openBittern() {
        openWindow();
        openBoat("Bittern");
        typeCode("P5269VZ10C"); // Tobin Ashe, who has no jacket yet
    }

    QString keyboard() {
        QWidget* focus = QApplication::focusWidget();
        return focus ? focus->objectName() : QString();
    }
    QString signer() { return child<QComboBox>("signedByBox")->currentText(); }
    bool isSigned() {
        settle();
        return child("signedPanel")->isVisible();
    }
    bool isAskedOnceMore() { return child<QPushButton>("signNowButton")->text() == "Sign all the same"; }

    void giveNames(const QStringList& names) {
        window().checkPage().session()->giveNames(names);
        settle();
    }

    void askBy(Way way) {
        if (way == Way::Button)
            child<QPushButton>("signButton")->click();
        else
            giveBy(way);
        settle();
        ASSERT_TRUE(child("signPanel")->isVisible());
    }
    void giveBy(Way way) {
        if (way == Way::Button)
            child<QPushButton>("signNowButton")->click();
        else if (way == Way::Keys)
            press(Qt::Key_Return, Qt::ControlModifier);
        else
            scanByHand("C00000001Y");
        settle();
    }
};

class WaysToSign : public SignStory, public testing::WithParamInterface<Way> {};

} // namespace

TEST(ReasonWords, codeOfATagAndLessThanThreeLettersAreWanting) {
    for (const char* typed : {"", "  ", "ab", "a b", "12345", "..!..", "7", "KMC20GKEK9", "kmc2 0gke k9",
                              " C00000001Y", "P-5269-VZ10C"})
        EXPECT_FALSE(app::wantingOfReason(typed).isEmpty()) << typed;
    for (const char* typed : {"sea", "Tow", "a b c", "Öse ab", "море", "two swimmers", "KMC20GKEK9 is torn",
                              "Snapped off", "KMC20GKEK8"})
        EXPECT_TRUE(app::wantingOfReason(typed).isEmpty()) << typed;
}

TEST_F(SignStory, returnInTheReasonLeadsToTheButtonAndSignsNothing) {
    openBittern();
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(keyboard(), "urgentReasonEdit");
    press(Qt::Key_Return);
    EXPECT_EQ(keyboard(), "urgentReasonEdit") << "a button that waits takes no keyboard";
    type("Two swimmers drift off");
    press(Qt::Key_Return);
    EXPECT_EQ(keyboard(), "signNowButton");
    EXPECT_FALSE(isAskedOnceMore());
    EXPECT_FALSE(isSigned());
    closeWindow();
    EXPECT_EQ(storedCondition("Bittern").kind, core::BoatCondition::Kind::NotReady);
}

TEST_F(SignStory, signatureWaitsForAReasonInWordsAndSaysWhy) {
    openBittern();
    press(Qt::Key_Return, Qt::ControlModifier);
    const auto* wanting = child<QLabel>("reasonWantingLabel");
    EXPECT_TRUE(wanting->isVisible());
    EXPECT_EQ(wanting->text(), "Say it in words: at least three letters.");
    type("a1");
    EXPECT_FALSE(child("signNowButton")->isEnabled());
    type("bc");
    EXPECT_TRUE(child("signNowButton")->isEnabled());
    EXPECT_EQ(wanting->text(), "");
    child<QLineEdit>("urgentReasonEdit")->setText("KMC20GKEK9");
    EXPECT_FALSE(child("signNowButton")->isEnabled());
    EXPECT_EQ(wanting->text(), "That is a tag's code. Say it in words.");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(isSigned());
    EXPECT_EQ(said(), "Say first who signs and, where kit is incomplete, why.");
}

TEST_F(SignStory, returnInADamageLeadsToTheButtonAndWithdrawsNothing) {
    openWindow();
    openBoat("Grebe");
    typeCode("KMC20GKEK9");
    press(Qt::Key_D, Qt::ControlModifier);
    child<QLineEdit>("damageEdit")->setText("KD0XPAMAJG");
    EXPECT_FALSE(child("withdrawButton")->isEnabled());
    EXPECT_EQ(child<QLabel>("damageWantingLabel")->text(), "That is a tag's code. Say it in words.");
    child<QLineEdit>("damageEdit")->clear();
    type("Sash torn");
    press(Qt::Key_Return);
    settle();
    EXPECT_EQ(keyboard(), "withdrawButton");
    EXPECT_EQ(stored().kit().item("KMC20GKEK9")->state, core::ItemState::Serviceable);
    press(Qt::Key_Return);
    settle();
    EXPECT_EQ(stored().kit().item("KMC20GKEK9")->state, core::ItemState::Unserviceable);
}

TEST_F(SignStory, returnInALogEntryLeadsToItsButton) {
    openWindow();
    window().gearOffice().findChild<QAction*>("gearPage log")->trigger();
    window().gearOffice().setOfficer("Joss Iveny");
    auto* about = child<QComboBox>("logAboutBox");
    ASSERT_TRUE(support::waitFor([&] { return about->count() > 1; }));
    about->setCurrentIndex(1);
    child("logTextEdit")->setFocus();
    type("Painter frayed");
    press(Qt::Key_Return);
    EXPECT_EQ(keyboard(), "writeLogButton");
    const auto isWritten = [&] {
        const auto entries = stored().log().entries();
        return std::any_of(entries->begin(), entries->end(),
                           [](const core::LogEntry& entry) { return entry.text == "Painter frayed"; });
    };
    EXPECT_FALSE(isWritten());
    press(Qt::Key_Return);
    EXPECT_TRUE(support::waitFor(isWritten));
}

TEST_F(SignStory, keyHeldDownPressesAButtonOnce) {
    openBittern();
    auto* sign = child<QPushButton>("signButton");
    int presses = 0;
    QObject::connect(sign, &QPushButton::clicked, &window(), [&] { ++presses; });
    sign->setFocus();
    pauseKeys();
    for (const bool isRepeated : {true, true, false}) {
        QKeyEvent event(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, "\r", isRepeated);
        QApplication::sendEvent(sign, &event);
        EXPECT_EQ(presses, isRepeated ? 0 : 1);
    }
}

TEST_P(WaysToSign, askTheSameAndProposeTheDriver) {
    openBittern();
    askBy(GetParam());
    EXPECT_EQ(signer(), "Tobin Ashe");
    EXPECT_EQ(keyboard(), "urgentReasonEdit");
    giveBy(GetParam());
    EXPECT_FALSE(isSigned()) << "no reason yet";
    type("Two swimmers drift off");
    giveBy(GetParam());
    EXPECT_FALSE(isSigned()) << "Tobin Ashe has no jacket";
    EXPECT_TRUE(isAskedOnceMore());
    EXPECT_TRUE(child<QLabel>("withoutJacketLabel")->text().contains("Without one: Tobin Ashe."))
        << child<QLabel>("withoutJacketLabel")->text().toStdString();
    EXPECT_TRUE(child<QLabel>("withoutJacketLabel")
                    ->text()
                    .startsWith("Nobody goes afloat without a life jacket that fits."));
    waitOutADoubleClick();
    giveBy(GetParam());
    EXPECT_TRUE(isSigned());
    closeWindow();
    EXPECT_EQ(storedCondition("Bittern").by, "Tobin Ashe");
    EXPECT_EQ(storedCondition("Bittern").urgent, "Two swimmers drift off");
}

INSTANTIATE_TEST_SUITE_P(Sign, WaysToSign, testing::Values(Way::Button, Way::Keys, Way::Tag));

TEST_F(SignStory, whoHasAJacketIsNotNamedAndNothingIsAskedTwice) {
    openBittern();
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(child("withoutJacketLabel")->isVisible());
    giveNames({});
    EXPECT_FALSE(child("withoutJacketLabel")->isVisible());
    child<QComboBox>("signedByBox")->setCurrentText("Tobin Ashe");
    child<QLineEdit>("urgentReasonEdit")->setText("Two swimmers drift off");
    child<QPushButton>("signNowButton")->click();
    EXPECT_TRUE(isSigned());
}

TEST_F(SignStory, doubleClickIsOnePressAndOtherPeopleAreAskedForAnew) {
    openBittern();
    press(Qt::Key_Return, Qt::ControlModifier);
    type("Two swimmers drift off");
    auto* sign = child<QPushButton>("signNowButton");
    sign->click();
    sign->click();
    EXPECT_FALSE(isSigned());
    EXPECT_TRUE(isAskedOnceMore());
    giveNames({"Tobin Ashe", "Sami Reeve"});
    EXPECT_FALSE(isAskedOnceMore());
    EXPECT_TRUE(child<QLabel>("withoutJacketLabel")->text().contains("Tobin Ashe and Sami Reeve"))
        << child<QLabel>("withoutJacketLabel")->text().toStdString();
}

TEST_F(SignStory, driverIsProposedUntilSomebodyChoosesOtherwise) {
    openWindow();
    openBoat("Bittern");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(child<QComboBox>("signedByBox")->currentIndex(), 0) << "nobody yet";
    giveNames({"Petra Lund"});
    EXPECT_EQ(signer(), "Petra Lund");
    giveNames({"Sami Reeve", "Petra Lund"});
    EXPECT_EQ(signer(), "Sami Reeve") << "drives now";
    auto* box = child<QComboBox>("signedByBox");
    box->setFocus();
    for (int i = 0; i < box->count() && signer() != "Marta Quill"; ++i)
        press(Qt::Key_Down);
    ASSERT_EQ(signer(), "Marta Quill");
    scanByHand("KPZ36AE62R");
    EXPECT_EQ(signer(), "Marta Quill") << "after a new answer";
    giveNames({"Tobin Ashe"});
    EXPECT_EQ(signer(), "Marta Quill") << "after another name";
    child<QPushButton>("signBackButton")->click();
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(signer(), "Marta Quill") << "after another look at the lists";
    saveForLater();
    openBoat("Grebe");
    giveNames({"Petra Lund"});
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(signer(), "Petra Lund") << "of another check";
}
