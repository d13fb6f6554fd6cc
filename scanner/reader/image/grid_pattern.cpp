#include "scanner/reader/image/grid_pattern.h"

#include <algorithm>

namespace scanner::reader {

void GridPattern::listPoints() {
    middles.clear();
    quarters.clear();
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

} // namespace scanner::reader
