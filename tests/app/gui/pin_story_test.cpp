#include "tests/app/gui/story_hand.h"
#include "tests/app/gui/window_story.h"

#include "app/gui/club/club_lock.h"
#include "app/gui/gear/office/gear_office.h"
#include "core/club/club_pins.h"
#include "core/record/pin.h"

#include <QPushButton>

using support::StoryHand;
using support::waitFor;

namespace {

/// A gear officer's PIN in the window, by somebody with a mouse.
class PinStory : public support::WindowStory {
protected:
    static constexpr const char* officer = "Joss Iveny"; // the only one of demo/club/people.csv

    void givePin() {
        auto club = stored(core::Club::Access::ReadWrite);
        ASSERT_TRUE(club.pins().set(officer, *core::Pin::from("4711"), {}));
    }
    void open(app::Choosers choosers = {}) {
        openWindow(false, std::move(choosers));
        m_hand = std::make_unique<StoryHand>(window(), StoryHand::Way::Mouse);
    }
    StoryHand& hand() { return *m_hand; }
    void showPerson(const char* name) {
        QTest::keySequence(&window(), QKeySequence("Ctrl+Alt+3"));
        hand().choose("registerSheetBox", "people");
        hand().chooseRow("registerTable", name);
    }
    void saveNote(const QString& note) {
        hand().fill("cell_note", note);
        hand().press("registerSaveButton");
    }
    std::string noteOf(const char* person) {
        return stored().register_().rowNamed(core::SheetId::People, person)->back();
    }
    void giveToStrip(const QString& pin) {
        hand().fill("unlockPinEdit", pin);
        hand().press("unlockButton");
    }
    bool isAsked() { return strip()->isVisible(); }
    QWidget* strip() { return window().findChild<QWidget*>("unlockStrip"); }
    QPushButton* mark() { return window().findChild<QPushButton*>("lockMark"); }

private:
    std::unique_ptr<StoryHand> m_hand;
};

} // namespace

TEST_F(PinStory, aPinIsSetOnThePersonsRowAndAsksForNothingButWhatOfficersDo) {
    open();
    showPerson(officer);
    hand().press("registerPinButton");
    EXPECT_TRUE(says("pinWhatLabel", "whoever has the club file can read it"));
    hand().fill("pinNewEdit", "4711");
    hand().fill("pinAgainEdit", "4712");
    hand().press("pinSetButton");
    EXPECT_TRUE(says("pinSaidLabel", "not the same"));
    hand().fill("pinNewEdit", "4711");
    hand().fill("pinAgainEdit", "4711");
    hand().press("pinSetButton");
    ASSERT_TRUE(says("registerSaidLabel", "The PIN of Joss Iveny is set."));
    EXPECT_TRUE(stored().pins().isSet(officer));
    EXPECT_FALSE(mark()->isVisible());

    const int before = boardsShown();
    press(Qt::Key_B, Qt::ControlModifier);
    waitForBoard(before);
    openBoat("Grebe");
    window().checkPage().session()->sign("Petra Lund", "needed at once");
    settle();
    EXPECT_FALSE(isAsked()) << "a launch waits for no PIN";
    EXPECT_EQ(storedCondition("Grebe").kind, core::BoatCondition::Kind::Out);
}

