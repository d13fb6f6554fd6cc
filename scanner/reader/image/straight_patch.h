#pragma once

#include "scanner/reader/image/grid_pattern.h"
#include "scanner/reader/image/homography.h"
#include "scanner/reader/image/picture_levels.h"

#include <algorithm>
#include <vector>

namespace scanner::reader {

/// A symbol's surroundings straightened by a first guess and evened out: about -1 where dark, 1 where light,
/// whatever the lighting. Fits are made in it, because there a step is a quarter of a module in every
/// direction.
class StraightPatch {
public:
    static constexpr int pixelsPerModule = 4;
    static constexpr int margin = 3; ///< modules around the symbol

    /// `guess` takes modules of a symbol of `columns` × `rows` to the picture.
    StraightPatch(const PictureLevels& picture, const Homography& guess, int columns, int rows,
                  bool negative);

    int width() const { return m_width; }
    int height() const { return m_height; }
    const float* row(int y) const { return m_values.data() + y * m_width; }
    /// From the guess's modules to the patch, and from the patch to the picture.
    static Homography fromModules();
    Homography toPicture() const;

private:
    void evenOut(bool negative);
    void smooth();

    Homography m_guess;
    int m_width;
    int m_height;
    std::vector<float> m_values;
};

/// Value and slope of the patch at one place, in its pixels.
struct Slope {
    float value, dx, dy;
};

inline Slope slopeAt(const StraightPatch& patch, float x, float y) {
    // Written so that not-a-number falls on the first pixel too.
    const float px = x > 0.5f ? std::min(x - 0.5f, static_cast<float>(patch.width()) - 1.01f) : 0.0f;
    const float py = y > 0.5f ? std::min(y - 0.5f, static_cast<float>(patch.height()) - 1.01f) : 0.0f;
    const int ix = static_cast<int>(px), iy = static_cast<int>(py);
    const float fx = px - static_cast<float>(ix), fy = py - static_cast<float>(iy);
    const float* top = patch.row(iy) + ix;
    const float* low = patch.row(iy + 1) + ix;
    const float across = top[1] - top[0], acrossLow = low[1] - low[0];
    const float upper = top[0] + fx * across, lower = low[0] + fx * acrossLow;
    return {upper + fy * (lower - upper), across + fy * (acrossLow - across), lower - upper};
}

} // namespace scanner::reader
