#pragma once

#include "scanner/reader/grid_pattern.h"
#include "scanner/reader/homography.h"
#include "scanner/reader/picture_levels.h"

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
    void warp(const PictureLevels& picture);
    void even(bool negative);
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

Slope slopeAt(const StraightPatch& patch, double x, double y);

/// A place of the pattern in modules, and whether it is light (1) or dark (-1).
struct PatternPoint {
    float u, v, target;
};

/// The middle of each known module, or four points a quarter of a module off it.
std::vector<PatternPoint> pointsOf(const GridPattern& pattern, bool four);

} // namespace scanner::reader
