#include "core/upkeep/due_date.h"

#include "tests/core/upkeep/rule_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::Optional;

// Design: rules 1 and 2. Published rules of the same shapes are in published_rules_test.cpp.

TEST(DueDate, countsFromThePrintedExpiry) {
    const auto entry = dueOf(ruleOf(RuleKind::Stamped), stampedWith("2026-08-09"), "2026-01-01");
    EXPECT_THAT(entry.due, Optional(day("2026-08-09")));
    EXPECT_EQ(entry.anchor, Anchor::Stamped);
    EXPECT_THAT(entry.anchorDay, Optional(day("2026-08-09")));
}

TEST(DueDate, readsAMonthOrYearAsTheLastDayForAnExpiryAndTheFirstForManufacture) {
    EXPECT_THAT(dueOf(ruleOf(RuleKind::Stamped), stampedWith("2026-02"), "2026-01-01").due,
                Optional(day("2026-02-28")));
    EXPECT_THAT(dueOf(ruleOf(RuleKind::Stamped), stampedWith("2026"), "2026-01-01").due,
                Optional(day("2026-12-31")));
    EXPECT_THAT(dueOf(ruleOf(RuleKind::FromMade, 12), madeOn("2024-08"), "2026-01-01").due,
                Optional(day("2025-08-01")));
    EXPECT_THAT(dueOf(ruleOf(RuleKind::FromMade, 12), madeOn("2024"), "2026-01-01").due,
                Optional(day("2025-01-01")));
    ItemRecord used;
    used.item.firstUse = known("2024-08");
    EXPECT_THAT(dueOf(ruleOf(RuleKind::FromFirstUse, 6), used, "2026-01-01").due,
                Optional(day("2025-02-01")));
}

TEST(DueDate, countsFromMadeAndFromFirstUse) {
    ItemRecord record = madeOn("2020-05-31");
    record.item.firstUse = known("2021-11-30");
    const auto made = dueOf(ruleOf(RuleKind::FromMade, 1), record, "2020-06-01");
    EXPECT_THAT(made.due, Optional(day("2020-06-30")));
    EXPECT_EQ(made.anchor, Anchor::Made);
    const auto used = dueOf(ruleOf(RuleKind::FromFirstUse, 3), record, "2020-06-01");
    EXPECT_THAT(used.due, Optional(day("2022-02-28")));
    EXPECT_EQ(used.anchor, Anchor::FirstUse);
    EXPECT_THAT(used.anchorDay, Optional(day("2021-11-30")));
}

TEST(DueDate, neverCountsMoreThanTheWholeMonthsGiven) {
    EXPECT_THAT(dueOf(ruleOf(RuleKind::FromMade, 2.9), madeOn("2026-01-15"), "2026-01-20").due,
                Optional(day("2026-03-15")));
    EXPECT_THAT(dueOf(ruleOf(RuleKind::FromMade, 1e12), madeOn("2026-01-15"), "2026-01-20").due,
                Optional(day("9999-12-31")));
    EXPECT_THAT(dueOf(ruleOf(RuleKind::YearEndFromMade, 1e12), madeOn("2026"), "2026-01-20").due,
                Optional(day("9999-12-31")));
}

TEST(DueDate, takesTheLastPassedRecordOfTheRule) {
    ItemRecord record = servicedOn("2025-03-10");
    record.services.push_back(recordOn("2024-03-10"));
    record.services.push_back(recordOn("2025-09-10", false));
    record.services.push_back({"", "another rule", day("2025-12-01"), std::nullopt, true});
    record.services.push_back({"cylinder", "rule", day("2025-12-02"), std::nullopt, true});
    for (RuleKind kind : {RuleKind::InspectEvery, RuleKind::ServiceEvery}) {
        const auto entry = dueOf(ruleOf(kind, 12), record, "2026-01-01");
        EXPECT_THAT(entry.due, Optional(day("2026-03-10")));
        EXPECT_EQ(entry.anchor, Anchor::Service);
    }
}

TEST(DueDate, startsAtFirstUseElseMadeElseRegisteredWhileNothingIsRecorded) {
    const LifeRule rule = ruleOf(RuleKind::ServiceEvery, 12);
    ItemRecord record;
    record.item.registered = known("2022-07-01");
    EXPECT_THAT(dueOf(rule, record, "2022-08-01").due, Optional(day("2023-07-01")));
    EXPECT_EQ(dueOf(rule, record, "2022-08-01").anchor, Anchor::Registered);
    record.item.made = known("2021-06-01");
    EXPECT_THAT(dueOf(rule, record, "2022-08-01").due, Optional(day("2022-06-01")));
    EXPECT_EQ(dueOf(rule, record, "2022-08-01").anchor, Anchor::Made);
    record.item.firstUse = known("2022-01-01");
    EXPECT_THAT(dueOf(rule, record, "2022-08-01").due, Optional(day("2023-01-01")));
    EXPECT_EQ(dueOf(rule, record, "2022-08-01").anchor, Anchor::FirstUse);
}

