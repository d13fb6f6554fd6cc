#include "core/check/assignment.h"

#include "core/check/place_matching.h"
#include "core/check/place_order.h"
#include "core/check/used_items.h"

namespace core {

std::vector<int> bestAssignment(const AssignmentTask& task) {
    PlaceMatching matching = matchPlaces(task);
    preferItems(matching, task);
    orderPlaces(matching);
    return matching.itemOf;
}

} // namespace core
