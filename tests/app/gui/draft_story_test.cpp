#include "core/club/club_checks.h"
#include "core/club/club_events.h"
#include "tests/app/gui/window_story.h"

#include "app/gui/gear/office/gear_office.h"

#include <QAction>
#include <QComboBox>
#include <QFile>
#include <QPushButton>
#include <QSettings>

namespace {

/// What is half written is there again, whatever happened, until it is sent.
class DraftStory : public support::WindowStory {
protected:
    QLineEdit* field(const char* name) { return child<QLineEdit>(name); }

    /// As a crash leaves the settings: what has not reached the disk is lost.
    static bool isOnDisk(const QByteArray& words) {
        QFile file(QSettings().fileName());
        return file.open(QIODevice::ReadOnly) && file.readAll().contains(words);
    }

    void goToReason() {
        openBoat("Bittern");
        press(Qt::Key_Return, Qt::ControlModifier);
        ASSERT_EQ(QApplication::focusWidget(), field("urgentReasonEdit"));
    }

    void goToDamage(const char* code) {
        typeCode(code);
        press(Qt::Key_D, Qt::ControlModifier);
        ASSERT_EQ(QApplication::focusWidget(), field("damageEdit"));
    }

    void beginReturnOfGrebe() {
        {
            auto club = core::Club::open(file());
            ASSERT_TRUE(club);
            const auto launch = club->checks().open("Grebe", core::Phase::Launch, moment());
            ASSERT_TRUE(launch);
            ASSERT_TRUE(club->checks().sign(launch->check, "Petra Lund", "for the test", moment()));
        }
        openWindow();
        openBoat("Grebe");
        ASSERT_EQ(window().checkPage().phase(), core::Phase::Return);
    }
};

} // namespace

TEST_F(DraftStory, reasonStaysWhenThePanelIsLeftAfterAScanAndAfterACrash) {
    openWindow();
    goToReason();
    type("Two swimmers");
    scanByHand("KPZ36AE62R");
    child<QPushButton>("signBackButton")->click();
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(field("urgentReasonEdit")->text(), "Two swimmers");
    EXPECT_TRUE(isOnDisk("Two swimmers"));
    EXPECT_FALSE(isOnDisk("KPZ36AE62R"));
    closeWindow(); // nothing is saved by that
    openWindow();
    openBoat("Bittern");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(field("urgentReasonEdit")->text(), "Two swimmers");
    saveForLater();
    openBoat("Grebe");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(field("urgentReasonEdit")->text(), "") << "of another check";
}

TEST_F(DraftStory, reasonIsForgottenOnceItIsSigned) {
    openWindow();
    openBoat("Bittern");
    child<QPushButton>("signButton")->click();
    child<QComboBox>("signedByBox")->setCurrentText("Tobin Ashe");
    type("Two swimmers drift off");
    ASSERT_TRUE(isOnDisk("Two swimmers drift off"));
    child<QPushButton>("signNowButton")->click();
    settle();
    ASSERT_TRUE(child("signedPanel")->isVisible());
    EXPECT_FALSE(isOnDisk("Two swimmers drift off"));
}

TEST_F(DraftStory, damageStaysWithItsItemUntilItIsWithdrawn) {
    openWindow();
    openBoat("Grebe");
    goToDamage("KMC20GKEK9");
    type("Sash to");
    scanByHand("KD0XPAMAJG");
    child<QPushButton>("itemBackButton")->click();
    press(Qt::Key_D, Qt::ControlModifier); // of the item seen last
    EXPECT_EQ(field("damageEdit")->text(), "");
    child<QPushButton>("itemBackButton")->click();
    goToDamage("KMC20GKEK9");
    EXPECT_EQ(field("damageEdit")->text(), "Sash to");
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(field("damageEdit")->text(), "Sash to") << "after a second press of its key";
    field("damageEdit")->setFocus();
    press(Qt::Key_End);
    type("rn");
    EXPECT_TRUE(isOnDisk("Sash torn"));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    settle();
    EXPECT_EQ(markOf("KMC20GKEK9"), app::Mark::Look);
    EXPECT_FALSE(isOnDisk("Sash torn"));
}

TEST_F(DraftStory, tripStaysUntilItIsWritten) {
    beginReturnOfGrebe();
    press(Qt::Key_T, Qt::ControlModifier);
    const QString left = field("tripLeftEdit")->text();
    field("tripFuelEdit")->setFocus();
    type("half a tank");
    field("tripIncidentsEdit")->setFocus();
    type("Towed a dinghy");
    scanByHand("KMC20GKEK9");
    press(Qt::Key_T, Qt::ControlModifier);
    EXPECT_EQ(field("tripIncidentsEdit")->text(), "Towed a dinghy") << "after a second press of its key";
    closeWindow();
    openWindow();
    openBoat("Grebe");
    press(Qt::Key_T, Qt::ControlModifier);
    EXPECT_EQ(field("tripFuelEdit")->text(), "half a tank");
    EXPECT_EQ(field("tripIncidentsEdit")->text(), "Towed a dinghy");
    EXPECT_EQ(field("tripLeftEdit")->text(), left) << "as proposed";
    field("tripIncidentsEdit")->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), child("writeTripButton"));
    press(Qt::Key_Return);
    settle();
    EXPECT_TRUE(window().checkPage().session()->state()->trip);
    EXPECT_FALSE(isOnDisk("Towed a dinghy"));
}

TEST_F(DraftStory, logEntryStaysUntilItIsWritten) {
    openWindow();
    const auto showLog = [&] { window().gearOffice().findChild<QAction*>("gearPage log")->trigger(); };
    showLog();
    auto* about = child<QComboBox>("logAboutBox");
    ASSERT_TRUE(support::waitFor([&] { return about->count() > 1; }));
    field("logTextEdit")->setFocus();
    type("Painter frayed");
    typeAsScanner("KMC20GKEK9");
    window().gearOffice().findChild<QAction*>("gearPage due")->trigger();
    closeWindow();
    openWindow();
    showLog();
    EXPECT_TRUE(support::waitFor([&] { return field("logTextEdit")->text() == "Painter frayed"; }));
    EXPECT_EQ(field("logCodeEdit")->text(), "KMC20GKEK9");
    window().gearOffice().setOfficer("Joss Iveny");
    child<QPushButton>("writeLogButton")->click();
    EXPECT_TRUE(support::waitFor([&] { return field("logTextEdit")->text().isEmpty(); }));
    EXPECT_FALSE(isOnDisk("Painter frayed"));
}
