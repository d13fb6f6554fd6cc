#pragma once

#include "core/register/location.h"

#include <optional>
#include <string>
#include <string_view>

namespace core {

/// What a check is for: a boat goes out, a boat came back, or a place is counted.
enum class Phase { Launch, Return, Stocktake };

const char* nameOf(Phase phase);                   ///< "launch", "return", "stocktake"
Phase phaseOf(const std::string& name);            ///< a launch for any other text
std::optional<Phase> phaseNamed(std::string_view); ///< empty for any other text

/// A stocktake is of a place, the other checks are of a boat.
Location locationOf(Phase phase, std::string name);

} // namespace core
