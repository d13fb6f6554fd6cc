#include "core/answers/trip_use.h"

#include <algorithm>

namespace core {

TripUse addedBy(const Operation& told, const std::optional<Operation>& before) {
    const Operation none{.launches = 0};
    const Operation& counted = before ? *before : none;
    return {told.hours.value_or(0) - counted.hours.value_or(0),
            static_cast<double>(told.launches - counted.launches)};
}

Use dayWith(const TripUse& added, const std::vector<Use>& known, CalendarDay day) {
    Use sum{day, 0, 0};
    for (const Use& use : known)
        if (use.day == day) sum = use;
    sum.hours = std::max(0.0, sum.hours + added.hours);
    sum.launches = std::max(0.0, sum.launches + added.launches);
    return sum;
}

} // namespace core
