#pragma once

#include "core/register/item.h"

#include <vector>

namespace core {

/// Whether the service records alone say that the item is unserviceable: some rule's latest record failed. A
/// passed record of the same rule on a later day puts that right (design: register CSV, `items.state`). Gives
/// the day since.
std::optional<CalendarDay> failedSince(const std::vector<ServiceRecord>& services);

} // namespace core
