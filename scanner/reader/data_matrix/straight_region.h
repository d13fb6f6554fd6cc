#pragma once

#include "scanner/reader/image/homography.h"
#include "scanner/reader/image/picture_levels.h"
#include "scanner/seen_code.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace scanner::reader {

/// A region of the picture (a label, a dark patch) laid straight into a square raster of grey values, with a
/// margin around it.
class StraightRegion {
public:
    static constexpr int across = 68, margin = 6; ///< places along the region, and around it
    static constexpr int side = across + 2 * margin;

    /// `region`: clockwise, in pixels of the full picture. Light print is turned to dark if `negative`.
    /// Nothing when three of the corners lie on a line.
    static std::optional<StraightRegion> of(const PictureLevels& picture, const Quad& region, bool negative);

    const float* row(int y) const { return m_values.data() + y * side; }
    /// Between places, linear; (0.5, 0.5) is the middle of the first.
    float at(double x, double y) const {
        const double px = std::clamp(x - 0.5, 0.0, side - 1.01), py = std::clamp(y - 0.5, 0.0, side - 1.01);
        const int ix = static_cast<int>(px), iy = static_cast<int>(py);
        const auto fx = static_cast<float>(px - ix), fy = static_cast<float>(py - iy);
        const float *upper = row(iy) + ix, *lower = upper + side;
        const float above = upper[0] + fx * (upper[1] - upper[0]),
                    below = lower[0] + fx * (lower[1] - lower[0]);
        return above + fy * (below - above);
    }
    /// Rows become columns.
    StraightRegion transposed() const;
    Point toPicture(Point place) const { return m_toPicture.map(place); }

private:
    StraightRegion(const Homography& toPicture);

    Homography m_toPicture;
    std::vector<float> m_values;
};

} // namespace scanner::reader