TEST(DueDate, isTheLastDayOnWhichTheThingCounts) {
    const LifeRule rule = ruleOf(RuleKind::Stamped);
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-14").state, DueState::DueSoon);
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-15").state, DueState::Passed);
    EXPECT_TRUE(dueOf(rule, stampedWith("2026-03-14"), "2026-03-15").isPassedStop());
    EXPECT_FALSE(dueOf(rule, stampedWith("2026-03-14"), "2026-03-14").isPassedStop());
    EXPECT_THAT(dueOf(rule, stampedWith("2026-03-14"), "2026-03-15").lastGoodDay,
                Optional(day("2026-03-14")));
}

TEST(DueDate, isTooLateOnItsOwnDayWhenStrict) {
    LifeRule rule = ruleOf(RuleKind::Stamped);
    rule.strict = true;
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-13").state, DueState::DueSoon);
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-14").state, DueState::Passed);
    EXPECT_THAT(dueOf(rule, stampedWith("2026-03-14"), "2026-03-01").lastGoodDay,
                Optional(day("2026-03-13")));
    EXPECT_THAT(dueOf(rule, stampedWith("2026-03-14"), "2026-03-01").due, Optional(day("2026-03-14")));
}

TEST(DueDate, isSoonFromItsLeadDaysOn) {
    LifeRule rule = ruleOf(RuleKind::Stamped);
    rule.leadDays = 10;
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-03").state, DueState::Later);
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-04").state, DueState::DueSoon);
    rule.leadDays = 0;
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-13").state, DueState::Later);
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-14").state, DueState::DueSoon);
}

TEST(DueDate, isRemarkedWithinItsToleranceTheEndIncluded) {
    LifeRule rule = ruleOf(RuleKind::Stamped);
    rule.tolerance = {Tolerance::Kind::Days, 14};
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-14").state, DueState::DueSoon);
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-15").state, DueState::WithinTolerance);
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-15").severity, Severity::Remark);
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-28").state, DueState::WithinTolerance);
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-29").state, DueState::Passed);
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-29").severity, Severity::Stop);
    rule.strict = true;
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-14").state, DueState::WithinTolerance);
    EXPECT_EQ(dueOf(rule, stampedWith("2026-03-14"), "2026-03-28").state, DueState::WithinTolerance);
}

TEST(DueDate, toleratesToTheEndOfTheMonth) {
    LifeRule rule = ruleOf(RuleKind::Stamped);
    rule.tolerance.kind = Tolerance::Kind::EndOfMonth;
    EXPECT_EQ(dueOf(rule, stampedWith("2028-02-10"), "2028-02-29").state, DueState::WithinTolerance);
    EXPECT_EQ(dueOf(rule, stampedWith("2028-02-10"), "2028-03-01").state, DueState::Passed);
    EXPECT_EQ(dueOf(rule, stampedWith("2028-02-29"), "2028-03-01").state, DueState::Passed);
}

TEST(DueDate, keepsTheSeverityOfTheRule) {
    LifeRule rule = ruleOf(RuleKind::Stamped);
    rule.severity = Severity::Remark;
    const auto entry = dueOf(rule, stampedWith("2026-03-14"), "2026-03-15");
    EXPECT_EQ(entry.severity, Severity::Remark);
    EXPECT_EQ(entry.state, DueState::Passed);
    EXPECT_FALSE(entry.isPassedStop());
}

TEST(DueDate, saysWhatItMeansThatADayIsUnknown) {
    for (RuleKind kind : {RuleKind::Stamped, RuleKind::FromMade, RuleKind::FromFirstUse,
                          RuleKind::YearEndFromMade, RuleKind::ServiceEvery, RuleKind::InspectEvery}) {
        LifeRule rule = ruleOf(kind, 12);
        rule.undated = Undated::Stop;
        rule.severity = Severity::Remark;
        const auto stop = dueOf(rule, {}, "2026-03-14");
        EXPECT_EQ(stop.state, DueState::Undated);
        EXPECT_EQ(stop.severity, Severity::Stop);
        EXPECT_TRUE(stop.isPassedStop());
        EXPECT_EQ(stop.due, std::nullopt);
        EXPECT_EQ(stop.anchor, Anchor::None);
        rule.undated = Undated::Remark;
        rule.severity = Severity::Stop;
        EXPECT_EQ(dueOf(rule, {}, "2026-03-14").severity, Severity::Remark);
        EXPECT_FALSE(dueOf(rule, {}, "2026-03-14").isPassedStop());
        rule.undated = Undated::Ignore;
        EXPECT_TRUE(duesOf(rule, {}, "2026-03-14").empty());
    }
}

