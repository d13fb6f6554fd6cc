#pragma once

#include "core/check/boat_check.h"
#include "core/check/judged_item.h"
#include "core/check/places.h"

#include <vector>

namespace core {

/// The seen items at the places of the boat's lines, as the best assignment has them.
struct LaunchPlaces {
    std::vector<JudgedItem> items; ///< by code
    std::vector<Place> places;
    std::vector<int> itemAt;  ///< per place: index into items, -1 empty
    std::vector<int> placeOf; ///< per item: index into places, -1 not used
    std::vector<bool> counts; ///< per item: it may fill some place
    AssignmentScore score;

    int unfilled(int line) const; ///< empty places of the line
};

/// `input` must outlive the result.
LaunchPlaces fillPlaces(const BoatCheckInput& input);

} // namespace core
