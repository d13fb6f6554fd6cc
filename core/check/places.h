#pragma once

#include "core/check/boat_check.h"
#include "core/check/judged_item.h"

#include <vector>

namespace core {

/// One place of a line; on a worn or personal line with people named, that person's.
struct Place {
    int line = 0; ///< index into BoatCheckInput::lines
    const Person* person = nullptr;
};

/// The places of all lines, in the manifest's order and, within a line, in the order the people were named.
std::vector<Place> placesOf(const BoatCheckInput& input);

/// Whether the line's type is worn or personal: one place for each person named.
bool isPerPerson(const BoatCheckInput& input, const ManifestLine& line);

/// Whether the line takes items of that type: its own, or a listed substitute.
bool takes(const ManifestLine& line, const std::string& kitType);

/// Whether the item may fill the place for all that is known but the fit: type, state, rules, and whose it
/// is.
bool mayFillButForFit(const BoatCheckInput& input, const Place& place, const JudgedItem& item);

/// Whether the item counts for the place (design: rules 3).
bool mayFill(const BoatCheckInput& input, const Place& place, const JudgedItem& item);

} // namespace core
