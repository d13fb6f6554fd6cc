#include "core/base/calendar_day.h"

#include "tests/core/base/days.h"

#include <glib.h>
#include <gtest/gtest.h>
#include <memory>
#include <random>
#include <unicode/gregocal.h>

namespace core {
namespace {

// GLib and ICU, two general-purpose libraries, side by side with our calendar.

constexpr int spans = 120000;

CalendarDay glibPlusMonths(CalendarDay from, int months) {
    GDate date;
    g_date_clear(&date, 1);
    g_date_set_dmy(&date, static_cast<GDateDay>(from.day()), static_cast<GDateMonth>(from.month()),
                   static_cast<GDateYear>(from.year()));
    if (months >= 0)
        g_date_add_months(&date, static_cast<guint>(months));
    else
        g_date_subtract_months(&date, static_cast<guint>(-months));
    return *CalendarDay::from(g_date_get_year(&date), g_date_get_month(&date), g_date_get_day(&date));
}

/// A calendar that is Gregorian at all times, in UTC.
std::unique_ptr<icu::GregorianCalendar> icuCalendar() {
    UErrorCode status = U_ZERO_ERROR;
    auto calendar = std::make_unique<icu::GregorianCalendar>(*icu::TimeZone::getGMT(), status);
    calendar->setGregorianChange(-1e18, status);
    if (U_FAILURE(status)) throw std::runtime_error(u_errorName(status));
    return calendar;
}

CalendarDay icuPlus(icu::GregorianCalendar& calendar, CalendarDay from, int amount,
                    icu::Calendar::EDateFields field) {
    UErrorCode status = U_ZERO_ERROR;
    calendar.clear();
    calendar.set(from.year(), from.month() - 1, from.day());
    calendar.add(static_cast<UCalendarDateFields>(field), amount, status);
    const auto get = [&](UCalendarDateFields f) { return calendar.get(f, status); };
    const auto day = CalendarDay::from(get(UCAL_YEAR), get(UCAL_MONTH) + 1, get(UCAL_DATE));
    if (U_FAILURE(status) || !day) throw std::runtime_error("ICU could not add");
    return *day;
}

class RandomSpans {
public:
    CalendarDay from() { return CalendarDay::fromNumber(m_day(m_random)); }
    /// Stays between the years 1 and 9999, to which both libraries are held.
    int months(CalendarDay from) {
        const int earliest = -((from.year() - 1) * 12 + from.month() - 1);
        const int latest = (9999 - from.year()) * 12 + 12 - from.month();
        return std::uniform_int_distribution(std::max(-600, earliest), std::min(1800, latest))(m_random);
    }

private:
    std::mt19937 m_random{20260314};
    std::uniform_int_distribution<int> m_day{1, 3652059};
};

TEST(CalendarOracle, glibAddsMonthsAsWeDo) {
    RandomSpans random;
    for (int i = 0; i < spans; ++i) {
        const CalendarDay from = random.from();
        const int months = random.months(from);
        ASSERT_EQ(from.plusMonths(months), glibPlusMonths(from, months)) << from.iso() << " + " << months;
    }
}

TEST(CalendarOracle, icuAddsMonthsAsWeDo) {
    RandomSpans random;
    const auto calendar = icuCalendar();
    for (int i = 0; i < spans; ++i) {
        const CalendarDay from = random.from();
        const int months = random.months(from);
        ASSERT_EQ(from.plusMonths(months), icuPlus(*calendar, from, months, icu::Calendar::MONTH))
            << from.iso() << " + " << months;
    }
}

TEST(CalendarOracle, icuAddsDaysAsWeDo) {
    RandomSpans random;
    const auto calendar = icuCalendar();
    for (int i = 0; i < spans; ++i) {
        const CalendarDay from = random.from();
        const int days =
            std::clamp(random.from().number() - from.number(), 1 - from.number(), 3652059 - from.number());
        ASSERT_EQ(from.plusDays(days), icuPlus(*calendar, from, days, icu::Calendar::DATE))
            << from.iso() << " + " << days;
    }
}

TEST(CalendarOracle, glibNumbersAndEndsMonthsAsWeDo) {
    for (int number = 1; number <= 3652059; number += 7) {
        const CalendarDay day = CalendarDay::fromNumber(number);
        GDate date;
        g_date_clear(&date, 1);
        g_date_set_julian(&date, static_cast<guint32>(number));
        ASSERT_EQ(g_date_get_year(&date), day.year());
        ASSERT_EQ(static_cast<int>(g_date_get_month(&date)), day.month());
        ASSERT_EQ(g_date_get_day(&date), day.day());
        ASSERT_EQ(g_date_get_days_in_month(g_date_get_month(&date), g_date_get_year(&date)),
                  day.lastOfMonth().day());
    }
}

} // namespace
} // namespace core
