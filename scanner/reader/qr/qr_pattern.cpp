#include "scanner/reader/qr/qr_pattern.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace scanner::reader {
namespace {

void setSquares(GridPattern& pattern, int centreColumn, int centreRow, int reach, int lightRing) {
    for (int dy = -reach; dy <= reach; ++dy)
        for (int dx = -reach; dx <= reach; ++dx) {
            const int column = centreColumn + dx, row = centreRow + dy;
            if (column < 0 || row < 0 || column >= pattern.columns || row >= pattern.rows) continue;
            const int ring = std::max(std::abs(dx), std::abs(dy));
            pattern.set(column, row, ring == lightRing || ring == 4 ? 1 : -1);
        }
}

void setQuietZone(GridPattern& pattern) {
    for (int column = -1; column <= pattern.columns; ++column) {
        pattern.set(column, -1, 1);
        pattern.set(column, pattern.rows, 1);
    }
    for (int row = -1; row <= pattern.rows; ++row) {
        pattern.set(-1, row, 1);
        pattern.set(pattern.columns, row, 1);
    }
}

GridPattern makeQrPattern(int version) {
    const int size = qrModules(version);
    GridPattern pattern(size, size);
    setQuietZone(pattern);
    for (int i = 8; i < size - 8; ++i) {
        pattern.set(i, 6, i % 2 ? 1 : -1);
        pattern.set(6, i, i % 2 ? 1 : -1);
    }
    setSquares(pattern, 3, 3, 4, 2);
    setSquares(pattern, size - 4, 3, 4, 2);
    setSquares(pattern, 3, size - 4, 4, 2);
    if (version > 1) setSquares(pattern, size - 7, size - 7, 2, 1);
    pattern.set(8, size - 8, -1);
    pattern.listPoints();
    return pattern;
}

} // namespace

const GridPattern& qrPattern(int version) {
    static const std::array<GridPattern, 6> patterns{makeQrPattern(1), makeQrPattern(2), makeQrPattern(3),
                                                     makeQrPattern(4), makeQrPattern(5), makeQrPattern(6)};
    return patterns[static_cast<std::size_t>(std::clamp(version, 1, 6) - 1)];
}

} // namespace scanner::reader
