#include "core/base/calendar_day.h"

#include "tests/core/base/days.h"

#include <gmock/gmock.h>

namespace core {
namespace {

TEST(CalendarDay, numbersTheCalendarFromTheFirstDayToTheLast) {
    // Ordinals as in Python's datetime.date.toordinal: 0001-01-01 is 1, 9999-12-31 is 3652059 (library
    // reference); 1970-01-01 is 719163 there.
    EXPECT_EQ(day("0001-01-01").number(), 1);
    EXPECT_EQ(day("1970-01-01").number(), 719163);
    EXPECT_EQ(day("9999-12-31").number(), 3652059);
    EXPECT_EQ(CalendarDay::fromNumber(0), day("0001-01-01"));
    EXPECT_EQ(CalendarDay::fromNumber(3652060), day("9999-12-31"));
}

TEST(CalendarDay, knowsLeapYearsByTheGregorianRule) {
    // ISO 8601: leap years are divisible by four, centuries only by four hundred.
    EXPECT_TRUE(CalendarDay::from(2000, 2, 29));
    EXPECT_TRUE(CalendarDay::from(2024, 2, 29));
    EXPECT_FALSE(CalendarDay::from(1900, 2, 29));
    EXPECT_FALSE(CalendarDay::from(2026, 2, 29));
    EXPECT_FALSE(CalendarDay::from(2100, 2, 29));
}

TEST(CalendarDay, existsOnlyWithinItsBounds) {
    EXPECT_TRUE(CalendarDay::from(1, 1, 1));
    EXPECT_TRUE(CalendarDay::from(9999, 12, 31));
    EXPECT_FALSE(CalendarDay::from(0, 12, 31));
    EXPECT_FALSE(CalendarDay::from(10000, 1, 1));
    EXPECT_FALSE(CalendarDay::from(2026, 0, 1));
    EXPECT_FALSE(CalendarDay::from(2026, 13, 1));
    EXPECT_FALSE(CalendarDay::from(2026, 1, 0));
    EXPECT_FALSE(CalendarDay::from(2026, 4, 31));
    EXPECT_TRUE(CalendarDay::from(2026, 4, 30));
}

TEST(CalendarDay, readsOnlyTheFullIsoForm) {
    EXPECT_EQ(CalendarDay::parse("2026-03-14"), CalendarDay::from(2026, 3, 14));
    for (const char* text : {"2026-03", "2026", "", "2026-3-14", "26-03-14", "2026/03/14", "2026-03-14 ",
                             " 2026-03-14", "2026-02-29", "2026-03-1x", "2026/03-14", "2026-03/14",
                             "+026-03-14", "20260314", "2026-03-14T00:00:00Z"})
        EXPECT_FALSE(CalendarDay::parse(text)) << text;
}

TEST(CalendarDay, writesWhatItReads) {
    for (const char* text : {"0001-01-01", "0999-12-31", "2024-02-29", "9999-12-31"})
        EXPECT_EQ(day(text).iso(), text);
    EXPECT_EQ(day("2024-02-29").year(), 2024);
    EXPECT_EQ(day("2024-02-29").month(), 2);
    EXPECT_EQ(day("2024-02-29").day(), 29);
}

struct MonthsRow {
    const char* from;
    int months;
    const char* to;
};

// Recomputed with GLib, ICU and java.time, which agree. Published anchors among them: GLib reference manual,
// g_date_time_add_months (31 January 2018 + 1 → 28 February, in 2020 the 29th); PostgreSQL regression tests
// (2000-02-29 + 1 year → 2001-02-28).
constexpr MonthsRow clamped[] = {
    {"2018-01-31", 1, "2018-02-28"},   {"2020-01-31", 1, "2020-02-29"},  {"2000-02-29", 12, "2001-02-28"},
    {"2026-01-31", 1, "2026-02-28"},   {"2024-02-29", 12, "2025-02-28"}, {"2026-03-31", 1, "2026-04-30"},
    {"2024-01-31", 1, "2024-02-29"},   {"2024-02-29", 48, "2028-02-29"}, {"2024-02-29", 1200, "2124-02-29"},
    {"2024-02-29", -12, "2023-02-28"}, {"2025-12-31", 2, "2026-02-28"},  {"2026-05-31", -1, "2026-04-30"},
    {"2026-02-28", 1, "2026-03-28"},   {"2023-08-31", 6, "2024-02-29"},  {"1900-01-31", 1, "1900-02-28"},
    {"2000-01-31", 1, "2000-02-29"},   {"2021-11-30", 42, "2025-05-30"}, {"2022-11-30", 3, "2023-02-28"},
    {"2022-08-31", 42, "2026-02-28"},  {"2023-02-28", 42, "2026-08-28"},
};

TEST(CalendarDay, addsMonthsByClampingToTheLastDayOfTheMonth) {
    for (const MonthsRow& row : clamped)
        EXPECT_EQ(day(row.from).plusMonths(row.months), day(row.to)) << row.from << " + " << row.months;
}

TEST(CalendarDay, addsDurationsAsXmlSchemaDoes) {
    // XML Schema part 2, appendix E (XSD 1.1, E.3.3): months first, the day clamped, then days.
    EXPECT_EQ(day("2000-03-30").plusDays(1).plusMonths(1), day("2000-04-30"));
    EXPECT_EQ(day("2000-03-30").plusMonths(1).plusDays(1), day("2000-05-01"));
    EXPECT_EQ(day("2000-01-12").plusMonths(12 + 3).plusDays(5), day("2001-04-17"));
    EXPECT_EQ(known("2000-01").firstDay().plusMonths(-3), known("1999-10").firstDay());
    EXPECT_EQ(day("2000-01-12").plusDays(1), day("2000-01-13")); // PT33H, of which whole days count
}

TEST(CalendarDay, differsWhenMonthsAreChained) {
    // Why a due day always is anchor + n: 31 January + 1 + 1 is not 31 January + 2.
    EXPECT_EQ(day("2026-01-31").plusMonths(1).plusMonths(1), day("2026-03-28"));
    EXPECT_EQ(day("2026-01-31").plusMonths(2), day("2026-03-31"));
}

TEST(CalendarDay, staysWithinTheCalendarWhenMonthsLeadOut) {
    EXPECT_EQ(day("0001-01-31").plusMonths(-1), day("0001-01-01"));
    EXPECT_EQ(day("9999-12-01").plusMonths(1), day("9999-12-31"));
    EXPECT_EQ(day("0001-02-28").plusMonths(-1), day("0001-01-28"));
    EXPECT_EQ(day("9999-11-30").plusMonths(1), day("9999-12-30"));
}

TEST(CalendarDay, countsWholeDaysBetween) {
    EXPECT_EQ(daysBetween(day("2024-02-28"), day("2024-03-01")), 2);
    EXPECT_EQ(daysBetween(day("2026-03-01"), day("2026-02-28")), -1);
}

TEST(PartialDay, standsForTheFirstOrTheLastDayItMayMean) {
    // Design: rules 1. The last day for an expiry as the GS1 General Specifications have it for a day of 00.
    EXPECT_EQ(known("2026-08").lastDay(), day("2026-08-31"));
    EXPECT_EQ(known("2026-08").firstDay(), day("2026-08-01"));
    EXPECT_EQ(known("2024-02").lastDay(), day("2024-02-29"));
    EXPECT_EQ(known("2026").lastDay(), day("2026-12-31"));
    EXPECT_EQ(known("2026").firstDay(), day("2026-01-01"));
    EXPECT_EQ(known("2026-08-09").firstDay(), day("2026-08-09"));
    EXPECT_EQ(known("2026-08-09").lastDay(), day("2026-08-09"));
}

TEST(PartialDay, isWrittenAsItWasGiven) {
    for (const char* text : {"2026", "2026-08", "2026-08-09"})
        EXPECT_EQ(known(text).text(), text);
    EXPECT_TRUE(known("2026-08-09").isExact());
    EXPECT_FALSE(known("2026-08").isExact());
    for (const char* text : {"2026-13", "2026-00", "0000", "2026-", "202", "2026-08-32", "2026-8", "2026/08"})
        EXPECT_FALSE(PartialDay::parse(text)) << text;
}

} // namespace
} // namespace core
