#pragma once

#include "scanner/reader/image/grid_fit.h"
#include "scanner/reader/image/picture_levels.h"

#include <vector>

namespace scanner::reader {

/// Fits of a symbol of that version in a dark patch whose corners may be off by some modules: dirt hides one,
/// the fourth has no finder. The likeliest turn first, two at most; none when the patch looks like no symbol.
std::vector<GridFit> fitQrInPatch(const PictureLevels& picture, int version, const Quad& patch,
                                  bool negative);

} // namespace scanner::reader
