#pragma once

#include "core/check/assignment.h"

#include <cstdint>
#include <vector>

namespace core {

/// A matching that is best in places and own types, with what proves it: every other best one uses the same
/// tight choices and covers the same needed places and items. -1 stands for "none".
struct PlaceMatching {
    std::vector<int> itemOf;                   ///< per place
    std::vector<int> placeOf;                  ///< per item
    std::vector<std::vector<int>> tightItems;  ///< per place: items it may hold in some best matching, rising
    std::vector<std::vector<int>> tightPlaces; ///< per item, the same the other way round
    std::vector<bool> placeNeeded;             ///< filled in every best matching
    std::vector<bool> itemNeeded;              ///< used in every best matching
};

/// Points 1 to 3 of the assignment's order.
PlaceMatching matchPlaces(const AssignmentTask& task);

/// Point 6b: keeps the used items and gives each place in turn the item that comes first, an empty place
/// coming last.
void orderPlaces(PlaceMatching& matching);

/// Points 4 to 6a: exchanges used items for unused ones until the used set is the best of those that fill the
/// same places equally well.
void preferItems(PlaceMatching& matching, const AssignmentTask& task);

} // namespace core
