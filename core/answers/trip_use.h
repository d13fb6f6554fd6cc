#pragma once

#include "core/register/item.h"
#include "core/register/operation.h"

#include <optional>
#include <vector>

namespace core {

/// Hours and launches that a crew's account of its trip adds to what was counted already.
struct TripUse {
    double hours = 0;
    double launches = 0;

    bool isNone() const { return hours == 0 && launches == 0; }
};

/// What `told` adds: all of it, or, when the trip was told `before`, the difference, which may be below
/// nothing.
TripUse addedBy(const Operation& told, const std::optional<Operation>& before);

/// The day's sum of an item's use with that added; never below nothing.
Use dayWith(const TripUse& added, const std::vector<Use>& known, CalendarDay day);

} // namespace core
