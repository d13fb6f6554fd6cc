#include "core/upkeep/due_date.h"

#include "tests/core/upkeep/rule_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::Optional;

// Rules as authorities publish them, entered as a club would enter them. Some concern larger vessels: they
// are here for their shape. The source stands above each.

// SOLAS III/20.8.1: inflatable lifejackets serviced at intervals of at most 12 months, to be extended to 17
// where that is impracticable.
TEST(PublishedRules, solasServiceOfInflatableLifejackets) {
    LifeRule rule = ruleOf(RuleKind::ServiceEvery, 12);
    const ItemRecord record = servicedOn("2025-04-15");
    EXPECT_THAT(dueOf(rule, record, "2025-05-01").due, Optional(day("2026-04-15")));
    EXPECT_FALSE(dueOf(rule, record, "2026-04-15").isPassedStop());
    EXPECT_TRUE(dueOf(rule, record, "2026-04-16").isPassedStop());
    const CalendarDay limit = day("2025-04-15").plusMonths(17);
    EXPECT_EQ(limit, day("2026-09-15"));
    rule.tolerance = {Tolerance::Kind::Days, daysBetween(day("2026-04-15"), limit)};
    EXPECT_EQ(dueOf(rule, record, "2026-09-15").state, DueState::WithinTolerance);
    EXPECT_EQ(dueOf(rule, record, "2026-09-16").state, DueState::Passed);
}

// Norwegian Maritime Authority, SM 4-2015: postponement within the calendar month of expiry is accepted.
TEST(PublishedRules, norwegianPostponementWithinTheMonth) {
    LifeRule rule = ruleOf(RuleKind::ServiceEvery, 12);
    rule.tolerance.kind = Tolerance::Kind::EndOfMonth;
    const ItemRecord record = servicedOn("2025-04-15");
    EXPECT_EQ(dueOf(rule, record, "2026-04-15").state, DueState::DueSoon);
    EXPECT_EQ(dueOf(rule, record, "2026-04-16").state, DueState::WithinTolerance);
    EXPECT_EQ(dueOf(rule, record, "2026-04-30").state, DueState::WithinTolerance);
    EXPECT_TRUE(dueOf(rule, record, "2026-05-01").isPassedStop());
}

// 33 CFR 175.125: visual distress signals must not be past the marked expiry: good on that day.
// Queensland Transport Operations (Marine Safety) Regulation 2004, s 41: to be replaced before the legible
// expiry, and without one taken not to be equipped: a day tighter, and undated is a stop.
TEST(PublishedRules, expiryBoundaryOfTwoAuthorities) {
    const LifeRule federal = ruleOf(RuleKind::Stamped);
    LifeRule queensland = federal;
    queensland.strict = true;
    queensland.undated = Undated::Stop;
    const ItemRecord flare = stampedWith("2026-03-31");
    EXPECT_FALSE(dueOf(federal, flare, "2026-03-30").isPassedStop());
    EXPECT_FALSE(dueOf(queensland, flare, "2026-03-30").isPassedStop());
    EXPECT_FALSE(dueOf(federal, flare, "2026-03-31").isPassedStop());
    EXPECT_TRUE(dueOf(queensland, flare, "2026-03-31").isPassedStop());
    EXPECT_TRUE(dueOf(federal, flare, "2026-04-01").isPassedStop());
    EXPECT_TRUE(dueOf(queensland, flare, "2026-04-01").isPassedStop());
    EXPECT_TRUE(dueOf(queensland, {}, "2026-03-30").isPassedStop());
}

// 46 CFR 160.036-5(b), 160.024-5(b): expiry of hand-held and pistol flares at most 42 months from
// manufacture. The printed date prevails when it is earlier, as two rules on one item.
TEST(PublishedRules, flareLifeFromManufacture) {
    KitType flare;
    flare.rules = {ruleOf(RuleKind::FromMade, 42), ruleOf(RuleKind::Stamped)};
    ItemRecord record = madeOn("2022-08-31");
    record.item.stamped = known("2026-03");
    auto dues = dueDatesOf(record, flare, day("2025-01-01"));
    EXPECT_THAT(earliestOf(dues)->due, Optional(day("2026-02-28")));
    EXPECT_EQ(earliestOf(dues)->anchor, Anchor::Made);
    record.item.stamped = known("2026-01");
    dues = dueDatesOf(record, flare, day("2025-01-01"));
    EXPECT_THAT(earliestOf(dues)->due, Optional(day("2026-01-31")));
    EXPECT_EQ(earliestOf(dues)->anchor, Anchor::Stamped);
}

// USCG ACN 002/22 paragraph 3 with 33 CFR 175 subpart E: out of service on 31 December of the twelfth year.
TEST(PublishedRules, disposableExtinguisherOfTwelveYears) {
    const LifeRule rule = ruleOf(RuleKind::YearEndFromMade, 12);
    EXPECT_THAT(dueOf(rule, madeOn("2013"), "2025-01-01").due, Optional(day("2025-12-31")));
    EXPECT_THAT(dueOf(rule, madeOn("2013-12-31"), "2025-01-01").due, Optional(day("2025-12-31")));
    EXPECT_FALSE(dueOf(rule, madeOn("2013"), "2025-12-31").isPassedStop());
    EXPECT_TRUE(dueOf(rule, madeOn("2013"), "2026-01-01").isPassedStop());
}

