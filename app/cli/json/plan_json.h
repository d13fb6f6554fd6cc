#pragma once

#include "core/plan/lasting/kit_life.h"
#include "core/plan/make_ready/make_ready.h"
#include "core/plan/replacement/replacement_plan.h"

#include <string>
#include <vector>

namespace app {

// Documents of the plans; the rules of json_out.h hold.

std::string makeReadyJson(const core::MakeReadyPlan& plan);

/// Chances to ten digits; a cost by the calendar year of its order-by day.
std::string replacementJson(const core::ReplacementPlan& plan);

/// How long kit lasts: curves by age in days, fits in years of 365.25 days.
std::string lastingJson(const std::vector<core::KitLife>& lives, core::CalendarDay today);

} // namespace app
