#pragma once

#include "scanner/grey_picture.h"
#include "scanner/reader/image/homography.h"
#include "scanner/reader/image/picture_levels.h"

namespace scanner::reader {

/// Fills `out` (`width` × `height`, row by row) with grey values between pixels, linear: the middle of each
/// place is taken to the picture. Outside it its nearest pixel; the picture is not empty.
void sampleRaster(const GreyPicture& picture, const Homography& toPicture, int width, int height, float* out);

/// The same from the level whose pixels lie about as far apart as the places in the middle; `toPicture` is to
/// pixels of the full picture.
void sampleRaster(const PictureLevels& picture, const Homography& toPicture, int width, int height,
                  float* out);

} // namespace scanner::reader
