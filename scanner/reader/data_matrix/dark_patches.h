#pragma once

#include "scanner/reader/image/local_contrast.h"
#include "scanner/seen_code.h"

#include <array>
#include <vector>

namespace scanner::reader {

using Quad = std::array<Point, 4>; ///< clockwise as the picture shows it

/// Dark patches about the size and shape of a matrix symbol. What is darker than its surroundings (lighter,
/// if `negative`) is closed over gaps of up to 2·reach pixels; each connected patch gives the largest
/// quadrilateral in its hull. Largest first, 60 at most.
std::vector<Quad> findDarkPatches(const ContrastMap& map, int reach, bool negative);

} // namespace scanner::reader
