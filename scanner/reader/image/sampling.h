#pragma once

#include "scanner/grey_picture.h"

#include <algorithm>
#include <cstddef>

namespace scanner::reader {

/// Grey value between pixel centres, linear; outside the picture its nearest pixel. The picture is not empty.
inline float sampleAt(const GreyPicture& picture, double x, double y) {
    // Written so that not-a-number falls on the first pixel too.
    const double px = x > 0.5 ? std::min(x - 0.5, static_cast<double>(picture.width) - 1.0) : 0.0;
    const double py = y > 0.5 ? std::min(y - 0.5, static_cast<double>(picture.height) - 1.0) : 0.0;
    const int ix = std::min(static_cast<int>(px), std::max(0, picture.width - 2));
    const int iy = std::min(static_cast<int>(py), std::max(0, picture.height - 2));
    const float fx = static_cast<float>(px - ix), fy = static_cast<float>(py - iy);
    const int right = picture.width > 1 ? 1 : 0;
    const std::uint8_t* top = picture.row(iy) + ix;
    const std::uint8_t* low = picture.height > 1 ? top + picture.width : top;
    const float upper = static_cast<float>(top[0]) + fx * static_cast<float>(top[right] - top[0]);
    const float lower = static_cast<float>(low[0]) + fx * static_cast<float>(low[right] - low[0]);
    return upper + fy * (lower - upper);
}

/// Value of rows of numbers between the middles of its cells, linear, where all four cells around the place
/// are known to be there. Rows lie `width` numbers apart.
template <class Number>
float sampleInside(const Number* values, int width, float x, float y) {
    const float px = x - 0.5f, py = y - 0.5f;
    const int ix = static_cast<int>(px), iy = static_cast<int>(py);
    const float fx = px - static_cast<float>(ix), fy = py - static_cast<float>(iy);
    const Number* top = values + static_cast<std::ptrdiff_t>(iy) * width + ix;
    const Number* low = top + width;
    const float upper = static_cast<float>(top[0]) + fx * static_cast<float>(top[1] - top[0]);
    const float lower = static_cast<float>(low[0]) + fx * static_cast<float>(low[1] - low[0]);
    return upper + fy * (lower - upper);
}

} // namespace scanner::reader
