#pragma once

#include "scanner/reader/image/homography.h"
#include "scanner/reader/image/picture_levels.h"
#include "scanner/reader/image/sampling.h"
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
        constexpr double first = 0.5, last = side - 0.51; // so that four places are around it
        return sampleInside(m_values.data(), side, static_cast<float>(std::clamp(x, first, last)),
                            static_cast<float>(std::clamp(y, first, last)));
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
