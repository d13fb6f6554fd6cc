#pragma once

#include "scanner/reader/image/local_contrast.h"
#include "scanner/seen_code.h"

#include <vector>

namespace scanner::reader {

/// Dark patches about the size and shape of a matrix symbol. What is darker than its surroundings (lighter,
/// if `negative`) is closed over gaps of up to 2·reach pixels; each connected patch gives the largest
/// quadrilateral in its hull, clockwise as the picture shows it, in pixels of the map. Largest first, 60 at
/// most. Pure; any thread.
std::vector<Quad> findDarkPatches(const ContrastMap& map, int reach, bool negative);

} // namespace scanner::reader
