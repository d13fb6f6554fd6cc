#include "core/answers/event_tally.h"
#include "core/answers/evidence.h"
#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "core/register/operation.h"
#include "tests/core/club/small_club.h"
#include "tests/core/register/item_names.h"

#include <gmock/gmock.h>

namespace {

using core::Phase;
using support::SmallClub;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

/// Two boats, each with its own knife and paddle, on one training day.
class TwoBoats : public SmallClub {
public:
    TwoBoats() { import("items.csv", "code,kit_type,boat\nK000000018,knife,Tern\nK000000026,paddle,Tern\n"); }
    std::string check(const std::string& boat, Phase phase, const std::vector<std::string>& codes,
                      const std::string& at) {
        now = this->at(at);
        const std::string id = open(phase, boat);
        EXPECT_TRUE(club.checks().giveNames(id, {boat == "Tern" ? "Bram Oke" : "Odalys Finch"}, now));
        for (const std::string& code : codes)
            scan(id, code);
        EXPECT_TRUE(club.events().fileUnder(id, "Spring training", now));
        EXPECT_TRUE(club.checks().sign(id, "Bram Oke", "training", now));
        return id;
    }
};

TEST(EventTally, tellsWhatWentOutAndCameBackOnWhichBoat) {
    TwoBoats small;
    small.check("Petrel", Phase::Launch, {"KGFB6J8WF9", "K80NSC1FX4"}, "2026-03-14T08:00:00Z");
    small.check("Tern", Phase::Launch, {"K000000018", "K000000026"}, "2026-03-14T08:05:00Z");
    small.check("Petrel", Phase::Return, {"K000000018", "K80NSC1FX4"}, "2026-03-14T11:00:00Z");
    small.check("Tern", Phase::Return, {"KGFB6J8WF9"}, "2026-03-14T11:10:00Z");
    const auto tally = *small.club.events().tally("SPRING training");
    ASSERT_THAT(tally.boats, SizeIs(2));
    EXPECT_EQ(tally.boats[0].boat, "Petrel");
    EXPECT_THAT(tally.boats[0].launchedBy, ElementsAre("Odalys Finch"));
    EXPECT_THAT(idsOf(tally.boats[0].out), ElementsAre("K80NSC1FX4", "KGFB6J8WF9"));
    EXPECT_THAT(idsOf(tally.boats[0].back), ElementsAre("K80NSC1FX4"));
    EXPECT_THAT(tally.boats[0].notReturned, IsEmpty());
    EXPECT_THAT(idsOf(tally.boats[1].notReturned), ElementsAre("K000000026"));
    // The knives were swapped: one pair, told once.
    ASSERT_THAT(tally.swaps, SizeIs(1));
    EXPECT_EQ(tally.swaps[0].kitType, "knife");
    EXPECT_THAT((std::vector{tally.swaps[0].item.id, tally.swaps[0].against.id}),
                testing::UnorderedElementsAre("K000000018", "KGFB6J8WF9"));
    // Tern's return check missed its knife too; where it was seen last stands in its chain.
    ASSERT_THAT(tally.missing, SizeIs(2));
    EXPECT_EQ(tally.missing[0].item.id, "K000000018");
    EXPECT_EQ(tally.missing[0].chain[1].where, core::Location::boat("Petrel"));
    EXPECT_EQ(tally.missing[1].item.id, "K000000026");
}

TEST(EventTally, aDayIsAnEventToo) {
    TwoBoats small;
    small.check("Petrel", Phase::Launch, {"KGFB6J8WF9"}, "2026-03-14T08:00:00Z");
    small.check("Petrel", Phase::Return, {"KGFB6J8WF9"}, "2026-03-14T09:00:00Z");
    EXPECT_THAT(small.club.events().tally("2026-03-14")->boats, SizeIs(1));
    EXPECT_FALSE(small.club.events().tally("2026-03-15"));
    EXPECT_EQ(small.club.events().tally("Regatta").error().kind(), core::ErrorKind::NotFound);
}

TEST(EventTally, whatIsStillOutIsNeitherBackNorMissed) {
    TwoBoats small;
    small.check("Petrel", Phase::Launch, {"KGFB6J8WF9"}, "2026-03-14T08:00:00Z");
    const auto tally = *small.club.events().tally("Spring training");
    EXPECT_FALSE(tally.boats[0].returnedAt);
    EXPECT_THAT(tally.boats[0].back, IsEmpty());
    EXPECT_THAT(tally.boats[0].notReturned, IsEmpty());
    EXPECT_THAT(tally.missing, IsEmpty());
}

TEST(Operation, hoursAndLaunchesAreCountedOnceToWhatWentOut) {
    TwoBoats small;
    small.import("life_rules.csv",
                 "kit_type,rule,kind,n\nknife,hone,every_hours,5\nknife,rinse,every_uses,2\n");
    small.check("Petrel", Phase::Launch, {"KGFB6J8WF9"}, "2026-03-14T08:00:00Z");
    const auto back = small.check("Petrel", Phase::Return, {"KGFB6J8WF9"}, "2026-03-14T11:00:00Z");
    core::Operation trip{.people = {"Odalys Finch"}, .hours = 4.5, .launches = 2, .fuel = "filled"};
    ASSERT_TRUE(small.club.events().recordOperation(back, trip, small.now));
    trip.hours = 5.5; // put right afterwards
    ASSERT_TRUE(small.club.events().recordOperation(back, trip, small.now));
    EXPECT_EQ(small.club.events().operationOf(back)->hours, 5.5);
    EXPECT_EQ(small.club.events().operationOf(back)->fuel, "filled");
    std::vector<std::string> due;
    for (const auto& row : small.club.answers().dueList(small.now.today, 90))
        if (row.item.id == "KGFB6J8WF9")
            due.push_back(row.due.rule.name + " " + std::to_string(*row.due.counted).substr(0, 3));
    EXPECT_THAT(due, testing::UnorderedElementsAre("hone 5.5", "rinse 2.0"));
    EXPECT_TRUE(small.club.record().verify(false)->problems.empty());
}

TEST(Operation, hoursThatComeToNothingLeaveNothing) {
    TwoBoats small;
    small.check("Petrel", Phase::Launch, {"KGFB6J8WF9"}, "2026-03-14T08:00:00Z");
    const auto back = small.check("Petrel", Phase::Return, {"KGFB6J8WF9"}, "2026-03-14T11:00:00Z");
    const auto hoursWith = [&](double told) {
        EXPECT_TRUE(small.club.events().recordOperation(back, {.hours = told}, small.now));
        const auto history = small.club.answers().history("KGFB6J8WF9").value();
        std::string newest;
        for (const auto& line : history)
            if (line.kind == "use_record") newest = line.body;
        return newest.substr(newest.find("\"set\""));
    };
    EXPECT_EQ(hoursWith(0.3), R"("set":{"hours":"0.3","launches":"1"}})");
    EXPECT_EQ(hoursWith(0.1), R"("set":{"hours":"0.1","launches":"1"}})"); // 0.3 + (0.1 - 0.3) is not 0.1
    EXPECT_EQ(hoursWith(0.0), R"("set":{"hours":"0","launches":"1"}})");
    EXPECT_TRUE(small.club.record().verify(false)->problems.empty());
}

TEST(Operation, whatCannotBeIsRefused) {
    TwoBoats small;
    const auto check = small.open();
    EXPECT_FALSE(small.club.events().recordOperation(check, {.hours = -1}, small.now));
    EXPECT_FALSE(small.club.events().recordOperation(check, {.launches = 0}, small.now));
    EXPECT_FALSE(small.club.events().recordOperation(check,
                                                     {.left = core::Instant::parse("2026-03-14T09:00:00Z"),
                                                      .back = core::Instant::parse("2026-03-14T08:00:00Z")},
                                                     small.now));
    EXPECT_TRUE(small.club.events().recordOperation(check, {.hours = 1}, small.now));
    EXPECT_FALSE(small.club.events().operationOf("no such check"));
}

TEST(Evidence, tellsWhatWasAboardAtAnInstant) {
    TwoBoats small;
    small.import("life_rules.csv", "kit_type,rule,kind,n,severity\nknife,replace,from_made,12,remark\n");
    small.import("items.csv", "code,made\nKGFB6J8WF9,2024-01-01\n");
    const auto launch =
        small.check("Petrel", Phase::Launch, {"KGFB6J8WF9", "K80NSC1FX4"}, "2026-03-14T08:00:00Z");
    small.check("Petrel", Phase::Return, {"KGFB6J8WF9", "K80NSC1FX4"}, "2026-03-14T11:00:00Z");
    // The register changes afterwards: the evidence does not.
    small.import("items.csv", "code,made\nKGFB6J8WF9,2026-03-01\n");
    const auto during =
        *small.club.answers().evidence("petrel", *core::Instant::parse("2026-03-14T09:30:00Z"));
    EXPECT_TRUE(during.out);
    ASSERT_TRUE(during.launch);
    EXPECT_EQ(during.launch->check, launch);
    EXPECT_EQ(during.launch->urgent, "training");
    EXPECT_THAT(during.people, ElementsAre("Odalys Finch"));
    ASSERT_THAT(during.aboard, SizeIs(2));
    EXPECT_EQ(during.aboard[0].item.id, "KGFB6J8WF9");
    EXPECT_EQ(during.aboard[0].inDate, std::optional(false));
    EXPECT_EQ(during.aboard[0].due, core::CalendarDay::parse("2025-01-01"));
    EXPECT_EQ(during.aboard[1].inDate, std::optional(true));
    EXPECT_TRUE(during.aboard[1].counted);
    EXPECT_EQ(during.factHash.size(), 64u);
    EXPECT_EQ(during.head.size(), 64u);

    const auto after =
        *small.club.answers().evidence("Petrel", *core::Instant::parse("2026-03-14T12:00:00Z"));
    EXPECT_FALSE(after.out);
    EXPECT_THAT(after.aboard, IsEmpty());
    EXPECT_TRUE(after.back);
    const auto before =
        *small.club.answers().evidence("Petrel", *core::Instant::parse("2026-03-14T07:00:00Z"));
    EXPECT_FALSE(before.launch);
    EXPECT_FALSE(small.club.answers().evidence("Gull", small.now.at));
}

TEST(Evidence, namesTheRuleThatWasPassedNotTheNextDayOfAnother) {
    TwoBoats small;
    small.import("life_rules.csv", "kit_type,rule,kind,n,severity\nknife,replace,from_made,120,stop\n"
                                   "knife,sharpen,every_uses,2,remark\n");
    small.import("items.csv", "code,made\nKGFB6J8WF9,2024-01-01\n");
    small.import("use.csv", "code,day,launches\nKGFB6J8WF9,2026-03-01,2\n");
    small.check("Petrel", Phase::Launch, {"KGFB6J8WF9", "K80NSC1FX4"}, "2026-03-14T08:00:00Z");
    const auto evidence =
        *small.club.answers().evidence("Petrel", *core::Instant::parse("2026-03-14T09:30:00Z"));
    ASSERT_THAT(evidence.aboard, SizeIs(2));
    const core::AboardItem& knife = evidence.aboard[0];
    EXPECT_EQ(knife.inDate, std::optional(false));
    EXPECT_EQ(knife.due, core::CalendarDay::parse("2034-01-01"));
    ASSERT_TRUE(knife.passed);
    EXPECT_EQ(knife.passed->rule.name, "sharpen");
    EXPECT_FALSE(knife.passed->due) << "it has no day";
    EXPECT_FALSE(evidence.aboard[1].passed);
}

TEST(Evidence, namesTheTagThatIsOnAThingNow) {
    TwoBoats small;
    small.check("Petrel", Phase::Launch, {"KGFB6J8WF9", "K80NSC1FX4"}, "2026-03-14T08:00:00Z");
    const auto tag = small.club.kit().replaceTag("KGFB6J8WF9", "Odalys Finch", small.now);
    ASSERT_TRUE(tag);
    const auto evidence =
        *small.club.answers().evidence("Petrel", *core::Instant::parse("2026-03-14T09:30:00Z"));
    ASSERT_THAT(evidence.aboard, SizeIs(2));
    EXPECT_EQ(evidence.aboard[0].item.id, "KGFB6J8WF9");
    EXPECT_EQ(evidence.aboard[0].item.tag, *tag);
    EXPECT_EQ(evidence.aboard[1].item.tag, "K80NSC1FX4");
}

} // namespace
