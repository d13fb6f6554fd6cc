#include "core/plan/last_good_day.h"

#include "tests/core/base/days.h"

#include <gtest/gtest.h>

namespace core {
namespace {

// Which rules end a life and what their days are is the club's own order (docs/rules.md, 2 and 9).

LifeRule rule(RuleKind kind, double n = 0) {
    LifeRule made;
    made.name = "rule";
    made.kind = kind;
    made.n = n;
    return made;
}

std::optional<CalendarDay> last(const ItemRecord& record, std::vector<LifeRule> rules) {
    KitType type;
    type.rules = std::move(rules);
    return lastGoodDayOf(record, withLifeEndsOnly(type));
}

ItemRecord madeOn(const std::string& text) {
    ItemRecord record;
    record.item.made = known(text);
    return record;
}

TEST(LastGoodDay, isTheEarliestOfTheRulesThatEndALife) {
    ItemRecord record = madeOn("2020-03-31");
    record.item.firstUse = known("2021-01-15");
    record.item.stamped = known("2027-06");
    EXPECT_EQ(last(record, {rule(RuleKind::Stamped)}), day("2027-06-30"));
    EXPECT_EQ(last(record, {rule(RuleKind::FromMade, 78)}), day("2026-09-30"));
    EXPECT_EQ(last(record, {rule(RuleKind::FromFirstUse, 60)}), day("2026-01-15"));
    EXPECT_EQ(last(record, {rule(RuleKind::YearEndFromMade, 12)}), day("2032-12-31"));
    EXPECT_EQ(last(record, {rule(RuleKind::Stamped), rule(RuleKind::FromMade, 78)}), day("2026-09-30"));
}

TEST(LastGoodDay, isEndlessWithoutARuleThatEndsALife) {
    const ItemRecord record = madeOn("2020-03-31");
    LifeRule remark = rule(RuleKind::FromMade, 1);
    remark.severity = Severity::Remark;
    LifeRule ofPart = rule(RuleKind::FromMade, 1);
    ofPart.part = "cylinder";
    EXPECT_EQ(last(record, {}), endlessDay);
    EXPECT_EQ(last(record, {remark}), endlessDay) << "a remark stops nothing";
    EXPECT_EQ(last(record, {ofPart}), endlessDay) << "the part is replaced, not the item";
    for (const RuleKind kind : {RuleKind::InspectEvery, RuleKind::ServiceEvery, RuleKind::EveryUses,
                                RuleKind::EveryHours, RuleKind::AfterEvent})
        EXPECT_EQ(last(record, {rule(kind, 1)}), endlessDay) << "put right by a record";
    EXPECT_NE(last(record, {rule(RuleKind::FromMade, 1)}), endlessDay)
        << "the same, as a stop of the item's own";
}

TEST(LastGoodDay, isADayEarlierForAStrictRuleAndNoLaterByATolerance) {
    const ItemRecord record = madeOn("2020-03-10");
    LifeRule strict = rule(RuleKind::FromMade, 12), days = strict, month = strict;
    strict.strict = true;
    days.tolerance = {Tolerance::Kind::Days, 14};
    month.tolerance = {Tolerance::Kind::EndOfMonth, 0};
    EXPECT_EQ(last(record, {strict}), day("2021-03-09"));
    EXPECT_EQ(last(record, {days}), day("2021-03-10"));
    EXPECT_EQ(last(record, {month}), day("2021-03-10"));
    days.strict = month.strict = true;
    EXPECT_EQ(last(record, {days}), day("2021-03-09"));
    EXPECT_EQ(last(record, {month}), day("2021-03-09"));
}

TEST(LastGoodDay, ofTheUndatedIsNoneWhenTheRuleStopsThem) {
    LifeRule stop = rule(RuleKind::Stamped), remark = stop, ignore = stop;
    stop.undated = Undated::Stop;
    remark.undated = Undated::Remark;
    ignore.undated = Undated::Ignore;
    const ItemRecord record = madeOn("2020-03-10");
    EXPECT_EQ(last(record, {stop}), std::nullopt);
    EXPECT_EQ(last(record, {remark}), endlessDay);
    EXPECT_EQ(last(record, {ignore}), endlessDay);
    EXPECT_EQ(last(record, {remark, rule(RuleKind::FromMade, 12)}), day("2021-03-10"));
}

TEST(LastGoodDay, ofNewKitCountsFromItsArrival) {
    KitType type;
    LifeRule stamped = rule(RuleKind::Stamped);
    stamped.undated = Undated::Stop;
    type.rules = {stamped};
    EXPECT_EQ(lastGoodDayOfNew(withLifeEndsOnly(type), day("2027-03-31")), endlessDay)
        << "its stamp is not known yet";
    type.rules.push_back(rule(RuleKind::FromMade, 60));
    EXPECT_EQ(lastGoodDayOfNew(withLifeEndsOnly(type), day("2027-03-31")), day("2032-03-31"));
    type.rules.push_back(rule(RuleKind::FromFirstUse, 6));
    EXPECT_EQ(lastGoodDayOfNew(withLifeEndsOnly(type), day("2027-03-31")), day("2027-09-30"));
}

} // namespace
} // namespace core
