#include "app/paper/order_sheet.h"

#include "tests/core/base/days.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <libical/ical.h>

#include <map>
#include <memory>
#include <set>

namespace app {
namespace {

using core::day;

core::ReplacementRow shortRow(const std::string& kitType, const std::string& size,
                              const std::string& orderBy) {
    core::ReplacementRow row;
    row.kitType = kitType;
    row.size = size;
    row.orderBy = day(orderBy);
    row.lastGood = row.orderBy->plusDays(30);
    row.firstShort = row.orderBy->plusDays(31);
    row.late = *row.orderBy < day("2026-03-14");
    row.quantity = 3;
    return row;
}

core::ReplacementPlan planOf(std::vector<core::ReplacementRow> rows) {
    return {day("2026-03-14"), day("2029-03-14"), {}, std::move(rows), {}};
}

const core::Instant at = core::Instant::parse("2026-03-14T06:40:00Z").value();

/// What a general-purpose library (libical) finds in it, by UID.
struct Found {
    std::string day;
    bool isWholeDay = false;
    std::string summary;
    std::string description;
};
struct Calendar {
    std::map<std::string, Found> events;
    int errors = 0;
};

Calendar readBack(const std::string& text) {
    const std::unique_ptr<icalcomponent, decltype(&icalcomponent_free)> root(
        icalparser_parse_string(text.c_str()), icalcomponent_free);
    Calendar calendar;
    if (!root || icalcomponent_isa(root.get()) != ICAL_VCALENDAR_COMPONENT ||
        !icalcomponent_is_valid(root.get())) {
        ADD_FAILURE() << "no calendar: " << text;
        return calendar;
    }
    calendar.errors = icalcomponent_count_errors(root.get());
    EXPECT_TRUE(icalrestriction_check(root.get())) << "what RFC 5545 asks for is there";
    for (icalcomponent* event = icalcomponent_get_first_component(root.get(), ICAL_VEVENT_COMPONENT); event;
         event = icalcomponent_get_next_component(root.get(), ICAL_VEVENT_COMPONENT)) {
        const icaltimetype start = icalcomponent_get_dtstart(event);
        const core::CalendarDay from = core::CalendarDay::from(start.year, start.month, start.day).value();
        const icaltimetype end = icalcomponent_get_dtend(event);
        calendar.events[icalcomponent_get_uid(event)] = {
            from.iso(),
            start.is_date && end.is_date &&
                core::CalendarDay::from(end.year, end.month, end.day) == from.plusDays(1),
            icalcomponent_get_summary(event), icalcomponent_get_description(event)};
    }
    return calendar;
}

TEST(OrderCalendar, hasAWholeDayForEachOrder) {
    core::ReplacementRow enough;
    enough.kitType = "paddle";
    const Calendar calendar = readBack(orderCalendar(
        "Lake Club",
        planOf({shortRow("knife", "", "2026-07-01"), shortRow("life jacket", "M", "2026-12-31"), enough}),
        at));
    EXPECT_EQ(calendar.errors, 0);
    ASSERT_EQ(calendar.events.size(), 2U);
    std::map<std::string, Found> byDay;
    for (const auto& [uid, event] : calendar.events)
        byDay[event.day] = event;
    ASSERT_TRUE(byDay.contains("2026-07-01") && byDay.contains("2026-12-31"));
    EXPECT_TRUE(byDay["2026-07-01"].isWholeDay);
    EXPECT_TRUE(byDay["2026-12-31"].isWholeDay) << "its end is in the next year";
    EXPECT_EQ(byDay["2026-07-01"].summary, "knife: order 3");
    EXPECT_EQ(byDay["2026-12-31"].summary, "life jacket (M): order 3");
    EXPECT_THAT(byDay["2026-07-01"].description, testing::HasSubstr("order by 1 July 2026"));
}

TEST(OrderCalendar, showsALateOrderOnThePlansOwnDay) {
    const Calendar calendar =
        readBack(orderCalendar("Lake Club", planOf({shortRow("knife", "", "2026-03-01")}), at));
    ASSERT_EQ(calendar.events.size(), 1U);
    EXPECT_EQ(calendar.events.begin()->second.day, "2026-03-14");
    EXPECT_THAT(calendar.events.begin()->second.description, testing::HasSubstr("the day was 1 March 2026"));
}

TEST(OrderCalendar, keepsAnOrdersUidFromPlanToPlan) {
    const auto uidsOf = [](const std::string& club, const std::vector<core::ReplacementRow>& rows) {
        std::set<std::string> uids;
        for (const auto& [uid, event] : readBack(orderCalendar(club, planOf(rows), at)).events)
            uids.insert(uid);
        return uids;
    };
    const auto first = uidsOf("Lake Club", {shortRow("knife", "", "2026-07-01")});
    EXPECT_EQ(first, uidsOf("Lake Club", {shortRow("knife", "", "2027-01-01")})) << "moved, not made anew";
    EXPECT_NE(first, uidsOf("Shore Club", {shortRow("knife", "", "2026-07-01")}));
    EXPECT_EQ(uidsOf("Lake Club", {shortRow("a", "bc", "2026-07-01"), shortRow("ab", "c", "2026-07-01"),
                                   shortRow("abc", "", "2026-07-01")})
                  .size(),
              3U);
}

TEST(OrderCalendar, escapesAndFoldsWhatANameMayHold) {
    const std::string hostile =
        "line; with, signs \\ and\nEND:VEVENT Ölzeug für Rettungsboote, sehr sehr lang, 絵文字 🛶 "
        "and on and on and on and on and on";
    const std::string text = orderCalendar("Lake Club", planOf({shortRow(hostile, "", "2026-07-01")}), at);
    const Calendar calendar = readBack(text);
    EXPECT_EQ(calendar.errors, 0);
    ASSERT_EQ(calendar.events.size(), 1U);
    std::string shown = hostile;
    shown.replace(shown.find('\n'), 1, "\\x0a");
    EXPECT_EQ(calendar.events.begin()->second.summary, shown + ": order 3");
    for (std::size_t from = 0; from < text.size();) {
        const std::size_t end = text.find("\r\n", from);
        ASSERT_NE(end, std::string::npos) << "every line ends with CRLF";
        const std::string line = text.substr(from, end - from);
        EXPECT_LE(line.size(), 75U) << "octets, RFC 5545 3.1";
        EXPECT_EQ(line.find('\n'), std::string::npos);
        EXPECT_TRUE(line.empty() ||
                    (static_cast<unsigned char>(line[line[0] == ' ' ? 1 : 0]) & 0xC0U) != 0x80U)
            << "folded between characters";
        from = end + 2;
    }
}

TEST(OrderCalendar, withoutAnOrderAsksToPlanAnew) {
    // A calendar must hold at least one component (RFC 5545 3.6).
    core::ReplacementRow enough;
    enough.kitType = "paddle";
    const Calendar calendar = readBack(orderCalendar("Lake Club", planOf({enough}), at));
    ASSERT_EQ(calendar.events.size(), 1U);
    EXPECT_EQ(calendar.events.begin()->second.day, "2029-03-14");
    EXPECT_THAT(calendar.events.begin()->second.summary, testing::HasSubstr("plan anew"));
}

} // namespace
} // namespace app
