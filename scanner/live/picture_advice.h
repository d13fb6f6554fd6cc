#pragma once

#include "scanner/grey_picture.h"
#include "scanner/seen_code.h"

#include <cstdint>
#include <vector>

namespace scanner {

/// What the person at the camera could change so that more tags are read.
enum class PictureAdvice : std::uint8_t {
    None,
    TooDark,    ///< more light
    Glare,      ///< a light is mirrored: tilt the tag or move the lamp
    OutOfFocus, ///< hold still, or further off if the camera cannot focus so near
    TooFar,     ///< nearer: a tag is in view whose modules cover too few pixels
};

/// The one advice that matters most, or None. `seen` is what was read in this picture: where something was
/// read, light and focus are good enough. About 2 ms at 720p, 4 at most: not for every frame. Pure; any
/// thread; pictures of any size.
PictureAdvice adviseOn(GreyView picture, const std::vector<SeenCode>& seen = {});

} // namespace scanner
