#pragma once

#include "scanner/reader/image/local_contrast.h"
#include "scanner/reader/image/time_budget.h"
#include "scanner/seen_code.h"

#include <array>
#include <cstddef>
#include <limits>
#include <vector>

namespace scanner::reader {

/// How a module lies in the picture: takes module offsets to pixel offsets, {x by x, x by y, y by x, y by y}.
using ModuleShape = std::array<double, 4>;

/// A pixel offset in modules of that shape. Not finite if the shape has no area.
inline Point inModules(const ModuleShape& shape, Point pixels) {
    const double determinant = shape[0] * shape[3] - shape[1] * shape[2];
    return {(shape[3] * pixels.x - shape[1] * pixels.y) / determinant,
            (shape[0] * pixels.y - shape[2] * pixels.x) / determinant};
}

/// A QR finder pattern: three nested squares of 7, 5 and 3 modules.
struct Finder {
    Point centre;
    ModuleShape shape{};   ///< right but for a turn, which one square cannot tell
    double module = 0;     ///< pixels, geometric mean of both directions
    bool negative = false; ///< light on dark
    int rays = 0;          ///< of 24: how many found all three edges
    double contrast = 0;   ///< grey levels between the core and the light ring
};

/// What a search looks at. When the time is spent it ends with those that were found until then.
struct FinderLimits {
    TimeBudget budget{};
    /// Of the places where finders may be, those that most lines tell of.
    std::size_t mostPlaces = std::numeric_limits<std::size_t>::max();
    std::vector<Quad> leftOut{}; ///< in the map's pixels: what lies in them is known

    bool isLeftOut(Point place) const;
};

/// Finder patterns with modules of about 1 to 5 pixels (at the map's scale): 1:1:3:1:1 along rows and
/// columns, then rays. The strongest 150 at most, most certain first: a field of gravel shows thousands of
/// weak ones.
std::vector<Finder> findFinders(const ContrastMap& map, const FinderLimits& limits = {});

} // namespace scanner::reader
