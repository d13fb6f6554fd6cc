#include "core/plan/replacement/in_service.h"

#include <algorithm>

namespace core {

ServiceEnd serviceEndOf(const Item& item) {
    if (item.state == ItemState::Missing) return ServiceEnd::Lost;
    if (item.state != ItemState::WrittenOff) return ServiceEnd::StillHere;
    if (item.isByMistake()) return ServiceEnd::NeverWas;
    return item.why == "lost" ? ServiceEnd::Lost : ServiceEnd::WrittenOff;
}

std::optional<CalendarDay> inServiceFrom(const Item& item) {
    const auto& known = item.firstUse ? item.firstUse : item.registered;
    return known ? std::optional(known->firstDay()) : std::nullopt;
}

CalendarDay inServiceUntil(const Item& item, CalendarDay today) {
    if (serviceEndOf(item) == ServiceEnd::StillHere) return today;
    return std::min(item.since.value_or(today), today);
}

int daysInService(const Item& item, CalendarDay today) {
    const auto from = serviceEndOf(item) == ServiceEnd::NeverWas ? std::nullopt : inServiceFrom(item);
    return from ? std::max(0, daysBetween(*from, inServiceUntil(item, today))) : 0;
}

} // namespace core
