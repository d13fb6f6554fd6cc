#pragma once

#include "scanner/reader/data_matrix/straight_region.h"

#include <vector>

namespace scanner::reader {

/// How two neighbouring sides of a quadrilateral alternate.
struct AlternatingSides {
    int first = 0;    ///< the sides after corner `first` and after the next one
    double share = 0; ///< of what changes along them that the rhythm of the likeliest size explains, 0 to 1
    std::vector<int> sizes; ///< modules a side, likeliest first, and none much less likely
};

/// The neighbouring sides that alternate most regularly with the modules of a Data Matrix; `corners` in
/// places of the region, clockwise. Just within and without each side is looked at, as the corners may be off
/// by a module.
AlternatingSides alternatingSides(const StraightRegion& region, const Quad& corners);

} // namespace scanner::reader
