#pragma once

#include "core/register/item.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// The state of an item apart from being missing: what it is again once it is found.
struct StateApart {
    ItemState state = ItemState::Serviceable;
    std::optional<CalendarDay> since;
    std::string why;
    bool byFailedRecord = false; ///< withdrawn by a failed record and by nothing else
    std::string rule;            ///< whose record gave it that state; empty: none did
};

/// Whether the service records alone say that the item is unserviceable: some rule's latest record failed. A
/// passed record of the same rule on a later day puts that right (design: register CSV, `items.state`). Gives
/// the earliest of those that failed, or its day.
std::optional<ServiceRecord> failedRecord(const std::vector<ServiceRecord>& services);
std::optional<CalendarDay> failedSince(const std::vector<ServiceRecord>& services);

} // namespace core
