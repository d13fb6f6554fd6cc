#pragma once

#include "scanner/reader/image/picture_levels.h"
#include "scanner/seen_code.h"

#include <vector>

namespace scanner::reader {

/// Where a Data Matrix may lie: clockwise, the upper and right sides alternate.
struct MatrixPlace {
    Quad corners;           ///< pixels of the full picture
    std::vector<int> sizes; ///< modules a side, likeliest first
    double share;           ///< of the change along the two sides that alternating explains, 0 to 1
};

/// Places in a region that is larger than the symbol or off at a side: a label, or a dark patch in which dirt
/// or a narrow gap joined the symbol with something else. Two long straight edges, dark inside and light
/// outside, meet at a corner as the solid sides do; two sides alternate. `region`: clockwise, about a
/// rectangle in the plane. Clearest edges first. Pure; any thread.
std::vector<MatrixPlace> matrixPlacesIn(const PictureLevels& picture, const Quad& region, bool negative);

} // namespace scanner::reader
