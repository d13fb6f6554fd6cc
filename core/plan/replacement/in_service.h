#pragma once

#include "core/register/item.h"

#include <optional>

namespace core {

/// How an item's service ended, as far as the record says.
enum class ServiceEnd {
    StillHere,  ///< serviceable or unserviceable
    Lost,       ///< missing, or written off as lost
    WrittenOff, ///< for another reason, or none given
    NeverWas,   ///< registered by mistake: it never was in service
};

ServiceEnd serviceEndOf(const Item& item);

/// From its first use, else the day it was registered (a month or year is its first day). Empty: neither is
/// known.
std::optional<CalendarDay> inServiceFrom(const Item& item);

/// The last day of its service: the day it became missing or was written off, else `today`, also when that
/// day is not known or still to come.
CalendarDay inServiceUntil(const Item& item, CalendarDay today);

/// Whole days in service until `today`; 0 when its beginning is not known or still to come, and for what was
/// registered by mistake.
int daysInService(const Item& item, CalendarDay today);

} // namespace core
