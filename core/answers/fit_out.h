#pragma once

#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/register/kit_type.h"

#include <algorithm>
#include <map>
#include <string>
#include <vector>

namespace core {

/// What is wanted of a kit type somewhere, and how much of it has its home there. Written-off kit is not.
struct FitOutLine {
    ManifestLine line; ///< of spares: the kit type and how many
    int there = 0;     ///< at most what is wanted, where things may stand in on more than one line

    int lacking() const { return std::max(0, line.quantity - there); }
};

/// How many things each line gets of `left` (by kit type, folded): each takes of its own kit type first; what
/// is over stands in where a line takes it, from the first such line on. Pure.
std::vector<int> filledLines(const std::vector<ManifestLine>& lines, std::map<std::string, int> left);

/// A boat's manifest and the kit that has its home on the boat, in the manifest's order. A thing fills a line
/// of its own kit type first; what is over stands in where a line takes it, from the first such line on.
/// Things that belong to a person and have no home boat go with their owner, so they count for lines of
/// personal kit on each boat. Pure.
std::vector<FitOutLine> fitOutOfBoat(const Boat& boat, const std::vector<ManifestLine>& lines,
                                     const std::map<std::string, KitType>& kitTypes,
                                     const std::vector<Item>& kit);

/// The kit types of which the club wants spares, by name, and what has its home at any place: spares are the
/// club's, wherever they lie. Pure.
std::vector<FitOutLine> fitOutOfSpares(const std::map<std::string, KitType>& kitTypes,
                                       const std::vector<Item>& kit);

} // namespace core
