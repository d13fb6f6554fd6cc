#pragma once

#include "core/check/boat_check.h"

namespace core {

/// A return check's answer (design: rules 6): what went out against what is back. Its lines group what went
/// out by kit type; `best` counts what is back under `required`.
CheckAnswer judgeReturn(const BoatCheckInput& input);

} // namespace core
