#pragma once

#include "scanner/reader/data_matrix/straight_region.h"

#include <vector>

namespace scanner::reader {

/// A long straight edge about along the columns of a straight region, in its places.
struct StraightEdge {
    float score = 0;         ///< how long and how clear it is
    float at = 0, slope = 0; ///< at half height, and how far it leans over the whole
    int from = 0, to = 0;    ///< rows

    double placeAt(double row) const {
        constexpr double side = StraightRegion::side;
        return at + slope * (row - side / 2) / side;
    }
};

inline constexpr int shortestEdge = 16; ///< places

/// Four at most, best first, none beside a better one. Dirt that hides a part of an edge shortens it or
/// costs some of its score.
struct StraightEdges {
    std::vector<StraightEdge> lightOnLeft, lightOnRight;
};
StraightEdges straightEdgesIn(const StraightRegion& region);

} // namespace scanner::reader
