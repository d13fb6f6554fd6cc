#pragma once

#include "scanner/grey_picture.h"

#include <cstdint>
#include <vector>

namespace scanner::reader {

/// How much each pixel is lighter than its surroundings, clamped to ±127; width × height, rows without
/// padding.
struct ContrastMap {
    int width = 0;
    int height = 0;
    std::vector<std::int8_t> values;

    const std::int8_t* row(int y) const { return values.data() + static_cast<std::ptrdiff_t>(y) * width; }
};

/// The picture smoothed by the binomial 1-2-1 in both directions (sigma 0.7 pixels).
GreyPicture smoothed(const GreyPicture& picture);

/// Half as wide and high, each pixel the mean of four. Empty when a side would be under 16.
GreyPicture halved(const GreyPicture& picture);

/// `picture` less its mean over a square of 2·radius + 1 pixels.
ContrastMap contrastOf(const GreyPicture& picture, int radius);

/// Rows become columns.
ContrastMap transposed(const ContrastMap& map);

} // namespace scanner::reader
