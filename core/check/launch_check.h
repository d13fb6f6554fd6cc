#pragma once

#include "core/check/boat_check.h"

namespace core {

/// A launch check's answer (design: rules 3 to 5).
CheckAnswer judgeLaunch(const BoatCheckInput& input);

} // namespace core
