#pragma once

#include <cstdint>
#include <vector>

namespace scanner::reader {

/// A place of a pattern, from -1 to 1 along its longer side, and whether it is light (1) or dark (-1).
struct PatternPoint {
    float u, v, target;
};

/// What is known of a matrix symbol before it is read: the modules that are the same in every symbol of its
/// size, with one module of the quiet zone around.
struct GridPattern {
    int columns = 0;
    int rows = 0;
    std::vector<std::int8_t> modules; ///< (rows + 2) × (columns + 2): 1 light, -1 dark, 0 not known

    GridPattern(int c, int r)
        : columns(c)
        , rows(r)
        , modules(static_cast<std::size_t>(c + 2) * (r + 2), 0) {}

    /// Column -1 to columns, row -1 to rows.
    std::int8_t at(int column, int row) const { return modules[(row + 1) * (columns + 2) + column + 1]; }
    void set(int column, int row, int value) {
        modules[(row + 1) * (columns + 2) + column + 1] = static_cast<std::int8_t>(value);
    }

    std::vector<PatternPoint> middles;  ///< of all known modules
    std::vector<PatternPoint> quarters; ///< four points in each, a quarter of a module off its middle
    void listPoints();                  ///< fills both anew; call it when all modules are set
};

} // namespace scanner::reader