TEST_F(PinStory, whatNeedsAPinAsksForItInThePageAndGoesOn) {
    givePin();
    open();
    showPerson("Petra Lund");
    saveNote("swims");
    ASSERT_TRUE(waitFor([&] { return isAsked(); }));
    EXPECT_EQ(noteOf("Petra Lund"), "");
    EXPECT_TRUE(waitFor([&] { return child("unlockPinEdit")->hasFocus(); })) << "the one officer is chosen";
    giveToStrip("1234");
    EXPECT_TRUE(says("unlockSaidLabel", "not the PIN of Joss Iveny"));
    EXPECT_EQ(noteOf("Petra Lund"), "");
    giveToStrip("4711");
    ASSERT_TRUE(says("registerSaidLabel", "Petra Lund: saved."));
    EXPECT_EQ(noteOf("Petra Lund"), "swims");
    EXPECT_FALSE(isAsked());
    EXPECT_TRUE(mark()->isVisible() && mark()->text().contains("Joss Iveny"));

    showPerson("Sami Reeve");
    saveNote("drives the van");
    ASSERT_TRUE(says("registerSaidLabel", "Sami Reeve: saved.")) << "once for ten minutes";
    hand().press("lockMark");
    ASSERT_TRUE(waitFor([&] { return !mark()->isVisible(); }));
    showPerson("Hal Okoro");
    saveNote("has no van");
    ASSERT_TRUE(waitFor([&] { return isAsked(); }));
    hand().press("unlockLeaveButton");
    EXPECT_FALSE(isAsked());
    EXPECT_TRUE(says("registerRowSaidLabel", "a gear officer's to do"));
    EXPECT_EQ(noteOf("Hal Okoro"), "");
}

TEST_F(PinStory, aSignatureIsProvenWhereTheClubAsksForThat) {
    givePin();
    {
        auto club = stored(core::Club::Access::ReadWrite);
        ASSERT_TRUE(club.pins().unlock(officer, *core::Pin::from("4711")));
        ASSERT_TRUE(club.pins().proveSignatures(true, {}));
    }
    open();
    openBoat("Grebe");
    window().checkPage().session()->sign(officer, "needed at once");
    ASSERT_TRUE(waitFor([&] { return isAsked(); }));
    giveToStrip("1234");
    ASSERT_TRUE(says("unlockSaidLabel", "not the PIN of Joss Iveny"));
    EXPECT_EQ(storedCondition("Grebe").kind, core::BoatCondition::Kind::NotReady);
    giveToStrip("4711");
    ASSERT_TRUE(waitFor([&] { return child("signedPanel")->isVisible(); }));
    EXPECT_FALSE(isAsked());
    EXPECT_FALSE(mark()->isVisible()) << "a signature unlocks nothing";
}

TEST_F(PinStory, afterFiveWrongOnesTheSecondsAreCountedDown) {
    givePin();
    open();
    showPerson("Petra Lund");
    saveNote("swims");
    ASSERT_TRUE(waitFor([&] { return isAsked(); }));
    for (int wrong = 0; wrong < 6; ++wrong)
        giveToStrip("1234");
    ASSERT_TRUE(says("unlockSaidLabel", "Too many wrong PINs were given for Joss Iveny: wait "));
    const auto* said = window().findChild<QLabel*>("unlockSaidLabel");
    const QString first = said->text();
    EXPECT_TRUE(waitFor([&] { return said->text() != first && said->text().contains("wait"); }))
        << "it is counted down";
    child<QLineEdit>("unlockPinEdit")->setText("4711");
    EXPECT_FALSE(child("unlockButton")->isEnabled());
    press(Qt::Key_Escape);
    EXPECT_FALSE(isAsked());
}

TEST_F(PinStory, aFolderIsImportedAfterThePinWasGiven) {
    givePin();
    app::Choosers choosers;
    choosers.importFolder = [](QWidget*) { return QStringLiteral(DEMO_CLUB_FOLDER); };
    open(choosers);
    press(Qt::Key_I, Qt::ControlModifier);
    ASSERT_TRUE(waitFor([&] { return isAsked(); }));
    EXPECT_TRUE(says("boardSaidLabel", "a gear officer's to do"));
    giveToStrip("4711");
    EXPECT_TRUE(says("boardSaidLabel", "Imported: "));
}

TEST_F(PinStory, aPinThatWasTakenAwayByTheFilesOwnerStandsOnTheBoard) {
    open();
    EXPECT_FALSE(window().findChild<QLabel*>("pinResetLabel")->isVisible());
    givePin();
    {
        auto club = stored(core::Club::Access::ReadWrite);
        ASSERT_TRUE(club.pins().reset(officer, {}));
    }
    const int before = boardsShown();
    press(Qt::Key_B, Qt::ControlModifier);
    waitForBoard(before);
    EXPECT_TRUE(says("pinResetLabel", "The PIN of Joss Iveny was taken away"));
}
