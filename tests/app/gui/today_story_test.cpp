#include "core/answers/event_tally.h"
#include "core/answers/item_record.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "tests/app/gui/window_story.h"

#include <QComboBox>
#include <QPushButton>

using support::WindowStory;

namespace {

/// Today's event on the board, and what happened to kit of a check.
class TodayStory : public WindowStory {
protected:
    std::optional<core::HeldEvent> held() { return stored().events().held(moment().at); }
    void pressOnBoard(const char* button) {
        ASSERT_TRUE(child(button)->isVisible() && child(button)->isEnabled()) << button;
        child(button)->setFocus();
        press(Qt::Key_Space);
    }
};

} // namespace

TEST_F(TodayStory, anEventBegunOnTheBoardIsOfTheChecksOpenedThen) {
    openWindow();
    EXPECT_EQ(child<QLabel>("todaysEventLabel")->text(), "Today's event:");
    EXPECT_FALSE(child("beginEventButton")->isEnabled());
    child("todaysEventEdit")->setFocus();
    type("Spring patrol");
    press(Qt::Key_Return);
    EXPECT_TRUE(child("beginEventButton")->hasFocus());
    press(Qt::Key_Space);
    ASSERT_TRUE(support::waitFor([&] { return child("endEventButton")->isVisible(); }));
    EXPECT_TRUE(child<QLabel>("todaysEventLabel")->text().startsWith("Today's event: Spring patrol, until "));
    ASSERT_TRUE(held());
    EXPECT_EQ(held()->event, "Spring patrol");
    EXPECT_FALSE(child("todaysEventBox")->isVisible());
    openBoat("Grebe");
    EXPECT_EQ(stored().events().names(), std::vector<std::string>{"Spring patrol"});
    saveForLater();
    pressOnBoard("endEventButton");
    ASSERT_TRUE(support::waitFor([&] { return child("todaysEventBox")->isVisible(); }));
    EXPECT_FALSE(held());
    EXPECT_EQ(child<QComboBox>("todaysEventBox")->itemText(0), "Spring patrol");
    EXPECT_EQ(child<QLineEdit>("todaysEventEdit")->text(), "");
}

TEST_F(TodayStory, aBoardThatIsReadAnewTakesNeitherTheKeyboardNorWhatWasBegun) {
    openWindow();
    EXPECT_TRUE(qobject_cast<app::BoatStrip*>(QApplication::focusWidget()))
        << "a code is the board's at once";
    child("todaysEventEdit")->setFocus();
    type("Spring");
    int before = boardsShown();
    press(Qt::Key_B, Qt::ControlModifier);
    waitForBoard(before);
    EXPECT_TRUE(child("todaysEventEdit")->hasFocus());
    EXPECT_EQ(child<QLineEdit>("todaysEventEdit")->text(), "Spring");
    EXPECT_TRUE(child("beginEventButton")->isEnabled());

    window().findChild<QWidget*>("boatStrip Grebe")->setFocus();
    before = boardsShown();
    press(Qt::Key_B, Qt::ControlModifier);
    waitForBoard(before);
    EXPECT_EQ(QApplication::focusWidget(), window().findChild<QWidget*>("boatStrip Grebe"));
    EXPECT_EQ(child<QLineEdit>("todaysEventEdit")->text(), "");
}

TEST_F(TodayStory, whatHappenedToAnItemIsOnePressInItsCheck) {
    openWindow();
    openBoat("Grebe");
    const char* jacket = "K5M9AR38J5"; // demo/club: an inflatable jacket, which waits for "inflated"
    scanByHand(jacket);
    app::CheckPage& page = window().checkPage();
    ASSERT_TRUE(markOf(jacket));
    page.damagedCurrent();
    ASSERT_TRUE(support::waitFor([&] {
        auto* button = child<QPushButton>("happenedButton");
        return button && button->isVisible();
    }));
    const auto before = stored().kit().itemRecord(jacket)->happenings.size();
    child("happenedButton")->setFocus();
    press(Qt::Key_Space);
    settle();
    const auto happenings = stored().kit().itemRecord(jacket)->happenings;
    ASSERT_EQ(happenings.size(), before + 1);
    EXPECT_EQ(happenings.back().day, today());
    EXPECT_TRUE(said().startsWith("Recorded for today: inflated")) << said().toStdString();
}
