#include "app/gui/gear/due/due_calendar.h"

#include "tests/core/base/days.h"

#include <gtest/gtest.h>

namespace {

using core::day;

core::DueRow row(const char* kitType, const char* size, const char* due) {
    core::DueRow made{
        .item = {"KGYD21XNA5", "KGYD21XNA5"}, .kitType = kitType, .size = size, .boat = "Teal", .due = {}};
    made.due.rule.name = "retire";
    if (*due) made.due.due = day(due);
    return made;
}

std::size_t rowsIn(const app::DueCalendar& calendar, int column) {
    return calendar.months[static_cast<std::size_t>(column)].rows.size();
}

} // namespace

// Where a day stands follows from the calendar alone (ISO 8601 days).
TEST(DueCalendar, aDayStandsInItsMonthAndWhatHasPassedStandsApart) {
    const std::vector<core::DueRow> rows{row("knife", "", "2026-03-13"),
                                         row("knife", "", "2026-03-14"),
                                         row("knife", "", "2026-03-31"),
                                         row("knife", "", "2026-04-01"),
                                         row("knife", "", "2028-02-29"),
                                         row("knife", "", "2028-03-01"),
                                         row("knife", "", "")};
    const auto calendar = app::dueCalendarOf(rows, {}, day("2026-03-14"));
    ASSERT_EQ(calendar.months.size(), 25u);
    EXPECT_EQ(rowsIn(calendar, 0), 2u) << "the one before today, and the one without a day";
    EXPECT_EQ(rowsIn(calendar, 1), 2u) << "today and the month's last day";
    EXPECT_EQ(rowsIn(calendar, 2), 1u);
    EXPECT_EQ(rowsIn(calendar, 24), 1u) << "29 February 2028 is of the last month";
    EXPECT_EQ(calendar.coming(), 4) << "March 2028 lies beyond";
    EXPECT_EQ(calendar.months[1].name, "March 2026");
    EXPECT_EQ(calendar.months[24].name, "February 2028");
}

TEST(DueCalendar, theDueListIsAskedForAsFarAsTheLastMonthGoes) {
    EXPECT_EQ(app::daysOfDueMonths(day("2026-03-14")),
              core::daysBetween(day("2026-03-14"), day("2028-02-29")));
    EXPECT_EQ(app::daysOfDueMonths(day("2026-12-31")),
              core::daysBetween(day("2026-12-31"), day("2028-11-30")));
}

TEST(DueCalendar, stacksByKitTypeMostFirstAndOfOneTypeBySize) {
    const std::vector<core::DueRow> rows{
        row("flare", "", "2026-04-02"), row("life jacket", "M", "2026-04-03"),
        row("life jacket", "L", "2026-05-03"), row("life jacket", "M", "2026-05-04")};
    const auto all = app::dueCalendarOf(rows, {}, day("2026-03-14"));
    EXPECT_EQ(all.kinds, QStringList({"life jacket", "flare"}));
    EXPECT_EQ(all.months[2].counts, std::vector<int>({1, 1}));
    const auto jackets = app::dueCalendarOf(rows, {"life jacket", ""}, day("2026-03-14"));
    EXPECT_EQ(jackets.kinds, QStringList({"M", "L"}));
    EXPECT_EQ(jackets.totalOf(0), 2);
    EXPECT_EQ(app::dueCalendarOf(rows, {"life jacket", "L"}, day("2026-03-14")).coming(), 1);
}

TEST(DueCalendar, moreKindsThanPatternsGoTogetherAndNoneIsLost) {
    std::vector<core::DueRow> rows;
    for (const char* name : {"a", "b", "c", "d", "e", "f", "g", "h", "i"})
        rows.push_back(row(name, "", "2026-06-01"));
    const auto calendar = app::dueCalendarOf(rows, {}, day("2026-03-14"));
    EXPECT_EQ(calendar.kinds.size(), app::mostKinds);
    EXPECT_EQ(calendar.totalOf(app::mostKinds - 1), 3);
    int sum = 0;
    for (int kind = 0; kind < app::mostKinds; ++kind)
        sum += calendar.totalOf(kind);
    EXPECT_EQ(sum, 9);
}

TEST(DueCalendar, saysAMonthInWords) {
    const auto calendar = app::dueCalendarOf({row("flare", "", "2026-04-02"), row("flare", "", "2026-04-05")},
                                             {}, day("2026-03-14"));
    EXPECT_EQ(app::inWords(calendar.months[2], calendar.kinds), "April 2026: 2 × flare.");
    EXPECT_EQ(app::inWords(calendar.months[3], calendar.kinds), "May 2026: nothing.");
}
