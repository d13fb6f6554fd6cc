#include "core/base/error_code.h"
#include "core/club/club_answers.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_record.h"
#include "tests/core/club/small_club.h"

#include <gmock/gmock.h>

namespace {

using core::ActKind;
using support::SmallClub;

/// A check of Petrel in which something is done and taken back.
struct Undoing : testing::Test {
    static constexpr auto knife = "KGFB6J8WF9";
    static constexpr auto paddle = "K80NSC1FX4";

    core::Undone undo() { return *small.club.checks().undo(check, "taken back by Bram Oke", small.now); }
    core::ItemState stateOf(const char* code) { return small.club.kit().item(code)->state; }
    core::CheckAnswer answer() { return *small.club.checks().answer(check, small.now.today); }
    std::vector<core::LogEntry> log() { return *small.club.log().entries(); }
    void withdraw(const char* code) {
        ASSERT_TRUE(small.club.checks().withdraw(check, code, "loose grip", small.now));
    }
    void look(bool passed, int daysAgo) {
        core::ServiceOrder order{.rule = "yearly look", .day = small.now.today.plusDays(-daysAgo)};
        order.by = "Bram Oke";
        order.passed = passed;
        order.scans = {knife};
        ASSERT_TRUE(small.club.kit().recordService(order, small.now));
    }
    void beginReturn() {
        small.scanAll(check);
        ASSERT_TRUE(small.club.checks().sign(check, "Bram Oke", "", small.now));
        check = small.open(core::Phase::Return);
    }
    core::Outcome tell(const core::Operation& trip) {
        return small.club.events().recordOperation(check, trip, small.now);
    }
    std::vector<core::Use> useOf(const char* code) { return small.club.kit().itemRecord(code)->use; }
    std::string historyOf(const char* subject) {
        std::string kinds;
        const auto history = small.club.answers().history(subject);
        for (const core::HistoryLine& line : *history)
            kinds += line.kind + ' ';
        return kinds;
    }

