#pragma once

#include <vector>

namespace core {

/// The assignment of seen items to places that is best in the order of the design, rules 3, over small
/// integers.

/// An item that may fill the place.
struct AssignmentChoice {
    int item = 0;         ///< index into AssignmentTask::items
    bool ownType = false; ///< of the line's own kit type, not a substitute
};

struct AssignmentPlace {
    bool required = false;
    std::vector<AssignmentChoice> choices; ///< each item at most once, in any order
};

struct AssignmentItem {
    bool ownBoat = false; ///< its home is this boat, or no boat
    int due = 0;          ///< number of its due day; 3652059 without one
};

/// Items in the order of their codes; places in the manifest's order and, within a line, in that of the
/// people.
struct AssignmentTask {
    std::vector<AssignmentItem> items;
    std::vector<AssignmentPlace> places;
};

/// For each place the item that fills it, or -1. Exact for any input, and the same whatever the order of
/// choices: most required places; most other places; most of the own type; most of the own boat; least sum of
/// due days; the used items that come first; then place by place the item that comes first, an empty place
/// coming last. Up to a million places; time grows about with places × choices in practice.
std::vector<int> bestAssignment(const AssignmentTask& task);

} // namespace core
