#pragma once

#include "core/base/instant.h"
#include "core/plan/replacement/replacement_plan.h"

#include <string>

namespace app {

/// The order-by days of what runs short, as an iCalendar text (RFC 5545) to take into any calendar: an event
/// of a whole day for each, a late one on the plan's own day. An event keeps its UID from plan to plan (RFC
/// 4122, version 5, of club, kit type and size), so that taking a newer plan in moves it. `madeAt`: when this
/// was written.
std::string orderCalendar(const std::string& club, const core::ReplacementPlan& plan, core::Instant madeAt);

} // namespace app