    SmallClub small;
    std::string check = small.open();
};

/// In the order in which they were done: a sighting, names, a value, an event and damage.
TEST_F(Undoing, takesBackTheNewestActWhateverItWas) {
    small.scan(check, knife);
    ASSERT_TRUE(small.club.checks().giveNames(check, {"Bram Oke"}, small.now));
    ASSERT_TRUE(small.club.checks().recordPoint(check, "bow chamber", 20, small.now));
    ASSERT_TRUE(small.club.events().fileUnder(check, "Lake festival", small.now));
    ASSERT_TRUE(small.club.checks().withdraw(check, knife, "loose grip", small.now));

    const core::Undone damage = undo();
    EXPECT_EQ(damage.act.kind, ActKind::Damage);
    EXPECT_EQ(damage.act.item.id, knife);
    EXPECT_EQ(damage.act.name, "knife");
    ASSERT_TRUE(damage.next);
    EXPECT_EQ(damage.next->kind, ActKind::Event);
    EXPECT_EQ(damage.next->name, "Lake festival");
    EXPECT_EQ(stateOf(knife), core::ItemState::Serviceable);

    EXPECT_EQ(undo().act.kind, ActKind::Event);
    EXPECT_THAT(small.club.events().names(), testing::IsEmpty());
    EXPECT_FALSE(small.club.events().tally("Lake festival"));

    EXPECT_EQ(answer().points.front().value, 20);
    EXPECT_EQ(undo().act.kind, ActKind::Point);
    EXPECT_EQ(answer().points.front().value, std::nullopt);

    const core::Undone names = undo();
    EXPECT_EQ(names.act.kind, ActKind::Names);
    EXPECT_THAT(names.act.people, testing::ElementsAre("Bram Oke"));
    EXPECT_THAT(small.club.checks().namesOf(check), testing::IsEmpty());

    const core::Undone sighting = undo();
    EXPECT_EQ(sighting.act.kind, ActKind::Sighting);
    EXPECT_FALSE(sighting.next);
    EXPECT_FALSE(small.club.checks().undo(check, "taken back", small.now));
    EXPECT_THAT(small.club.record().verify(false)->problems, testing::IsEmpty());
}

TEST_F(Undoing, whatStoodBeforeStandsAgain) {
    ASSERT_TRUE(small.club.checks().giveNames(check, {"Bram Oke"}, small.now));
    ASSERT_TRUE(small.club.checks().giveNames(check, {"Odalys Finch", "Bram Oke"}, small.now));
    ASSERT_TRUE(small.club.checks().recordPoint(check, "bow chamber", 19, small.now));
    ASSERT_TRUE(small.club.checks().recordPoint(check, "bow chamber", 25, small.now));
    undo();
    EXPECT_EQ(answer().points.front().value, 19);
    undo();
    undo();
    EXPECT_THAT(small.club.checks().namesOf(check), testing::ElementsAre("Bram Oke"));
}

TEST_F(Undoing, damageTakenBackClosesItsLogEntryAndOnlyThat) {
    ASSERT_TRUE(small.club.log().add(knife, "rust on the blade", core::Severity::Remark, {}, small.now));
    ASSERT_TRUE(small.club.checks().withdraw(check, knife, "loose grip", small.now));
    ASSERT_TRUE(small.club.checks().withdraw(check, paddle, "loose grip", small.now));
    undo();
    for (const core::LogEntry& entry : log()) {
        const bool isTakenBack = entry.item.id == paddle;
        EXPECT_EQ(entry.closed.has_value(), isTakenBack) << entry.text;
        EXPECT_EQ(entry.closing, isTakenBack ? "taken back by Bram Oke" : "") << entry.text;
    }
    EXPECT_EQ(log().size(), 3u) << "it stays in the record";
    EXPECT_EQ(stateOf(knife), core::ItemState::Unserviceable) << "the other damage stands";
    EXPECT_EQ(stateOf(paddle), core::ItemState::Serviceable);
}

TEST_F(Undoing, damageOfWhatWasMissingMakesItMissingAgain) {
    small.import("items.csv", "code,state,since\nKGFB6J8WF9,missing,2026-03-01\n");
    ASSERT_EQ(stateOf(knife), core::ItemState::Missing);
    ASSERT_TRUE(small.club.checks().withdraw(check, knife, "found broken", small.now));
    EXPECT_EQ(stateOf(knife), core::ItemState::Unserviceable);
    undo();
    EXPECT_EQ(stateOf(knife), core::ItemState::Missing);
    EXPECT_EQ(small.club.kit().item(knife)->since, core::CalendarDay::parse("2026-03-01"));
}

TEST_F(Undoing, aLaterReleaseIsLeftAlone) {
    ASSERT_TRUE(small.club.checks().withdraw(check, knife, "loose grip", small.now));
    ASSERT_TRUE(small.club.kit().release(knife, "Bram Oke", small.now));
    ASSERT_TRUE(small.club.kit().writeOff(knife, "worn", "Bram Oke", small.now));
    undo();
    EXPECT_EQ(stateOf(knife), core::ItemState::WrittenOff);
}

TEST_F(Undoing, aTripTakenBackCountsNoHours) {
    small.scanAll(check);
    ASSERT_TRUE(small.club.checks().sign(check, "Bram Oke", "", small.now));
    const auto back = small.open(core::Phase::Return);
    const auto use = [&] { return small.club.kit().itemRecord(knife)->use; };
    ASSERT_TRUE(small.club.events().recordOperation(back, {.hours = 2, .launches = 1}, small.now));
    ASSERT_TRUE(small.club.events().recordOperation(back, {.hours = 3, .launches = 2}, small.now));
    ASSERT_EQ(use().front().hours, 3);
    ASSERT_TRUE(small.club.checks().undo(back, {}, small.now));
    ASSERT_EQ(use().size(), 1u);
    EXPECT_EQ(use().front().hours, 2);
    EXPECT_EQ(use().front().launches, 1);
    EXPECT_EQ(small.club.events().operationOf(back)->hours, 2);
    ASSERT_TRUE(small.club.checks().undo(back, {}, small.now));
    EXPECT_THAT(use(), testing::IsEmpty()) << "never told, not told to be nothing";
    EXPECT_EQ(small.club.events().operationOf(back), std::nullopt);
    EXPECT_THAT(small.club.record().verify(false)->problems, testing::IsEmpty());
}

TEST_F(Undoing, aTripTakenBackLeavesTheDaysOtherUse) {
    small.import("use.csv", "code,day,hours,launches\nKGFB6J8WF9,2026-03-14,5,4\n");
    small.scanAll(check);
    ASSERT_TRUE(small.club.checks().sign(check, "Bram Oke", "", small.now));
    const auto back = small.open(core::Phase::Return);
    ASSERT_TRUE(small.club.events().recordOperation(back, {.hours = 2, .launches = 1}, small.now));
    ASSERT_EQ(small.club.kit().itemRecord(knife)->use.front().hours, 7);
    ASSERT_TRUE(small.club.checks().undo(back, {}, small.now));
    EXPECT_EQ(small.club.kit().itemRecord(knife)->use.front().hours, 5);
    EXPECT_EQ(small.club.kit().itemRecord(knife)->use.front().launches, 4);
}

/// docs/rules.md, "A failed record": whatever else held the item when it was made.
TEST_F(Undoing, whatFailedWhileADamageHeldItIsUnserviceableStill) {
    small.import("life_rules.csv", "kit_type,rule,kind,n\nknife,yearly look,service_every,12\n");
    small.import("items.csv", "code,state\nKGFB6J8WF9,serviceable\n");
    withdraw(knife);
    look(false, 0);
    undo();
    EXPECT_EQ(stateOf(knife), core::ItemState::Unserviceable);
    EXPECT_TRUE(small.club.kit().release(knife, "Bram Oke", small.now));
    EXPECT_EQ(stateOf(knife), core::ItemState::Serviceable);
}

TEST_F(Undoing, whatPassedWhileADamageHeldItIsServiceable) {
    small.import("life_rules.csv", "kit_type,rule,kind,n\nknife,yearly look,service_every,12\n");
    look(false, 2);
    withdraw(knife);
    look(true, 1);
    ASSERT_EQ(stateOf(knife), core::ItemState::Unserviceable) << "for the damage";
    undo();
    EXPECT_EQ(stateOf(knife), core::ItemState::Serviceable);
}

TEST_F(Undoing, aDamageOfWhatWasLostAndFoundOnTheBenchLeavesItServiceable) {
    small.import("life_rules.csv", "kit_type,rule,kind,n\nknife,yearly look,service_every,12\n");
    withdraw(knife);
    small.import("items.csv", "code,state\nKGFB6J8WF9,missing\n");
    look(true, 0);
    ASSERT_EQ(stateOf(knife), core::ItemState::Unserviceable) << "for the damage";
    undo();
    EXPECT_EQ(stateOf(knife), core::ItemState::Serviceable);
}

TEST_F(Undoing, anEntryThatWasClosedMeanwhileIsNotMistakenForAnother) {
    withdraw(knife);
    withdraw(knife);
    for (const core::LogEntry& entry : log())
        if (entry.text != "loose grip") {
            ASSERT_TRUE(small.club.log().close(entry.id, "sharpened", "Bram Oke", small.now));
        }
    undo();
    EXPECT_EQ(stateOf(knife), core::ItemState::Unserviceable) << "the first damage stands";
    for (const core::LogEntry& entry : log())
        EXPECT_EQ(entry.closed.has_value(), entry.text != "loose grip") << "and so does its entry";
}

TEST_F(Undoing, damageOfWhatWasWrittenOffAndReinstatedIsTakenBack) {
    withdraw(knife);
    ASSERT_TRUE(small.club.kit().writeOff(knife, "damaged", "Bram Oke", small.now));
    ASSERT_TRUE(small.club.kit().reinstate(knife, "was not broken", "Bram Oke", small.now));
    ASSERT_EQ(stateOf(knife), core::ItemState::Unserviceable);
    undo();
    EXPECT_EQ(stateOf(knife), core::ItemState::Serviceable);
}

TEST_F(Undoing, aTripTakenBackIsTakenFromWhatItWasCountedTo) {
    beginReturn();
    ASSERT_TRUE(tell({.hours = 3, .launches = 1}));
    const std::string back = check;
    const auto second = small.open(); // a second call out, with the knife alone
    small.scan(second, knife);
    ASSERT_TRUE(small.club.checks().sign(second, "Bram Oke", "second call out", small.now));
    check = back;
    undo();
    EXPECT_THAT(useOf(knife), testing::IsEmpty());
    EXPECT_THAT(useOf(paddle), testing::IsEmpty());
}

TEST_F(Undoing, useThatWasWrittenByHandSinceStays) {
    beginReturn();
    ASSERT_TRUE(tell({.hours = 3, .launches = 1}));
    small.import("use.csv", "code,day,hours,launches\nKGFB6J8WF9,2026-03-14,1,1\n");
    undo();
    ASSERT_EQ(useOf(knife).size(), 1u);
    EXPECT_EQ(useOf(knife).front().hours, 1);
    EXPECT_THAT(useOf(paddle), testing::IsEmpty());
}

TEST_F(Undoing, aTripTakenBackStepByStepLeavesWhatWasWrittenByHand) {
    beginReturn();
    ASSERT_TRUE(tell({.hours = 2, .launches = 1}));
    small.import("use.csv", "code,day,hours,launches\nKGFB6J8WF9,2026-03-14,10,4\n");
    ASSERT_TRUE(tell({.hours = 3, .launches = 1}));
    ASSERT_EQ(useOf(knife).front().hours, 11);
    undo();
    undo();
    EXPECT_EQ(useOf(knife).front().hours, 10);
    EXPECT_EQ(useOf(knife).front().launches, 4);
    EXPECT_THAT(useOf(paddle), testing::IsEmpty());
}

TEST_F(Undoing, lessThanWasCountedIsTakenBackAsItWasCounted) {
    beginReturn();
    ASSERT_TRUE(tell({.hours = 2, .launches = 1}));
    small.import("use.csv", "code,day,hours,launches\nKGFB6J8WF9,2026-03-14,1,1\n");
    ASSERT_TRUE(tell({.hours = 0.5, .launches = 1})); // less by more than is there: none is left
    ASSERT_EQ(useOf(knife).front().hours, 0);
    undo();
    EXPECT_EQ(useOf(knife).front().hours, 1);
}

TEST_F(Undoing, aTripToldAndTakenBackTwiceLeavesNothing) {
    beginReturn();
    for (int time = 0; time < 2; ++time) {
        ASSERT_TRUE(tell({.hours = 2, .launches = 3}));
        undo();
        EXPECT_THAT(useOf(knife), testing::IsEmpty());
    }
    EXPECT_THAT(small.club.record().verify(true)->problems, testing::IsEmpty());
}

TEST_F(Undoing, whatIsWrittenOffIsNotDamagedToo) {
    ASSERT_TRUE(small.club.kit().writeOff(knife, "lost", "Bram Oke", small.now));
    const auto refused = small.club.checks().withdraw(check, knife, "loose grip", small.now);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, core::ErrorCode::WrittenOffAlready);
    EXPECT_EQ(stateOf(knife), core::ItemState::WrittenOff);
    EXPECT_THAT(log(), testing::IsEmpty());
}

