#pragma once

#include "scanner/reader/image/homography.h"
#include "scanner/reader/qr/finder_search.h"

#include <vector>

namespace scanner::reader {

/// Three finders that may be the corners of one QR symbol.
struct FinderTriple {
    int corner = 0, right = 0, below = 0; ///< indices of the finders at top left, top right, bottom left
    double distance = 14;                 ///< between finder centres in modules, as their shapes tell
    double doubt = 0;                     ///< how far they are from a square; 0 is perfect
};

/// Consistent triples, least doubtful first. Each is judged in its own finders' frames, so tilt does not
/// count.
std::vector<FinderTriple> findTriples(const std::vector<Finder>& finders);

/// First guess of the mapping for a symbol of `modules` modules a side.
std::optional<Homography> mappingOf(const std::vector<Finder>& finders, const FinderTriple& triple,
                                    int modules);

} // namespace scanner::reader
