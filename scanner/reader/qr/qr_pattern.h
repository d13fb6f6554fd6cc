#pragma once

#include "scanner/reader/image/grid_pattern.h"

namespace scanner::reader {

/// Modules a side of a QR symbol of a version (ISO/IEC 18004, table 1).
constexpr int qrModules(int version) {
    return 17 + 4 * version;
}

/// Finders, separators, timing, alignment patterns, the dark module and the quiet zone of a QR symbol of
/// version 1 to 6 (ISO/IEC 18004, 6.3); another version gives the nearest of these. The format information is
/// left unknown. Made once and kept for the life of the process; any thread.
const GridPattern& qrPattern(int version);

} // namespace scanner::reader
