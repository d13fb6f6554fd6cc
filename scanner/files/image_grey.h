#pragma once

#include "scanner/grey_picture.h"

#include <cstdint>

class QImage;

namespace scanner {

/// Luma of a colour, 0 to 255 each: (77 R + 150 G + 29 B) / 256, the weights of ITU-R BT.601 in 256ths.
inline std::uint8_t lumaOf(int red, int green, int blue) {
    return static_cast<std::uint8_t>((77 * red + 150 * green + 29 * blue + 128) >> 8);
}

/// Luma of each pixel of a picture in any format of Qt's. Clear pixels are seen on white paper. A null
/// picture gives an empty one. Any thread.
GreyPicture greyOf(const QImage& image);

} // namespace scanner
