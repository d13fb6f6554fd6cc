#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace core {

/// A day of the proleptic Gregorian calendar, 0001-01-01 to 9999-12-31. No time, no zone. A value always is a
/// real day.
class CalendarDay {
public:
    /// Empty unless year 1–9999, month 1–12 and the day exists.
    static std::optional<CalendarDay> from(int year, int month, int day);
    /// Only `YYYY-MM-DD` (ISO 8601).
    static std::optional<CalendarDay> parse(std::string_view text);
    /// `number` counts days: 0001-01-01 is 1, 9999-12-31 is 3652059; clamped to that range.
    static CalendarDay fromNumber(int number);

    int year() const;
    int month() const; ///< 1–12
    int day() const;   ///< 1–31
    int number() const { return m_number; }

    CalendarDay plusDays(int days) const { return fromNumber(m_number + days); }
    /// Keeps the day number and clamps it to the month's last day, so never chain: always anchor + n months
    /// (XML Schema part 2, appendix E). Months may be negative.
    CalendarDay plusMonths(int months) const;
    CalendarDay lastOfMonth() const;

    std::string iso() const;

    auto operator<=>(const CalendarDay&) const = default;

private:
    explicit CalendarDay(int number)
        : m_number(number) {}
    int m_number;
};

/// Whole days from a to b; negative when b is earlier.
inline int daysBetween(CalendarDay a, CalendarDay b) {
    return b.number() - a.number();
}

/// A date as it is known: to the day, the month or only the year. Which day it then stands for depends on the
/// use.
class PartialDay {
public:
    PartialDay(CalendarDay day);
    /// `2026-03-14`, `2026-03` or `2026`.
    static std::optional<PartialDay> parse(std::string_view text);

    CalendarDay firstDay() const; ///< made, first use, registered, service, event
    CalendarDay lastDay() const;  ///< an expiry
    bool isExact() const { return m_day != 0; }
    std::string text() const; ///< as it was given

    bool operator==(const PartialDay&) const = default;

private:
    PartialDay(int year, int month, int day)
        : m_year(year)
        , m_month(month)
        , m_day(day) {}
    int m_year;
    int m_month; ///< 0: not known
    int m_day;   ///< 0: not known
};

} // namespace core
