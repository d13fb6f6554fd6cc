#include "scanner/reader/image/correlation.h"

namespace scanner::reader {

double correlationOnMap(const ContrastMap& map, const GridPattern& pattern, const Homography& toMap,
                        bool negative) {
    Correlation<int> correlation;
    for (int row = -1; row <= pattern.rows; ++row)
        for (int column = -1; column <= pattern.columns; ++column) {
            const int target = pattern.at(column, row);
            if (target == 0) continue;
            const Point p = toMap.map(column + 0.5, row + 0.5);
            const bool inside = p.x >= 0 && p.y >= 0 && p.x < map.width && p.y < map.height;
            correlation.add(inside ? map.row(static_cast<int>(p.y))[static_cast<int>(p.x)] : 0, target);
        }
    const double value = correlation.value(1);
    return negative ? -value : value;
}

} // namespace scanner::reader
