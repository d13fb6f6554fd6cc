#include "core/answers/history.h"
#include "core/club/club_checks.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "tests/app/gui/window_story.h"

#include <QComboBox>
#include <QPushButton>

#include <algorithm>

namespace {

constexpr const char* theTube = "KMC20GKEK9";

/// What was done by mistake is taken back, and a check that nobody wants is let go.
class LetGoStory : public support::WindowStory {
protected:
    bool isInHistory(const std::string& subject, const std::string& kind) {
        const auto history = stored().answers().history(subject);
        return history && std::any_of(history->begin(), history->end(),
                                      [&](const core::HistoryLine& line) { return line.kind == kind; });
    }
    const app::CheckState& state() { return *window().checkPage().session()->state(); }
    void undo() {
        press(Qt::Key_Z, Qt::ControlModifier);
        settle();
    }
    void letGo() { press(Qt::Key_U, Qt::ControlModifier | Qt::ShiftModifier); }
    void damage(const char* code, const QString& what) {
        typeCode(code);
        press(Qt::Key_D, Qt::ControlModifier);
        type(what);
        press(Qt::Key_Return);
        press(Qt::Key_Return);
        settle();
    }
};

} // namespace

TEST_F(LetGoStory, damageTakenBackMakesTheThingWhatItWas) {
    openWindow();
    openBoat("Grebe");
    typeCode("PWX3VJVX6Q"); // Petra Lund
    damage(theTube, "Sash torn at the clip");
    ASSERT_EQ(stored().kit().item(theTube)->state, core::ItemState::Unserviceable);
    undo();
    EXPECT_TRUE(said().startsWith("Taken back: damage of rescue tube KMC2 0GKE K9.")) << said().toStdString();
    EXPECT_TRUE(said().contains("Next: rescue tube KMC2 0GKE K9")) << said().toStdString();
    EXPECT_EQ(stored().kit().item(theTube)->state, core::ItemState::Serviceable);
    EXPECT_EQ(markOf(theTube), app::Mark::Found) << "it was seen all the same";
    const auto log = stored().log().entries();
    const auto entry = std::find_if(log->begin(), log->end(), [](const core::LogEntry& each) {
        return each.item.id == theTube && each.text == "Sash torn at the clip";
    });
    ASSERT_NE(entry, log->end()) << "it stays in the record";
    EXPECT_TRUE(entry->closed);
    EXPECT_EQ(entry->closing, "taken back by Petra Lund");
}

TEST_F(LetGoStory, undoGoesBackThroughNamesAndPointsToTheBottom) {
    openWindow();
    openBoat("Grebe");
    window().checkPage().session()->recordPoint(
        QString::fromStdString(state().answer.points.front().point.name), 1);
    settle();
    typeCode("PWX3VJVX6Q");
    ASSERT_EQ(state().names.size(), 1U);
    ASSERT_TRUE(state().answer.points.front().value);
    EXPECT_EQ(child<QPushButton>("letGoButton")->text(), "Close…");
    undo();
    EXPECT_TRUE(said().startsWith("Taken back: aboard: Petra Lund.")) << said().toStdString();
    EXPECT_TRUE(state().names.empty());
    undo();
    EXPECT_TRUE(said().startsWith("Taken back: point")) << said().toStdString();
    EXPECT_TRUE(said().endsWith("Nothing is left to take back.")) << said().toStdString();
    EXPECT_FALSE(state().answer.points.front().value);
    EXPECT_EQ(child<QPushButton>("letGoButton")->text(), "Discard");
    undo();
    EXPECT_TRUE(said().contains("nothing stands in this check", Qt::CaseInsensitive)) << said().toStdString();
}

TEST_F(LetGoStory, checkOpenedByMistakeIsDiscardedByOnePress) {
    openWindow();
    openBoat("Grebe");
    const int shownBefore = boardsShown();
    child<QPushButton>("letGoButton")->click();
    waitForBoard(shownBefore);
    EXPECT_TRUE(stored().checks().unfinished().empty());
    EXPECT_TRUE(isInHistory("Grebe", "check-closed"));
}

TEST_F(LetGoStory, leavingACheckInWhichNothingWasDoneLeavesNoTraceOnTheBoard) {
    openWindow();
    auto* strip = window().findChild<app::BoatStrip*>("boatStrip Grebe");
    const QString before = strip->accessibleName() + strip->accessibleDescription();
    openBoat("Grebe");
    saveForLater();
    strip = window().findChild<app::BoatStrip*>("boatStrip Grebe");
    EXPECT_EQ(strip->accessibleName() + strip->accessibleDescription(), before);
    openBoat("Grebe");
    typeCode(theTube);
    saveForLater();
    strip = window().findChild<app::BoatStrip*>("boatStrip Grebe");
    EXPECT_NE(strip->accessibleName() + strip->accessibleDescription(), before)
        << "here is something to go on with";
}

