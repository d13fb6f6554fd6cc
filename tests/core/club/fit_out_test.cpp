#include "core/answers/set_up.h"
#include "core/base/error_code.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "core/register/new_kit.h"
#include "tests/core/club/small_club.h"

#include <gmock/gmock.h>

namespace {

using core::ErrorCode;
using core::NewKit;
using support::SmallClub;
using testing::ElementsAre;
using testing::SizeIs;

std::vector<int> lacking(const core::BoatFitOut& boat) {
    std::vector<int> counts;
    for (const core::FitOutLine& each : boat.lines)
        counts.push_back(each.lacking());
    return counts;
}

// Petrel carries all seven of its list, Tern is of the same class and carries nothing (small_club.h).
TEST(FitOut, readsTheManifestAndTheKitOfTheBoat) {
    SmallClub small;
    EXPECT_THAT(lacking(*small.club.kit().fitOutOf("petrel")), ElementsAre(0, 0, 0, 0, 0, 0));
    EXPECT_THAT(lacking(*small.club.kit().fitOutOf("Tern")), ElementsAre(1, 2, 1, 1, 1, 1));
    EXPECT_EQ(small.club.kit().fitOutOf("Gull").error().code, ErrorCode::NoSuchBoat);
}

TEST(FitOut, severalKindsAreRegisteredInOne) {
    SmallClub small;
    const auto items = small.club.kit().registerAll(
        {{.kitType = "knife", .boat = "Tern", .serials = {" A-1 "}},
         {.kitType = "paddle", .boat = "Tern", .made = "2026-01", .count = 2, .serials = {"", "A-1"}}},
        "Bram Oke", small.now);
    ASSERT_TRUE(items);
    ASSERT_THAT(*items, SizeIs(2));
    EXPECT_EQ((*items)[0][0].serial, "A-1");
    EXPECT_EQ((*items)[1][0].serial, "");
    EXPECT_EQ((*items)[1][1].serial, "A-1") << "a serial of another kit type";
    EXPECT_EQ((*items)[1][1].made->text(), "2026-01");
    EXPECT_THAT(lacking(*small.club.kit().fitOutOf("Tern")), ElementsAre(0, 0, 1, 1, 1, 1));
}

TEST(FitOut, oneThatIsRefusedAndNothingIsRegistered) {
    SmallClub small;
    ASSERT_TRUE(small.club.kit().registerKit({.kitType = "radio", .serials = {"R-7"}}, {}, small.now));
    const auto facts = small.club.record().verify(false)->facts;
    const auto codeOf = [&](const std::vector<NewKit>& kinds) {
        const auto items = small.club.kit().registerAll(kinds, {}, small.now);
        EXPECT_FALSE(items);
        EXPECT_EQ(small.club.record().verify(false)->facts, facts);
        return items ? ErrorCode() : items.error().code;
    };
    const NewKit knife{.kitType = "knife", .boat = "Tern"};
    EXPECT_EQ(codeOf({knife, {.kitType = "anvil"}}), ErrorCode::NoSuchKitType);
    EXPECT_EQ(codeOf({knife, {.kitType = "radio", .serials = {"R-7"}}}), ErrorCode::SerialRegistered);
    EXPECT_EQ(codeOf({knife, {.kitType = "radio", .serials = {"1"}}, {.kitType = "Radio", .serials = {"1"}}}),
              ErrorCode::SerialTwice);
    EXPECT_EQ(codeOf({knife, {.kitType = "radio", .serials = {"1", "2"}}}), ErrorCode::MoreSerialsThanThings);
    EXPECT_TRUE(
        small.club.kit().registerAll({knife, {.kitType = "radio", .serials = {"R-8"}}}, {}, small.now));
}

TEST(SetUpOfClub, followsTheRegisterAndTheRecord) {
    SmallClub small;
    const auto today = small.now.today;
    const auto isDone = [&](core::SetUpStep step, bool arePrinted = false) {
        return small.club.answers().setUp(arePrinted, today)[static_cast<std::size_t>(step)].isDone;
    };
    using core::SetUpStep;
    EXPECT_TRUE(isDone(SetUpStep::Boats));
    EXPECT_FALSE(isDone(SetUpStep::Kit)) << "Tern carries nothing";
    EXPECT_THAT(small.club.answers().setUp(false, today)[2].lacking, ElementsAre("Tern"));
    EXPECT_FALSE(isDone(SetUpStep::Rules));
    EXPECT_FALSE(isDone(SetUpStep::Tags));
    EXPECT_TRUE(isDone(SetUpStep::Tags, true));
    EXPECT_FALSE(isDone(SetUpStep::FirstCheck));
    small.import("life_rules.csv", "kit_type,rule,kind,n,source\nknife,look,inspect_every,6,Example: ours\n");
    EXPECT_FALSE(isDone(SetUpStep::Rules));
    small.import("life_rules.csv", "kit_type,rule,source\nknife,look,the maker's manual\n");
    EXPECT_TRUE(isDone(SetUpStep::Rules));
    const std::string check = small.open();
    small.scanAll(check);
    EXPECT_TRUE(isDone(SetUpStep::Tags));
    EXPECT_FALSE(isDone(SetUpStep::FirstCheck));
    ASSERT_TRUE(small.club.checks().sign(check, "Odalys Finch", "for the test", small.now));
    EXPECT_TRUE(isDone(SetUpStep::FirstCheck));
}

TEST(SetUpOfClub, asksNothingOfWhatIsNoLongerHere) {
    SmallClub small;
    const core::CalendarDay last = small.now.today, next = last.plusDays(1);
    const auto tick = [&](core::CalendarDay today, core::SetUpStep step) {
        return small.club.answers().setUp(false, today)[static_cast<std::size_t>(step)];
    };
    ASSERT_TRUE(small.club.register_().end(core::Named::Boat, "Tern", last, {}, small.now));
    EXPECT_THAT(tick(last, core::SetUpStep::Kit).lacking, ElementsAre("Tern"));
    EXPECT_THAT(tick(next, core::SetUpStep::Kit).lacking, ElementsAre());
    EXPECT_TRUE(tick(next, core::SetUpStep::Kit).isDone);
    const int people = tick(next, core::SetUpStep::People).count;
    ASSERT_TRUE(small.club.register_().end(core::Named::Person, "Bram Oke", last, {}, small.now));
    EXPECT_EQ(tick(last, core::SetUpStep::People).count, people);
    EXPECT_EQ(tick(next, core::SetUpStep::People).count, people - 1);
}

} // namespace
