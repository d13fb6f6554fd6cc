#pragma once

#include "core/plan/replacement_plan.h"

#include <string>

namespace app {

// Documents of the plans; the rules of json_out.h hold.

/// Chances to ten digits; a cost by the calendar year of its order-by day.
std::string replacementJson(const core::ReplacementPlan& plan);

} // namespace app
