#pragma once

#include <algorithm>
#include <vector>

namespace scanner::reader {

/// Sum and extremes of some grey values; nothing added: no value is below `least` nor above `most`.
struct Levels {
    float sum = 0, least = 1e9f, most = -1e9f;
    int count = 0;

    static Levels of(float value) { return {value, value, value, 1}; }
    void add(const Levels& other) {
        sum += other.sum;
        least = std::min(least, other.least);
        most = std::max(most, other.most);
        count += other.count;
    }
};

/// For each cell of a grid (row by row) the levels of the square of 2·reach + 1 cells around it, as far as
/// the grid goes.
std::vector<Levels> windowLevels(const std::vector<Levels>& cells, int columns, int rows, int reach);

} // namespace scanner::reader
