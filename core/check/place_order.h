#pragma once

#include "core/check/place_matching.h"

namespace core {

/// Point 6b: keeps the used items and gives each place in turn the item that comes first, an empty place
/// coming last.
void orderPlaces(PlaceMatching& matching);

} // namespace core
