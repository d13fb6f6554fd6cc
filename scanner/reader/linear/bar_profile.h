#pragma once

#include "scanner/reader/image/picture_levels.h"
#include "scanner/reader/linear/bar_regions.h"

#include <vector>

namespace scanner::reader {

/// Grey values along a row of bars, each the mean of a stretch of its bar.
struct BarProfile {
    std::vector<float> values;
    double step = 0; ///< pixels between values
    Point start;     ///< of the first value, in the picture
    Point along;     ///< unit vector
};

/// `offset` and `height` are along the bars in pixels, from the region's middle; `beyond` pixels are added at
/// both ends. Cubic interpolation along the row: linear would blur bars of one pixel.
BarProfile profileOf(const GreyPicture& picture, const BarRegion& region, double offset, double height,
                     double beyond);

} // namespace scanner::reader
