#include "core/club/club_answers.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "tests/core/club/small_club.h"

#include <gmock/gmock.h>

namespace {

using support::SmallClub;

core::ErrorCode codeOf(const core::Outcome& outcome) {
    return outcome.error().code;
}

TEST(Discard, aCheckInWhichNothingStandsNeedsNoReason) {
    SmallClub small;
    const auto check = small.open();
    ASSERT_TRUE(small.club.checks().discard(check, "", small.now));
    const auto next = small.club.checks().open("Petrel", core::Phase::Launch, small.now);
    EXPECT_FALSE(next->resumed);
    EXPECT_NE(next->check, check);
}

TEST(Discard, whereSomethingStandsAReasonIsWanted) {
    SmallClub small;
    const auto check = small.open();
    small.scan(check, "KGFB6J8WF9");
    const auto facts = small.club.record().verify(false)->facts;
    EXPECT_EQ(codeOf(small.club.checks().discard(check, " ", small.now)), core::ErrorCode::ReasonTooShort);
    EXPECT_EQ(codeOf(small.club.checks().discard(check, "KGFB6J8WF9", small.now)),
              core::ErrorCode::ReasonIsTag);
    EXPECT_EQ(small.club.record().verify(false)->facts, facts) << "nothing changed";
    EXPECT_TRUE(small.club.checks().discard(check, "nobody goes", small.now));
}

TEST(Discard, whatWasSeenWasSeenAndNothingIsMarkedMissing) {
    SmallClub small;
    small.import("items.csv", "code,state,since\nKGFB6J8WF9,missing,2026-03-01\n");
    const auto check = small.open();
    small.scanAll(check);
    ASSERT_TRUE(small.club.checks().sign(check, "Bram Oke", "", small.now));
    const auto back = small.open(core::Phase::Return);
    small.scan(back, "K80NSC1FX4");
    ASSERT_TRUE(small.club.checks().discard(back, "wrong boat", small.now));
    EXPECT_EQ(small.club.kit().item("KGFB6J8WF9")->state, core::ItemState::Serviceable)
        << "seen at the launch";
    EXPECT_EQ(small.club.kit().item("K6JYGNZ376")->state, core::ItemState::Serviceable)
        << "not yet asked for";
    EXPECT_EQ(small.club.answers().boatConditions(small.now.today).back().kind,
              core::BoatCondition::Kind::Out);
}

TEST(Discard, aClosedCheckTakesNothingMore) {
    SmallClub small;
    const auto check = small.open();
    small.scan(check, "KGFB6J8WF9");
    ASSERT_TRUE(small.club.checks().discard(check, "nobody goes", small.now));
    EXPECT_EQ(small.club.checks().sign(check, "Bram Oke", "drill", small.now).error().code,
              core::ErrorCode::CheckClosedUnsigned);
    EXPECT_FALSE(small.club.checks().undo(check, {}, small.now));
    EXPECT_FALSE(small.club.checks().discard(check, "once more", small.now));
    EXPECT_THAT(small.club.checks().unfinished(), testing::IsEmpty());
    EXPECT_FALSE(small.club.checks().unfinishedOf("Petrel", core::Phase::Launch));
    EXPECT_THAT(small.club.record().verify(true)->problems, testing::IsEmpty());
}

/// They are told with the return check that is signed, and count once.
TEST(Discard, hoursToldInItAreNotCounted) {
    SmallClub small;
    const auto launch = small.open();
    small.scanAll(launch);
    ASSERT_TRUE(small.club.checks().sign(launch, "Bram Oke", "", small.now));
    const core::Operation trip{.hours = 3, .launches = 1};
    const auto wrong = small.open(core::Phase::Return);
    ASSERT_TRUE(small.club.events().recordOperation(wrong, trip, small.now));
    ASSERT_TRUE(small.club.checks().discard(wrong, "wrong boat chosen", small.now));
    EXPECT_THAT(small.club.kit().itemRecord("KGFB6J8WF9")->use, testing::IsEmpty());
    EXPECT_EQ(codeOf(small.club.events().recordOperation(wrong, {.hours = 1, .launches = 1}, small.now)),
              core::ErrorCode::CheckClosedUnsigned);
    EXPECT_EQ(codeOf(small.club.events().fileUnder(wrong, "Patrol", small.now)),
              core::ErrorCode::CheckClosedUnsigned);
    const auto back = small.open(core::Phase::Return);
    ASSERT_TRUE(small.club.events().recordOperation(back, trip, small.now));
    ASSERT_EQ(small.club.kit().itemRecord("KGFB6J8WF9")->use.size(), 1u);
    EXPECT_EQ(small.club.kit().itemRecord("KGFB6J8WF9")->use.front().hours, 3);
}

TEST(Discard, aStocktakeIsLetGo) {
    SmallClub small;
    small.import("places.csv", "place\nShed shelf\n");
    const auto shelf = small.club.checks().openStocktake("Shed shelf", small.now)->check;
    ASSERT_TRUE(small.club.checks().discard(shelf, "", small.now));
    EXPECT_THAT(small.club.checks().unfinished(), testing::IsEmpty());
}

TEST(Discard, aSignedCheckIsNotLetGo) {
    SmallClub small;
    const auto check = small.open();
    small.scanAll(check);
    ASSERT_TRUE(small.club.checks().sign(check, "Bram Oke", "", small.now));
    EXPECT_EQ(codeOf(small.club.checks().discard(check, "nobody goes", small.now)),
              core::ErrorCode::CheckSigned);
}

TEST(LeavingACheck, inWhichNothingWasDoneLeavesNoTrace) {
    SmallClub small;
    const auto check = small.open();
    EXPECT_THAT(small.club.checks().unfinished(), testing::IsEmpty());
    small.scan(check, "KGFB6J8WF9");
    EXPECT_THAT(small.club.checks().unfinished(), testing::SizeIs(1));
    ASSERT_TRUE(small.club.checks().undo(check, {}, small.now));
    EXPECT_THAT(small.club.checks().unfinished(), testing::IsEmpty());
}

TEST(LeavingACheck, anotherDayItIsBegunAnew) {
    SmallClub small;
    const auto check = small.open();
    const auto again = small.club.checks().open("Petrel", core::Phase::Launch, small.now);
    EXPECT_EQ(again->check, check) << "the same day it is gone on with";
    const core::Moment tomorrow = small.at("2026-03-15T07:00:00Z");
    const auto next = small.club.checks().open("Petrel", core::Phase::Launch, tomorrow);
    EXPECT_FALSE(next->resumed);
    EXPECT_EQ(next->openedAt.iso(), tomorrow.at.iso());
    small.scan(next->check, "KGFB6J8WF9");
    const auto later =
        small.club.checks().open("Petrel", core::Phase::Launch, small.at("2026-03-16T07:00:00Z"));
    EXPECT_EQ(later->check, next->check) << "something stands in it";
    EXPECT_TRUE(later->resumed);
}

} // namespace
