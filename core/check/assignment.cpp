#include "core/check/assignment.h"

#include "core/check/place_matching.h"

namespace core {

std::vector<int> bestAssignment(const AssignmentTask& task) {
    PlaceMatching matching = matchPlaces(task);
    preferItems(matching, task);
    orderPlaces(matching);
    return matching.itemOf;
}

} // namespace core
