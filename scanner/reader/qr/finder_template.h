#pragma once

#include "scanner/reader/image/homography.h"
#include "scanner/reader/image/local_contrast.h"

#include <array>
#include <cstddef>

namespace scanner::reader {

/// A QR finder pattern with its light ring, drawn with axes `right` and `down` (pixels of the map a module)
/// and compared with the map at many places. The map must outlive it.
class FinderTemplate {
public:
    FinderTemplate(const ContrastMap& map, Point right, Point down);

    /// Correlation with the map there, -1 to 1; below 0 for a light finder on dark.
    double scoreAt(Point place) const;

    struct Sought {
        Point place;
        double score; ///< times `sign`, less up to 0.06 for the way
    };
    /// The likeliest place within four modules; the expected one when none scores above 0.2. `sign`: -1 for
    /// light on dark, else 1.
    Sought seek(Point expected, int sign) const;

private:
    static constexpr int reach = 4, count = (2 * reach + 1) * (2 * reach + 1);
    struct Tap {
        int x, y, target;
    };

    const ContrastMap& m_map;
    Point m_right, m_down;
    std::array<Tap, count> m_taps{};
    std::array<std::ptrdiff_t, count> m_offsets{};
    int m_wide = 0, m_high = 0;
};

} // namespace scanner::reader
