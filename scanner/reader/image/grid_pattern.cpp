#include "scanner/reader/image/grid_pattern.h"

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
    const int size = 17 + 4 * version;
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

void GridPattern::listPoints() {
    const double half = std::max(columns, rows) / 2.0;
    const auto pointAt = [&](double u, double v, int target) {
        return PatternPoint{static_cast<float>((u - columns / 2.0) / half),
                            static_cast<float>((v - rows / 2.0) / half), static_cast<float>(target)};
    };
    for (int row = -1; row <= rows; ++row)
        for (int column = -1; column <= columns; ++column) {
            const int target = at(column, row);
            if (target == 0) continue;
            middles.push_back(pointAt(column + 0.5, row + 0.5, target));
            for (double dv : {0.25, 0.75})
                for (double du : {0.25, 0.75})
                    quarters.push_back(pointAt(column + du, row + dv, target));
        }
}

const GridPattern& qrPattern(int version) {
    static const std::array<GridPattern, 6> patterns{makeQrPattern(1), makeQrPattern(2), makeQrPattern(3),
                                                     makeQrPattern(4), makeQrPattern(5), makeQrPattern(6)};
    return patterns[static_cast<std::size_t>(std::clamp(version, 1, 6) - 1)];
}

} // namespace scanner::reader