// MSC/Circ.1114; UK MGN 529 §1.2: immersion suit tested every 3 years, every 2 when over 10 years old. The
// age counts on the day of the test (design: rules 2): tested at 8 years of age it is good for three years.
TEST(PublishedRules, immersionSuitTest) {
    LifeRule rule = ruleOf(RuleKind::ServiceEvery, 36);
    rule.steps = {{120, 24}};
    ItemRecord suit = madeOn("2014-05-01");
    suit.services = {recordOn("2022-05-01")};
    EXPECT_THAT(dueOf(rule, suit, "2022-06-01").due, Optional(day("2025-05-01")));
    suit.services = {recordOn("2024-04-30")};
    EXPECT_THAT(dueOf(rule, suit, "2024-06-01").due, Optional(day("2027-04-30")));
    suit.services = {recordOn("2024-05-01")};
    EXPECT_THAT(dueOf(rule, suit, "2024-06-01").due, Optional(day("2026-05-01")));
}

// German trade federation leaflet on inflatable lifejackets: service every 24 months, from the ninth year on
// every 12; life 10 years.
TEST(PublishedRules, inflatableLifejacketOfTenYears) {
    KitType jacket;
    jacket.rules = {ruleOf(RuleKind::ServiceEvery, 24), ruleOf(RuleKind::FromMade, 120)};
    jacket.rules[0].steps = {{108, 12}};
    ItemRecord record = madeOn("2016-04-01");
    record.services = {recordOn("2025-03-31")};
    auto dues = dueDatesOf(record, jacket, day("2025-04-10"));
    EXPECT_THAT(dues[0].due, Optional(day("2027-03-31")));
    EXPECT_THAT(earliestOf(dues)->due, Optional(day("2026-04-01"))) << "its life ends first";
    record.services = {recordOn("2025-04-01")};
    dues = dueDatesOf(record, jacket, day("2025-04-10"));
    EXPECT_THAT(dues[0].due, Optional(day("2026-04-01")));
}

// EN 365 as makers' manuals restate it: a detailed look at least every 12 months, and at once when the
// history before first use is unknown, after an event, on a change of user.
TEST(PublishedRules, textileKitAfterAnEvent) {
    KitType harness;
    for (const char* event : {"first use unknown", "impact", "change of wearer"}) {
        harness.rules.push_back(ruleOf(RuleKind::AfterEvent));
        harness.rules.back().event = event;
    }
    harness.rules.push_back(ruleOf(RuleKind::InspectEvery, 12));
    ItemRecord record = servicedOn("2025-06-01");
    const auto stops = [&](const char* today) {
        const auto dues = dueDatesOf(record, harness, day(today));
        return std::count_if(dues.begin(), dues.end(), [](const RuleDue& d) { return d.isPassedStop(); });
    };
    EXPECT_EQ(stops("2026-06-01"), 0);
    EXPECT_EQ(stops("2026-06-02"), 1);
    for (const char* event : {"first use unknown", "impact", "change of wearer"}) {
        record.happenings = {{event, day("2025-08-01"), std::nullopt}};
        EXPECT_EQ(stops("2025-08-01"), 1) << event;
    }
    record.services.push_back(recordOn("2025-08-02"));
    EXPECT_EQ(stops("2025-08-02"), 0);
}

// Makers' manuals for textile kit: at most 12 years from manufacture and 10 from first use, whichever ends
// first.
TEST(PublishedRules, twoLimitsAtOnce) {
    KitType rope;
    rope.rules = {ruleOf(RuleKind::FromMade, 144), ruleOf(RuleKind::FromFirstUse, 120)};
    ItemRecord record = madeOn("2014-03-01");
    record.item.firstUse = known("2015-06-15");
    EXPECT_THAT(earliestOf(dueDatesOf(record, rope, day("2020-01-01")))->due, Optional(day("2025-06-15")));
    record.item.firstUse = known("2016-06-15");
    EXPECT_THAT(earliestOf(dueDatesOf(record, rope, day("2020-01-01")))->due, Optional(day("2026-03-01")));
    record.item.firstUse.reset();
    const auto dues = dueDatesOf(record, rope, day("2020-01-01"));
    EXPECT_THAT(earliestOf(dues)->due, Optional(day("2026-03-01")));
    EXPECT_EQ(dues[1].state, DueState::Undated);
}

// Ten years from 29 February end on 28 February (GLib, ICU and java.time agree on the day); by the design
// that day is the last good one, and the first bad one under a strict rule.
TEST(PublishedRules, tenYearsFromALeapDay) {
    LifeRule rule = ruleOf(RuleKind::FromMade, 120);
    const ItemRecord record = madeOn("2016-02-29");
    EXPECT_THAT(dueOf(rule, record, "2026-01-01").due, Optional(day("2026-02-28")));
    EXPECT_FALSE(dueOf(rule, record, "2026-02-28").isPassedStop());
    EXPECT_TRUE(dueOf(rule, record, "2026-03-01").isPassedStop());
    rule.strict = true;
    EXPECT_TRUE(dueOf(rule, record, "2026-02-28").isPassedStop());
    EXPECT_FALSE(dueOf(rule, record, "2026-02-27").isPassedStop());
}

} // namespace
} // namespace core
