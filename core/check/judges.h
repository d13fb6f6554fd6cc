#pragma once

#include "core/check/boat_check.h"

namespace core {

/// A launch check's answer (design: rules 3 to 5).
CheckAnswer judgeLaunch(const BoatCheckInput& input);

/// A return check's answer (design: rules 6): what went out against what is back. Its lines group what went
/// out by kit type; `best` counts what is back under `required`.
CheckAnswer judgeReturn(const BoatCheckInput& input);

/// A stocktake's answer: what the register has at a place against what was seen there. `missing` (a stop,
/// with the item's code) for each item not seen; `extra` for each that has its home elsewhere, with that
/// home. Pure.
CheckAnswer judgeStocktake(const BoatCheckInput& input);

} // namespace core
