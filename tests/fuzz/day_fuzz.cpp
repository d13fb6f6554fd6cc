// libFuzzer target: any bytes as a day, a month, a year or an instant. What is accepted is written as it was
// read.

#include "core/base/calendar_day.h"
#include "core/base/instant.h"

#include <cstdint>
#include <cstdlib>

namespace {

void require(bool holds) {
    if (!holds) std::abort();
}

void checkDay(std::string_view text) {
    const auto day = core::PartialDay::parse(text);
    require(core::CalendarDay::parse(text).has_value() == (day && day->isExact()));
    if (!day) return;
    require(day->text() == text);
    require(day->firstDay() <= day->lastDay());
    require(core::CalendarDay::parse(day->lastDay().iso()) == day->lastDay());
    for (int months : {-1200, -1, 0, 1, 13, 1200}) {
        const core::CalendarDay moved = day->firstDay().plusMonths(months);
        require(core::CalendarDay::from(moved.year(), moved.month(), moved.day()) == moved);
    }
}

void checkInstant(std::string_view text) {
    const auto instant = core::Instant::parse(text);
    if (!instant) return;
    const auto again = core::Instant::parse(instant->iso());
    require(again == instant);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(bytes), size);
    checkDay(text);
    checkInstant(text);
    return 0;
}
