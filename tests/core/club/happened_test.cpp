#include "core/answers/item_record.h"
#include "core/answers/service_round.h"
#include "core/base/error_code.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "tests/core/club/small_club.h"

#include <gmock/gmock.h>

namespace {

using core::ErrorCode;
using testing::ElementsAre;
using testing::IsEmpty;

const char* const jacket = "K000000018";

/// With a life jacket whose gas cylinder is looked at after each inflation (common practice, no source).
class JacketClub : public support::SmallClub {
public:
    JacketClub() {
        import("kit_types.csv", "kit_type,worn\nlife jacket,yes\n");
        import("life_rules.csv", "kit_type,part,rule,kind,n,event,source\n"
                                 "life jacket,,yearly look,inspect_every,12,,s\n"
                                 "life jacket,,re-arm,after_event,,inflation,s\n"
                                 "life jacket,cylinder,new cylinder,after_event,,Inflation,s\n"
                                 "life jacket,light,look at the light,after_event,,capsize,s\n"
                                 "life jacket,,rinse,after_event,,salt water,s\n");
        import("items.csv", std::string("code,kit_type,registered\n") + jacket + ",life jacket,2025-04-01\n");
        import("parts.csv", std::string("code,part,made\n") + jacket + ",cylinder,2024-05\n");
    }
    core::Happened happened(const std::string& event, core::CalendarDay on) {
        return club.kit().happened(jacket, event, on, "Bram Oke", now).value();
    }
    core::ErrorCode refused(const std::string& code, const std::string& event, core::CalendarDay on) {
        const auto happened = club.kit().happened(code, event, on, "Bram Oke", now);
        EXPECT_FALSE(happened);
        return happened.error().code;
    }
    std::int64_t facts() { return club.record().verify(false)->facts; }
};

std::vector<std::string> rulesOf(const std::vector<core::RuleDue>& dues) {
    std::vector<std::string> rules;
    for (const core::RuleDue& due : dues)
        rules.push_back(due.rule.name + (due.due ? " " + due.due->iso() : " due without a day or not due"));
    return rules;
}

TEST(Happened, isARowOfTheRegisterAndMakesItsRulesDue) {
    JacketClub small;
    EXPECT_THAT(small.club.kit().eventsFor(jacket), ElementsAre("inflation", "salt water"))
        << "it has no light, and an event of two rules is named once";
    const auto now = small.happened("INFLATION", small.now.today);
    EXPECT_TRUE(now.isNew);
    EXPECT_EQ(now.event, "inflation");
    EXPECT_EQ(now.item.id, jacket);
    ASSERT_EQ(now.dues.size(), 2u);
    EXPECT_EQ(now.dues[0].state, core::DueState::Passed);
    EXPECT_THAT(rulesOf(small.happened("salt water", small.now.today.plusDays(-10)).dues),
                ElementsAre(testing::StartsWith("rinse")));
    EXPECT_EQ(small.club.kit().itemRecord(jacket)->happenings.size(), 2u);
    EXPECT_TRUE(small.club.record().verify(true)->problems.empty());
}

TEST(Happened, theSameEventOfADayTwiceChangesNothing) {
    JacketClub small;
    small.happened("inflation", small.now.today);
    const auto facts = small.facts();
    const auto again = small.happened("inflation", small.now.today);
    EXPECT_FALSE(again.isNew);
    EXPECT_THAT(again.dues, testing::SizeIs(2));
    EXPECT_EQ(small.facts(), facts);
    EXPECT_TRUE(small.happened("inflation", small.now.today.plusDays(-1)).isNew);
}

// It is armed again at ten and inflated once more at eleven: that counts.
TEST(Happened, whatHappensAgainAfterItWasPutRightIsDueAgain) {
    JacketClub small;
    small.happened("inflation", small.now.today);
    small.now = small.at("2026-03-14T10:00:00Z");
    small.club.kit()
        .recordService({.rule = "re-arm", .day = small.now.today, .by = "Bram Oke", .scans = {jacket}},
                       small.now)
        .value();
    const auto stateOfRearm = [&] {
        for (const core::RuleDue& due : core::dueDatesOf(
                 *small.club.kit().itemRecord(jacket), small.club.register_().kitTypes()[1], small.now.today))
            if (due.rule.name == "re-arm") return due.state;
        return core::DueState::Undated;
    };
    EXPECT_EQ(stateOfRearm(), core::DueState::Later);
    small.now = small.at("2026-03-14T11:00:00Z");
    EXPECT_TRUE(small.happened("inflation", small.now.today).isNew);
    EXPECT_EQ(stateOfRearm(), core::DueState::Passed);
    EXPECT_TRUE(small.club.record().verify(true)->problems.empty());
}

TEST(Happened, whatNoRuleWaitsForIsRefusedAndTheKnownOnesAreNamed) {
    JacketClub small;
    const auto facts = small.facts();
    const auto unknown = small.club.kit().happened(jacket, "capsize", small.now.today, "", small.now);
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error().code, ErrorCode::NoRuleWaitsFor);
    EXPECT_EQ(unknown.error().kind(), core::ErrorKind::BadInput);
    EXPECT_EQ(unknown.error().arguments.back(), "inflation, salt water");
    EXPECT_EQ(small.refused("KGFB6J8WF9", "inflation", small.now.today), ErrorCode::NoRuleWaits);
    EXPECT_EQ(small.refused("K00000009T", "inflation", small.now.today), ErrorCode::NoSuchItem);
    EXPECT_EQ(small.refused(jacket, "inflation", small.now.today.plusDays(1)), ErrorCode::HappeningInFuture);
    EXPECT_THAT(small.club.kit().eventsFor("KGFB6J8WF9"), IsEmpty());
    EXPECT_EQ(small.facts(), facts);
}

} // namespace