TEST(DueDate, ignoresOnlyAnUndatedRule) {
    LifeRule rule = ruleOf(RuleKind::Stamped);
    rule.undated = Undated::Ignore;
    EXPECT_EQ(duesOf(rule, stampedWith("2026-01-01"), "2026-03-14").size(), 1u);
}

TEST(DueDate, changesItsIntervalWithTheItemsAgeOnTheDayOfTheRecord) {
    LifeRule rule = ruleOf(RuleKind::ServiceEvery, 24);
    rule.steps = {{108, 12}, {144, 6}};
    ItemRecord record = madeOn("2010-05-01");
    const auto dueAfter = [&](const char* recorded) {
        record.services = {recordOn(recorded)};
        return dueOf(rule, record, "2030-01-01").due;
    };
    EXPECT_THAT(dueAfter("2019-04-30"), Optional(day("2021-04-30")));
    EXPECT_THAT(dueAfter("2019-05-01"), Optional(day("2020-05-01")));
    EXPECT_THAT(dueAfter("2022-04-30"), Optional(day("2023-04-30")));
    EXPECT_THAT(dueAfter("2022-05-01"), Optional(day("2022-11-01")));
    std::swap(rule.steps[0], rule.steps[1]);
    EXPECT_THAT(dueAfter("2022-05-01"), Optional(day("2022-11-01")));
}

TEST(DueDate, reckonsTheAgeFromFirstUseWhenManufactureIsUnknown) {
    LifeRule rule = ruleOf(RuleKind::ServiceEvery, 24);
    rule.steps = {{12, 6}};
    ItemRecord record = servicedOn("2021-01-01");
    EXPECT_THAT(dueOf(rule, record, "2021-02-01").due, Optional(day("2023-01-01")))
        << "age unknown: the base";
    record.item.firstUse = known("2020-01-01");
    EXPECT_THAT(dueOf(rule, record, "2021-02-01").due, Optional(day("2021-07-01")));
    record.item.made = known("2020-01-02");
    EXPECT_THAT(dueOf(rule, record, "2021-02-01").due, Optional(day("2023-01-01")));
}

TEST(DueDate, appliesAStepOfAgeNothingAlreadyAtTheStart) {
    LifeRule rule = ruleOf(RuleKind::ServiceEvery, 24);
    rule.steps = {{0, 6}};
    EXPECT_THAT(dueOf(rule, madeOn("2026-01-01"), "2026-01-02").due, Optional(day("2026-07-01")));
}

TEST(DueDate, countsHoursAndLaunchesSinceTheLastRecord) {
    ItemRecord record = servicedOn("2026-02-01");
    record.use = {{day("2026-01-01"), 100, 100},
                  {day("2026-02-01"), 7, 7},
                  {day("2026-02-02"), 4, 2},
                  {day("2026-02-09"), 5.5, 3}};
    const auto hours = dueOf(ruleOf(RuleKind::EveryHours, 9.5), record, "2026-03-01");
    EXPECT_THAT(hours.counted, Optional(9.5));
    EXPECT_EQ(hours.state, DueState::Passed);
    EXPECT_EQ(hours.due, std::nullopt);
    EXPECT_EQ(hours.anchor, Anchor::Service);
    EXPECT_EQ(dueOf(ruleOf(RuleKind::EveryHours, 9.6), record, "2026-03-01").state, DueState::Later);
    EXPECT_THAT(dueOf(ruleOf(RuleKind::EveryUses, 5), record, "2026-03-01").counted, Optional(5.0));
    EXPECT_EQ(dueOf(ruleOf(RuleKind::EveryUses, 5), record, "2026-03-01").state, DueState::Passed);
    EXPECT_EQ(dueOf(ruleOf(RuleKind::EveryUses, 6), record, "2026-03-01").state, DueState::Later);
}

