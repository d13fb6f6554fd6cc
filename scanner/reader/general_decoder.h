#pragma once

#include "scanner/grey_picture.h"
#include "scanner/reader/image/grid_sampling.h"
#include "scanner/seen_code.h"

#include <optional>
#include <vector>

/// The general-purpose decoder (ZXing), used only in the ways that cannot end the process. The one file that
/// knows it.
namespace scanner::reader {

enum class Effort { Quick, Thorough };

/// Matrix symbols (QR, Data Matrix) of a whole picture. Thorough also tries harder, quarter turns and a
/// smaller copy.
std::vector<SeenCode> decodeMatrixSymbols(GreyView picture, Effort effort);

/// One linear symbol of an upright strip (bars standing, read left to right or right to left), already
/// binary: dark is 0, light is 255. One symbol, no turning, no shrinking: with these ZXing 1.4.0 aborts on
/// ordinary close-ups.
std::optional<SeenCode> decodeLinearStrip(GreyView strip);

/// A matrix symbol given as its modules (negative: dark), drawn clean and decoded. Corners are left to the
/// caller.
std::optional<SeenCode> decodeCleanGrid(const GridSamples& modules, Symbology symbology);

} // namespace scanner::reader
