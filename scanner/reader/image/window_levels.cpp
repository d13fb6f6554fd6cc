#include "scanner/reader/image/window_levels.h"

namespace scanner::reader {

std::vector<Levels> windowLevels(const std::vector<Levels>& cells, int columns, int rows, int reach) {
    std::vector<Levels> across(cells.size()), result(cells.size());
    for (int r = 0; r < rows; ++r)
        for (int c = 0; c < columns; ++c)
            for (int k = std::max(0, c - reach); k <= std::min(columns - 1, c + reach); ++k)
                across[r * columns + c].add(cells[r * columns + k]);
    for (int r = 0; r < rows; ++r)
        for (int k = std::max(0, r - reach); k <= std::min(rows - 1, r + reach); ++k)
            for (int c = 0; c < columns; ++c)
                result[r * columns + c].add(across[k * columns + c]);
    return result;
}

} // namespace scanner::reader