TEST(DueDate, countsAllUseWhileNothingIsRecorded) {
    ItemRecord record;
    record.use = {{day("2026-01-01"), 3, 1}, {day("2026-02-01"), 4, 1}};
    EXPECT_THAT(dueOf(ruleOf(RuleKind::EveryHours, 7), record, "2026-03-01").counted, Optional(7.0));
    EXPECT_EQ(dueOf(ruleOf(RuleKind::EveryHours, 7), record, "2026-03-01").state, DueState::Passed);
}

// docs/register-csv.md: "use counts since ever"; docs/command-line.md: `anchor` is what the day was counted
// from.
TEST(DueDate, whatWasNeverRecordedCountsFromNoDay) {
    ItemRecord record = madeOn("2024-01-01");
    record.item.firstUse = known("2025-06-01");
    record.use = {{day("2025-03-01"), 60, 4}};
    LifeRule rule = ruleOf(RuleKind::EveryHours, 100);
    rule.steps = {{12, 50}};
    const auto due = dueOf(rule, record, "2026-01-02");
    EXPECT_EQ(due.anchor, Anchor::None);
    EXPECT_EQ(due.anchorDay, std::nullopt);
    EXPECT_THAT(due.counted, Optional(60.0));
    EXPECT_THAT(due.limit, Optional(50.0)) << "first used at the age of 17 months";
    EXPECT_EQ(due.state, DueState::Passed);
    record.services = {{"", rule.name, day("2025-07-01"), {}, true}};
    const auto recorded = dueOf(rule, record, "2026-01-02");
    EXPECT_EQ(recorded.anchor, Anchor::Service);
    EXPECT_THAT(recorded.anchorDay, Optional(day("2025-07-01")));
    EXPECT_THAT(recorded.counted, Optional(0.0));
}

TEST(DueDate, addsTenthsOfHoursToWholeOnes) {
    ItemRecord record;
    for (int i = 1; i <= 10; ++i)
        record.use.push_back({day("2026-01-01").plusDays(i), 0.1, 0});
    EXPECT_EQ(dueOf(ruleOf(RuleKind::EveryHours, 1), record, "2026-03-01").state, DueState::Passed);
    EXPECT_EQ(dueOf(ruleOf(RuleKind::EveryHours, 1.001), record, "2026-03-01").state, DueState::Later);
}

LifeRule afterImpact() {
    LifeRule rule = ruleOf(RuleKind::AfterEvent);
    rule.event = "impact";
    return rule;
}

TEST(DueDate, isDueAtOnceAfterTheNamedEvent) {
    ItemRecord record;
    record.happenings = {{"inflated", day("2026-02-01"), std::nullopt}};
    EXPECT_EQ(dueOf(afterImpact(), record, "2026-03-01").state, DueState::Later);
    EXPECT_EQ(dueOf(afterImpact(), record, "2026-03-01").anchor, Anchor::None);
    record.happenings.push_back({"Impact ", day("2026-02-02"), std::nullopt});
    const auto entry = dueOf(afterImpact(), record, "2026-03-01");
    EXPECT_EQ(entry.state, DueState::Passed);
    EXPECT_TRUE(entry.isPassedStop());
    EXPECT_EQ(entry.due, std::nullopt);
    EXPECT_EQ(entry.anchor, Anchor::Event);
    EXPECT_THAT(entry.anchorDay, Optional(day("2026-02-02")));
}

TEST(DueDate, isSettledByARecordOfALaterDayNotOfTheSame) {
    ItemRecord record;
    record.happenings = {{"impact", day("2026-02-02"), std::nullopt}};
    record.services = {recordOn("2026-02-02")};
    EXPECT_EQ(dueOf(afterImpact(), record, "2026-03-01").state, DueState::Passed);
    record.services = {recordOn("2026-02-03", false)};
    EXPECT_EQ(dueOf(afterImpact(), record, "2026-03-01").state, DueState::Passed);
    record.services = {recordOn("2026-02-03")};
    EXPECT_EQ(dueOf(afterImpact(), record, "2026-03-01").state, DueState::Later);
}

TEST(DueDate, goesByTheInstantWhereBothAreKnown) {
    const Instant event = *Instant::parse("2026-02-02T10:00:00Z");
    ItemRecord record;
    record.happenings = {{"impact", day("2026-02-02"), event}};
    record.services = {{"", "rule", day("2026-02-02"), event, true}};
    EXPECT_EQ(dueOf(afterImpact(), record, "2026-03-01").state, DueState::Passed);
    record.services[0].at = Instant::fromMillis(event.millis() + 1);
    EXPECT_EQ(dueOf(afterImpact(), record, "2026-03-01").state, DueState::Later);
    record.services[0].at.reset();
    EXPECT_EQ(dueOf(afterImpact(), record, "2026-03-01").state, DueState::Passed);
}