TEST_F(LetGoStory, whereSomethingStandsItIsClosedForAReason) {
    openWindow();
    openBoat("Grebe");
    typeCode(theTube);
    letGo();
    ASSERT_EQ(QApplication::focusWidget()->objectName(), "closeUnsignedReasonEdit");
    EXPECT_EQ(child<QLabel>("letGoNewestLabel")->text(), "Recorded last: rescue tube KMC2 0GKE K9.");
    type("no");
    EXPECT_FALSE(child<QPushButton>("closeUnsignedButton")->isEnabled());
    press(Qt::Key_Return);
    EXPECT_EQ(stored().checks().unfinished().size(), 1U);
    type("body goes out");
    press(Qt::Key_Return);
    EXPECT_EQ(stored().checks().unfinished().size(), 1U) << "Return leads to the button";
    const int shownBefore = boardsShown();
    press(Qt::Key_Return);
    waitForBoard(shownBefore);
    EXPECT_TRUE(stored().checks().unfinished().empty());
    EXPECT_EQ(stored().kit().item("KFC3K7GM79")->state, core::ItemState::Serviceable)
        << "nothing that was not seen is missing for it";
    EXPECT_TRUE(isInHistory("Grebe", "check-closed"));
    EXPECT_TRUE(isInHistory(theTube, "tag-seen"));
}

TEST_F(LetGoStory, escapeAndBackLeaveTheCheckAsItIs) {
    openWindow();
    openBoat("Grebe");
    typeCode(theTube);
    letGo();
    press(Qt::Key_Escape);
    EXPECT_FALSE(child("letGoPanel")->isVisible());
    EXPECT_EQ(stored().checks().unfinished().size(), 1U);
    EXPECT_EQ(markOf(theTube), app::Mark::Found);
}

TEST_F(LetGoStory, escapeLeavesADamageAndASignatureAsTheyAre) {
    openWindow();
    openBoat("Grebe");
    typeCode(theTube);
    press(Qt::Key_D, Qt::ControlModifier);
    type("Sash torn");
    press(Qt::Key_Escape);
    EXPECT_FALSE(child("damageEdit")->isVisible());
    EXPECT_EQ(stored().kit().item(theTube)->state, core::ItemState::Serviceable);
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(child("signPanel")->isVisible());
    press(Qt::Key_Escape);
    EXPECT_FALSE(child("signPanel")->isVisible());
    EXPECT_EQ(stored().checks().unfinished().size(), 1U);
}

TEST_F(LetGoStory, escapeClearsACodeThatWasBegun) {
    openWindow();
    openBoat("Grebe");
    type("KMC2");
    auto* code = child<QLineEdit>("codeEdit");
    ASSERT_TRUE(support::waitFor([&] { return code->text() == "KMC2"; })) << code->text().toStdString();
    press(Qt::Key_Escape);
    EXPECT_TRUE(support::waitFor([&] { return code->text().isEmpty(); })) << code->text().toStdString();
}

TEST_F(LetGoStory, boatThatIsOutOffersItsReturnWhateverElseWasBegun) {
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        const std::string check = club.checks().open("Grebe", core::Phase::Launch, moment())->check;
        ASSERT_TRUE(club.checks().sign(check, "Petra Lund", "a swimmer drifts off", moment()));
        const std::string next = club.checks().open("Grebe", core::Phase::Launch, moment())->check;
        ASSERT_TRUE(club.checks().giveNames(next, {"Petra Lund"}, moment()));
    }
    openWindow();
    openBoat("Grebe");
    EXPECT_EQ(window().checkPage().phase(), core::Phase::Return);
}

TEST_F(LetGoStory, tripIsWrittenAfterTheSignatureToo) {
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        const std::string check = club.checks().open("Grebe", core::Phase::Launch, moment())->check;
        ASSERT_TRUE(club.checks().sign(check, "Petra Lund", "a swimmer drifts off", moment()));
    }
    openWindow();
    openBoat("Grebe");
    typeCode("PWX3VJVX6Q");
    press(Qt::Key_Return, Qt::ControlModifier);
    pressSignature();
    ASSERT_TRUE(child("signedPanel")->isVisible()) << said().toStdString();
    const std::string check = state().open.check;
    press(Qt::Key_T, Qt::ControlModifier);
    ASSERT_EQ(QApplication::focusWidget()->objectName(), "tripLeftEdit");
    child<QPushButton>("writeTripButton")->click();
    settle();
    EXPECT_TRUE(child("signedPanel")->isVisible()) << "back where it was asked for";
    ASSERT_TRUE(stored().events().operationOf(check));
    EXPECT_EQ(stored().events().operationOf(check)->launches, 1);
}
