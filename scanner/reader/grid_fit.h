#pragma once

#include "scanner/reader/straight_patch.h"

namespace scanner::reader {

/// How a grid of modules lies in the picture.
struct GridFit {
    Homography toPicture;   ///< modules to pixels of the full picture
    double correlation = 0; ///< of the known modules with what is seen there, -1 to 1
};

/// Moves the mapping from modules to the patch by Gauss–Newton steps until the known modules lie where the
/// patch shows them: affine first, then the full projection. Returns the mapping to the picture. Gives up
/// early (returning what it has) when the correlation at the start is less than `least`.
GridFit fitInPatch(const StraightPatch& patch, const GridPattern& pattern, const Homography& start,
                   double least);

/// The same from a first guess of where the symbol lies.
GridFit fitGrid(const PictureLevels& picture, const GridPattern& pattern, const Homography& guess,
                bool negative, double least = 0.2);

} // namespace scanner::reader
