#pragma once

#include "scanner/grey_picture.h"

#include <vector>

namespace scanner::reader {

/// The picture at full, half, quarter … size, so that sampling with wide steps sees no false detail.
struct PictureLevels {
    std::vector<GreyPicture> levels; ///< never empty; level k is 2^k smaller

    explicit PictureLevels(GreyPicture full);

    const GreyPicture& full() const { return levels.front(); }
    /// The level on which a length of `pixels` is from about 1 to 2 times `wanted` (the full one if it is
    /// shorter).
    int levelFor(double pixels, double wanted) const;
};

} // namespace scanner::reader
