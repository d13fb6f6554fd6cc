#pragma once

#include "core/check/boat_check.h"

namespace core {

/// A stocktake's answer: what the register has at a place against what was seen there. `missing` (a stop,
/// with the item's code) for each item not seen; `extra` for each that has its home elsewhere, with that
/// home. Pure.
CheckAnswer judgeStocktake(const BoatCheckInput& input);

} // namespace core
