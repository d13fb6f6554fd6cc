#include "app/gui/gear/office/gear_office.h"
#include "app/gui/gear/ready/ready_page.h"
#include "core/answers/item_record.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_plans.h"
#include "tests/app/gui/keys_alone.h"

namespace {

class KeysAlone : public support::KeysAlone {
protected:
    void openCheck(const QString& boat) {
        hand().press("boatStrip " + boat);
        ASSERT_TRUE(support::waitFor(
            [&] { return window().checkPage().session() && window().checkPage().session()->state(); }));
    }
};

const QString tube = "KMC20GKEK9"; // the demo's, of Grebe

} // namespace

TEST_F(KeysAlone, aThingIsTakenBackAnotherWithdrawnAndTheCheckClosedUnsigned) {
    begin();
    openCheck("Grebe");
    hand().scan(tube);
    settle();
    ASSERT_EQ(markOf(tube), app::Mark::Found);
    hand().pressLine("checkList", "item " + tube);
    hand().press("takeBackButton");
    settle();
    EXPECT_EQ(markOf(tube), std::nullopt);
    hand().scan(tube);
    settle();
    hand().pressLine("checkList", "item " + tube);
    hand().fill("damageEdit", "Sash torn");
    hand().press("withdrawButton");
    settle();
    EXPECT_EQ(markOf(tube), app::Mark::Look);
    hand().press("letGoButton");
    hand().fill("closeUnsignedReasonEdit", "the boat stays ashore");
    const int shown = boardsShown();
    hand().press("closeUnsignedButton");
    waitForBoard(shown);
    EXPECT_TRUE(stored().checks().unfinished().empty());
}

TEST_F(KeysAlone, anUrgentLaunchItsTripAndItsReturnAreSigned) {
    begin();
    openCheck("Grebe");
    hand().choose("driverBox", "Petra Lund");
    settle();
    hand().press("signButton");
    hand().fill("urgentReasonEdit", "two swimmers drift off");
    hand().press("signNowButton");
    waitOutADoubleClick();
    hand().press("signNowButton"); // nobody has a life jacket: asked once more
    const int shown = boardsShown();
    hand().press("signedDoneButton");
    waitForBoard(shown);
    EXPECT_EQ(storedCondition("Grebe").kind, core::BoatCondition::Kind::Out);
    openCheck("Grebe");
    hand().press("tripButton");
    hand().fill("tripFuelEdit", "half used");
    hand().press("writeTripButton");
    settle();
    EXPECT_TRUE(comesTrue([&] { return window().checkPage().session()->state()->trip.has_value(); }));
    hand().press("signButton");
    hand().choose("signedByBox", "Petra Lund");
    hand().press("signNowButton");
    hand().find("signedDoneButton");
    EXPECT_EQ(storedCondition("Grebe").kind, core::BoatCondition::Kind::NotReady);
}

TEST_F(KeysAlone, boatsAreMadeReadyMoveByMove) {
    begin();
    hand().showPage("Make ready", "Alt+7");
    hand().press("readyPlanButton");
    auto* page = qobject_cast<app::ReadyPage*>(window().gearOffice().page("ready"));
    ASSERT_NE(page, nullptr);
    ASSERT_TRUE(comesTrue([&] { return page->moves().total() > 1; }));
    const auto plan = stored().plans().makeReady({}, today());
    hand().fill("readyCodeEdit", QString::fromStdString(plan->moves.front().item.tag));
    hand().key(Qt::Key_Return);
    EXPECT_TRUE(comesTrue([&] { return page->moves().done() == 1; }));
    hand().pressLine("readyMoveList", QString::fromStdString(plan->moves.back().item.id));
    EXPECT_TRUE(comesTrue([&] { return page->moves().done() == 2; }));
}

TEST_F(KeysAlone, aRowOfTheRegisterIsChangedRenamedAndEnded) {
    begin();
    hand().showPage("Register", "Ctrl+Alt+3");
    hand().choose("officerBox", "Joss Iveny");
    hand().choose("registerSheetBox", "boats");
    hand().chooseRow("registerTable", "Bittern");
    hand().key(Qt::Key_Return);
    hand().fill("cell_note", "second out");
    hand().press("registerSaveButton");
    ASSERT_TRUE(comesTrue([&] { return stored().register_().boat("Bittern")->note == "second out"; }));
    hand().chooseRow("registerTable", "Bittern");
    hand().key(Qt::Key_Return);
    hand().press("registerRenameButton");
    hand().fill("renameNameEdit", "Heron");
    hand().press("renameButton");
    ASSERT_TRUE(comesTrue([&] { return static_cast<bool>(stored().register_().boat("Heron")); }));
    ASSERT_TRUE(comesTrue([&] { return child<QLabel>("registerSaidLabel")->text().contains("Heron"); }));
    hand().press("registerNewButton");
    hand().fill("cell_boat", "Tern");
    hand().fill("cell_boat_class", "skiff");
    hand().press("registerSaveButton");
    ASSERT_TRUE(comesTrue([&] { return static_cast<bool>(stored().register_().boat("Tern")); }));
    hand().chooseRow("registerTable", "Tern");
    hand().key(Qt::Key_Return);
    hand().press("registerEndButton");
    hand().fill("endDayEdit", "2026-03-13");
    hand().press("endButton");
    EXPECT_TRUE(comesTrue([&] { return stored().register_().boat("Tern")->until.has_value(); }))
        << child<QLabel>("endSaidLabel")->text().toStdString();
}
