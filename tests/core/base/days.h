#pragma once

#include "core/base/calendar_day.h"

#include <ostream>
#include <stdexcept>
#include <string>

namespace core {

inline void PrintTo(const CalendarDay& day, std::ostream* out) {
    *out << day.iso();
}

/// `2026-03-14`; throws on anything else, so that a slip in a test is seen.
inline CalendarDay day(const std::string& iso) {
    const auto parsed = CalendarDay::parse(iso);
    if (!parsed) throw std::invalid_argument("no day: " + iso);
    return *parsed;
}

/// `2026-03-14`, `2026-03` or `2026`.
inline PartialDay known(const std::string& text) {
    const auto parsed = PartialDay::parse(text);
    if (!parsed) throw std::invalid_argument("no date: " + text);
    return *parsed;
}

} // namespace core
