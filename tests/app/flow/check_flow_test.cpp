#include "app/flow/check_flow.h"

#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "tests/app/flow/control_tag_cases.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace small_club {
namespace {

using app::CheckFlow;
using app::FlowStep;
using What = FlowStep::What;
using std::chrono::milliseconds;

/// A flow on Teal's launch check, shown one thing after the other.
class Flow {
public:
    explicit Flow(CheckFlow::Finish finish, app::Signature signature = {})
        : m_check(beginTealsLaunch(m_folder / "club.tholepin"))
        , m_club(core::Club::open(m_folder / "club.tholepin").value())
        , m_flow(*CheckFlow::open(m_club, "Teal", core::Phase::Launch, now(), finish, std::move(signature))) {
    }

    core::Result<FlowStep> tryShow(const std::string& code) {
        return m_flow.scan(m_club, core::ScannedText::typed(code), core::SeenBy::Typed, time());
    }
    FlowStep show(const std::string& code) { return *tryShow(code); }
    What showAll(const std::vector<std::string>& codes) {
        What last = What::Scanned;
        for (const std::string& code : codes)
            last = show(code).what;
        return last;
    }

    app::FlowTime time() const { return {now(), std::chrono::steady_clock::time_point(m_clock)}; }
    void wait(milliseconds some) { m_clock += some; }
    std::optional<double> engineRun() const {
        return m_club.checks().answer(m_check, now().today)->points.back().value;
    }
    bool isWithdrawn(const std::string& code) const {
        return m_club.kit().item(code)->state == core::ItemState::Unserviceable;
    }