TEST_F(Undoing, theSameValueOrTripAgainIsNoAct) {
    ASSERT_TRUE(small.club.checks().recordPoint(check, "bow chamber", 20, small.now));
    ASSERT_TRUE(small.club.checks().recordPoint(check, "bow chamber", 20, small.now));
    const core::Undone undone = undo();
    EXPECT_EQ(undone.act.value, 20) << "which says what is taken back";
    EXPECT_FALSE(undone.next);
    beginReturn();
    ASSERT_TRUE(tell({.hours = 3, .launches = 1}));
    ASSERT_TRUE(tell({.hours = 3, .launches = 1}));
    undo();
    EXPECT_THAT(useOf(knife), testing::IsEmpty());
}

TEST_F(Undoing, historiesTellWhatWasDoneAndThatItWasTakenBack) {
    ASSERT_TRUE(small.club.checks().giveNames(check, {"Bram Oke"}, small.now));
    ASSERT_TRUE(small.club.events().fileUnder(check, "Lake festival", small.now));
    undo();
    undo();
    EXPECT_THAT(historyOf("Petrel"), testing::AllOf(testing::HasSubstr("event-given"),
                                                    testing::HasSubstr("act-taken-back act-taken-back")));
    EXPECT_THAT(historyOf("Bram Oke"), testing::HasSubstr("names-given act-taken-back"));
    beginReturn();
    ASSERT_TRUE(tell({.hours = 3, .launches = 1}));
    undo();
    EXPECT_THAT(historyOf(knife), testing::HasSubstr("use_record use_record")) << "counted, and taken back";
}

TEST_F(Undoing, tablesMadeAnewAreTheSame) {
    small.scan(check, knife);
    ASSERT_TRUE(small.club.checks().withdraw(check, knife, "loose grip", small.now));
    undo();
    ASSERT_TRUE(small.club.checks().giveNames(check, {"Bram Oke"}, small.now));
    undo();
    EXPECT_THAT(small.club.record().verify(true)->problems, testing::IsEmpty());
    EXPECT_EQ(stateOf(knife), core::ItemState::Serviceable);
    EXPECT_THAT(small.club.checks().namesOf(check), testing::IsEmpty());
    EXPECT_EQ(undo().act.kind, ActKind::Sighting);
}

TEST_F(Undoing, theItemSeenLastIsTheNewestThatStands) {
    EXPECT_EQ(small.club.checks().itemSeenLast(check), "");
    small.scan(check, paddle);
    small.scan(check, knife);
    EXPECT_EQ(small.club.checks().itemSeenLast(check), knife);
    undo();
    EXPECT_EQ(small.club.checks().itemSeenLast(check), paddle);
    small.scan(check, small.club.kit().mintCodes(1).front());
    EXPECT_EQ(small.club.checks().itemSeenLast(check), "") << "no item of the club";
}

} // namespace
