#pragma once

#include "scanner/reader/image/grid_fit.h"

#include <array>

namespace scanner::reader {

/// How a grid lies in the picture when the label is bent round a cylinder whose axis runs along the columns
/// (or the rows): the camera sees the point (sin(k·s)/k, t, (1 - cos(k·s))/k), s and t from -1 to 1 over the
/// symbol.
struct BentFit {
    std::array<double, 12> camera{}; ///< 3 × 4, row by row: to pixels of the picture, homogeneous
    double bend = 0;                 ///< k: half the angle that the symbol covers, in radians
    bool alongRows = false;          ///< the axis runs along the rows
    double half = 1;                 ///< half the symbol's side in modules
    double correlation = 0;

    Point map(double u, double v) const;
};

/// Whether bending has helped: with more parameters a hair more agrees anyway.
inline bool isBetter(const BentFit& bent, const GridFit& flat) {
    return bent.correlation >= flat.correlation + 0.01;
}

/// Bends a flat fit in both directions and keeps the better; correlation below the flat fit's when neither
/// helps.
BentFit fitBentGrid(const PictureLevels& picture, const GridPattern& pattern, const GridFit& flat,
                    bool negative);

/// The same from a bent fit on, for a pattern of which more is known. `flat`: about the place.
BentFit refitBentGrid(const PictureLevels& picture, const GridPattern& pattern, const BentFit& start,
                      const Homography& flat, bool negative);

} // namespace scanner::reader