    support::ScratchFolder m_folder;
    std::string m_check;
    core::Club m_club;
    CheckFlow m_flow;
    milliseconds m_clock{1000};
};

/// The command line signs at once; the window asks first, so there the tag for finishing is shown twice.
class ControlTagCases : public testing::TestWithParam<ControlTagCase> {
protected:
    void expectAs(CheckFlow::Finish finish) {
        Flow flow(finish);
        for (const std::string& code : GetParam().shown) {
            const bool isTwice = code == finishTag && finish == CheckFlow::Finish::AsksFirst;
            FlowStep step = flow.show(code);
            if (isTwice) step = flow.show(code);
            if (step.what == What::SignatureGiven)
                step = *flow.m_flow.sign(flow.m_club, {"Ada Thorne", {}}, now());
            if (step.isLast()) break;
        }
        expectCame(flow.m_club, flow.m_check, GetParam());
    }
};

TEST_P(ControlTagCases, whereTheFinishTagSignsAtOnce) {
    expectAs(CheckFlow::Finish::SignsAtOnce);
}

TEST_P(ControlTagCases, whereTheFinishTagAsksFirst) {
    expectAs(CheckFlow::Finish::AsksFirst);
}

INSTANTIATE_TEST_SUITE_P(Shown, ControlTagCases, testing::ValuesIn(controlTagCases()), nameOfCase);

/// A check, by what was shown in it so far, and what each control tag comes to then.
struct StateCase {
    const char* state;
    std::vector<std::string> shown;
    What finish, undo, damaged, clock;
};

std::vector<StateCase> stateCases() {
    std::vector<std::string> whole = wholeKit();
    return {
        {"nothing shown",
         {},
         What::ReasonWanted,
         What::TookBack,
         What::NothingToWithdraw,
         What::ClockStarted},
        {"an item shown", {knife}, What::ReasonWanted, What::TookBack, What::Withdrawn, What::ClockStarted},
        {"an item shown twice",
         {knife, knife},
         What::ReasonWanted,
         What::TookBack,
         What::Withdrawn,
         What::ClockStarted},
        {"an item taken back",
         {paddle1, knife, undoTag},
         What::ReasonWanted,
         What::TookBack,
         What::Withdrawn,
         What::ClockStarted},
        {"the only item taken back",
         {knife, undoTag},
         What::ReasonWanted,
         What::TookBack,
         What::NothingToWithdraw,
         What::ClockStarted},
        {"an item withdrawn",
         {knife, damagedTag},
         What::ReasonWanted,
         What::TookBack,
         What::Withdrawn,
         What::ClockStarted},
        {"an unknown tag shown",
         {knife, unknownTag},
         What::ReasonWanted,
         What::TookBack,
         What::NothingToWithdraw,
         What::ClockStarted},
        {"the clock running",
         {knife, clockTag},
         What::ReasonWanted,
         What::TookBack,
         What::Withdrawn,
         What::ClockStopped},
        {"every timed point done",
         {clockTag, clockTag},
         What::ReasonWanted,
         What::TookBack,
         What::NothingToWithdraw,
         What::NoTimedPoint},
        {"complete", whole, What::Signed, What::TookBack, What::Withdrawn, What::ClockStarted},
    };
}

TEST(CheckFlow, everyControlTagInEveryState) {
    for (const StateCase& each : stateCases()) {
        const std::pair<std::string, What> tags[]{
            {finishTag, each.finish}, {undoTag, each.undo},          {damagedTag, each.damaged},
            {clockTag, each.clock},   {putAsideTag, What::PutAside}, {nextBoatTag, What::NextBoat},
        };
        for (const auto& [tag, expected] : tags) {
            Flow flow(CheckFlow::Finish::SignsAtOnce);
            flow.showAll(each.shown);
            EXPECT_EQ(flow.show(tag).what, expected) << each.state << ", then " << tag;
        }
    }
}

TEST(CheckFlow, aSignedCheckTakesNothingMore) {
    Flow flow(CheckFlow::Finish::SignsAtOnce);
    flow.showAll(wholeKit());
    const FlowStep signedOff = flow.show(finishTag);
    ASSERT_EQ(signedOff.what, What::Signed);
    EXPECT_EQ(signedOff.signedCheck->by, "Ada Thorne");
    EXPECT_TRUE(signedOff.isLast());
    for (const std::string& code : {knife, undoTag, damagedTag, finishTag})
        EXPECT_FALSE(flow.tryShow(code)) << code;
    EXPECT_FALSE(flow.isWithdrawn(radio));
}

TEST(CheckFlow, finishAtOnceSignsByWhoWasToSignAndNotByTheDriver) {
    Flow flow(CheckFlow::Finish::SignsAtOnce, {"Bo Lind", {}});
    flow.showAll(wholeKit());
    EXPECT_EQ(flow.show(finishTag).signedCheck->by, "Bo Lind");
}

TEST(CheckFlow, finishAtOnceOfAnIncompleteLaunchSignsWithTheReasonThatWasGiven) {
    Flow flow(CheckFlow::Finish::SignsAtOnce, {{}, "two swimmers drift off"});
    const FlowStep step = flow.show(finishTag);
    ASSERT_EQ(step.what, What::Signed);
    EXPECT_EQ(step.signedCheck->urgent, "two swimmers drift off");
}

TEST(CheckFlow, finishOfAnIncompleteLaunchSaysWhyNothingIsSigned) {
    Flow flow(CheckFlow::Finish::SignsAtOnce);
    const FlowStep step = flow.show(finishTag);
    EXPECT_EQ(step.what, What::ReasonWanted);
    ASSERT_TRUE(step.why);
    EXPECT_EQ(step.why->kind(), core::ErrorKind::NotAllowed);
    EXPECT_FALSE(step.isLast());
    flow.showAll(wholeKit()); // it goes on, and then it is complete
    EXPECT_EQ(flow.show(finishTag).what, What::Signed);
}

TEST(CheckFlow, finishWithNobodyNamedSignsNothing) {
    Flow flow(CheckFlow::Finish::SignsAtOnce);
    CheckFlow coot =
        *CheckFlow::open(flow.m_club, "Coot", core::Phase::Launch, now(), CheckFlow::Finish::SignsAtOnce);
    const auto show = [&](const std::string& code) {
        return coot.scan(flow.m_club, core::ScannedText::typed(code), core::SeenBy::Typed, flow.time())->what;
    };
    EXPECT_EQ(show(finishTag), What::NobodyToSign);
    EXPECT_EQ(show(adaTag), What::Scanned);
    EXPECT_EQ(show(finishTag), What::ReasonWanted) << "somebody is aboard now, and nothing was found yet";
}

TEST(CheckFlow, theFinishTagAsksFirstAndShownAgainGivesTheSignature) {
    Flow flow(CheckFlow::Finish::AsksFirst);
    flow.showAll(wholeKit());
    EXPECT_EQ(flow.show(finishTag).what, What::SignatureAsked);
    EXPECT_EQ(flow.show(finishTag).what, What::SignatureGiven);
    EXPECT_TRUE(flow.m_club.checks().unfinished().size() == 1) << "the caller signs";
}

TEST(CheckFlow, aPersonsTagWhileTheSignatureIsAskedForNamesWhoSigns) {
    Flow flow(CheckFlow::Finish::AsksFirst);
    flow.show(finishTag);
    const FlowStep step = flow.show(boTag);
    EXPECT_EQ(step.what, What::SignerNamed);
    EXPECT_EQ(step.name, "Bo Lind");
    EXPECT_EQ(flow.show("PEMD8SSZYY").what, What::SignerUnknown);
    flow.m_flow.setSignatureAsked(false);
    EXPECT_EQ(flow.show(boTag).what, What::Scanned) << "aboard already";
}

TEST(CheckFlow, whatIsShownWhileTheSignatureIsAskedForStillCounts) {
    Flow flow(CheckFlow::Finish::AsksFirst);
    flow.show(finishTag);
    EXPECT_EQ(flow.show(knife).scan.what, core::Scanned::What::NewItem);
    EXPECT_EQ(flow.show(undoTag).what, What::TookBack);
    EXPECT_EQ(flow.show(finishTag).what, What::SignatureGiven) << "it is still asked for";
}

TEST(CheckFlow, whatIsTakenBackByItsLineIsNotWithdrawn) {
    Flow flow(CheckFlow::Finish::AsksFirst);
    flow.showAll({paddle1, knife});
    ASSERT_TRUE(flow.m_flow.takeBack(flow.m_club, knife, now()));
    EXPECT_EQ(flow.show(damagedTag).what, What::Withdrawn) << "the newest that stands";
    EXPECT_FALSE(flow.isWithdrawn(knife));
    EXPECT_TRUE(flow.isWithdrawn(paddle1));
    ASSERT_TRUE(flow.m_flow.takeBack(flow.m_club, paddle1, now()));
    EXPECT_EQ(flow.show(damagedTag).what, What::NothingToWithdraw) << "nothing stands any more";
}

TEST(CheckFlow, anUndoThatFailsLeavesWhatDamagedMeans) {
    Flow flow(CheckFlow::Finish::AsksFirst);
    flow.show(knife);
    EXPECT_FALSE(flow.m_flow.takeBack(flow.m_club, paddle1, now())) << "it was not seen";
    EXPECT_EQ(flow.m_flow.lastItem(), knife);
}

TEST(CheckFlow, timesThePointByItsOwnClockAndNotByTheRecords) {
    Flow flow(CheckFlow::Finish::AsksFirst);
    const FlowStep started = flow.show(clockTag);
    ASSERT_EQ(started.what, What::ClockStarted);
    EXPECT_EQ(started.name, "engine run");
    EXPECT_TRUE(flow.m_flow.isClockRunning());
    flow.wait(milliseconds(6500));
    EXPECT_EQ(flow.engineRun(), std::nullopt) << "nothing is recorded before it stops";
    EXPECT_EQ(flow.show(clockTag).name, "engine run");
    EXPECT_FALSE(flow.m_flow.isClockRunning());
    EXPECT_DOUBLE_EQ(*flow.engineRun(), 6.5);
}

TEST(CheckFlow, aPointsClockThatIsPressedAgainStops) {
    Flow flow(CheckFlow::Finish::AsksFirst);
    EXPECT_EQ(flow.m_flow.turnClockOf(flow.m_club, "engine run", flow.time())->what, What::ClockStarted);
    flow.wait(milliseconds(12000));
    EXPECT_EQ(flow.m_flow.turnClockOf(flow.m_club, "engine run", flow.time())->what, What::ClockStopped);
    EXPECT_DOUBLE_EQ(*flow.engineRun(), 12);
    EXPECT_EQ(flow.m_flow.turnClockOf(flow.m_club, "engine run", flow.time())->what, What::ClockStarted)
        << "it may be run once more, by its line";
}

TEST(CheckFlow, isGoneOnWithByAnotherFlow) {
    Flow flow(CheckFlow::Finish::AsksFirst);
    flow.show(knife);
    EXPECT_EQ(flow.show(putAsideTag).what, What::PutAside);
    CheckFlow later =
        *CheckFlow::open(flow.m_club, "Teal", core::Phase::Launch, now(), CheckFlow::Finish::AsksFirst);
    EXPECT_TRUE(later.check().resumed);
    EXPECT_EQ(later.check().check, flow.m_check);
    const auto show = [&](const std::string& code) {
        return *later.scan(flow.m_club, core::ScannedText::typed(code), core::SeenBy::Typed, flow.time());
    };
    EXPECT_EQ(show(damagedTag).what, What::NothingToWithdraw) << "nobody knows what is in hand now";
    EXPECT_EQ(show(knife).scan.what, core::Scanned::What::SeenBefore);
    EXPECT_EQ(show(damagedTag).what, What::Withdrawn);
}

TEST(CheckFlow, aStocktakeIsOpenedAtItsPlace) {
    Flow flow(CheckFlow::Finish::AsksFirst);
    const auto shed =
        CheckFlow::open(flow.m_club, "shed", core::Phase::Stocktake, now(), CheckFlow::Finish::AsksFirst);
    ASSERT_TRUE(shed);
    EXPECT_EQ(shed->check().location.name, "Shed");
    EXPECT_FALSE(
        CheckFlow::open(flow.m_club, "Attic", core::Phase::Stocktake, now(), CheckFlow::Finish::AsksFirst));
}

} // namespace
} // namespace small_club