TEST(DueDate, namesTheLatestOfSeveralOpenEvents) {
    ItemRecord record;
    record.happenings = {{"impact", day("2026-02-02"), std::nullopt},
                         {"impact", day("2026-02-09"), std::nullopt},
                         {"impact", day("2026-02-05"), std::nullopt}};
    EXPECT_THAT(dueOf(afterImpact(), record, "2026-03-01").anchorDay, Optional(day("2026-02-09")));
    record.services = {recordOn("2026-02-04")};
    EXPECT_EQ(dueOf(afterImpact(), record, "2026-03-01").state, DueState::Passed)
        << "only the first is settled";
}

TEST(DueDate, appliesARuleOfAPartOnlyToItemsThatHaveIt) {
    LifeRule rule = ruleOf(RuleKind::FromMade, 12);
    rule.part = "cylinder";
    ItemRecord record = madeOn("2020-01-01");
    EXPECT_TRUE(duesOf(rule, record, "2026-03-01").empty());
    record.parts = {{"light", known("2025-01-01"), {}, {}}, {"cylinder", known("2025-06-01"), {}, {}}};
    EXPECT_THAT(dueOf(rule, record, "2026-03-01").due, Optional(day("2026-06-01")));
}

TEST(DueDate, startsAPartsServiceRuleAtItsOwnDaysElseWhenTheItemWasRegistered) {
    LifeRule rule = ruleOf(RuleKind::ServiceEvery, 12);
    rule.part = "cylinder";
    ItemRecord record = madeOn("2020-01-01");
    record.item.firstUse = known("2020-02-01");
    record.item.registered = known("2021-03-01");
    record.parts = {{"cylinder", {}, {}, {}}};
    EXPECT_THAT(dueOf(rule, record, "2021-04-01").due, Optional(day("2022-03-01")));
    record.parts[0].made = known("2021-05-01");
    EXPECT_THAT(dueOf(rule, record, "2021-04-01").due, Optional(day("2022-05-01")));
    record.parts[0].firstUse = known("2021-06-01");
    EXPECT_THAT(dueOf(rule, record, "2021-04-01").due, Optional(day("2022-06-01")));
    record.services = {recordOn("2021-07-01"), {"cylinder", "rule", day("2021-08-01"), std::nullopt, true}};
    EXPECT_THAT(dueOf(rule, record, "2021-04-01").due, Optional(day("2022-08-01")));
}

TEST(DueDate, takesTheItemsAgeHoursAndEventsForARuleOfAPart) {
    ItemRecord record = madeOn("2010-01-01");
    record.parts = {{"cylinder", known("2024-01-01"), {}, {}}};
    record.use = {{day("2026-01-01"), 8, 2}};
    record.happenings = {{"impact", day("2026-02-02"), std::nullopt}};
    LifeRule stepped = ruleOf(RuleKind::ServiceEvery, 24);
    stepped.steps = {{108, 12}};
    stepped.part = "cylinder";
    EXPECT_THAT(dueOf(stepped, record, "2026-03-01").due, Optional(day("2025-01-01")));
    LifeRule hours = ruleOf(RuleKind::EveryHours, 8);
    hours.part = "cylinder";
    EXPECT_EQ(dueOf(hours, record, "2026-03-01").state, DueState::Passed);
    LifeRule event = afterImpact();
    event.part = "cylinder";
    EXPECT_EQ(dueOf(event, record, "2026-03-01").state, DueState::Passed);
}

TEST(DueDate, isTheEarliestOverAllRules) {
    KitType kitType;
    kitType.rules = {ruleOf(RuleKind::EveryUses, 5), ruleOf(RuleKind::FromMade, 24),
                     ruleOf(RuleKind::Stamped), ruleOf(RuleKind::FromMade, 12),
                     ruleOf(RuleKind::FromMade, 12)};
    kitType.rules[3].name = "first of two";
    ItemRecord record = madeOn("2025-01-01");
    const auto dues = dueDatesOf(record, kitType, day("2025-02-01"));
    ASSERT_EQ(dues.size(), 5u);
    ASSERT_NE(earliestOf(dues), nullptr);
    EXPECT_EQ(earliestOf(dues)->rule.name, "first of two");
    EXPECT_EQ(earliestOf({dues[0], dues[2]}), nullptr);
}

} // namespace
} // namespace core
