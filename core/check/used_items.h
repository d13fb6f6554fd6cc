#pragma once

#include "core/check/place_matching.h"

namespace core {

/// Points 4 to 6a: exchanges used items for unused ones until the used set is the best of those that fill the
/// same places equally well.
void preferItems(PlaceMatching& matching, const AssignmentTask& task);

} // namespace core
