#pragma once

#include "core/base/calendar_day.h"

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace core {

/// A moment in UTC, to the millisecond.
class Instant {
public:
    static Instant now();
    /// RFC 3339 with an offset or `Z`; a leap second becomes the second after it. `2026-03-14T06:40:00Z`
    static std::optional<Instant> parse(std::string_view text);
    /// Noon local time would be a lie; this is the day's given time of day taken from `timeOfDay`, in local
    /// time.
    static Instant onLocalDay(CalendarDay day, Instant timeOfDay);
    /// The first instant of a day in local time.
    static Instant beginningOf(CalendarDay localDay);
    static Instant fromMillis(std::int64_t millis) { return Instant(millis); }

    std::int64_t millis() const { return m_millis; } ///< since 1970-01-01T00:00Z
    std::string iso() const;                         ///< `2026-03-14T06:40:00.000Z`
    CalendarDay localDay() const;                    ///< in the time zone of this machine

    auto operator<=>(const Instant&) const = default;

private:
    explicit Instant(std::int64_t millis)
        : m_millis(millis) {}
    std::int64_t m_millis;
};

/// When something is done: the instant, and the calendar day that the rules go by.
struct Moment {
    Instant at;
    CalendarDay today;
};

} // namespace core
