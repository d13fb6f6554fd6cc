#pragma once

#include "scanner/reader/grid_pattern.h"
#include "scanner/reader/homography.h"
#include "scanner/reader/picture_levels.h"

#include <vector>

namespace scanner::reader {

/// How a grid of modules lies in the picture.
struct GridFit {
    Homography toPicture;   ///< modules to pixels of the full picture
    double correlation = 0; ///< of the known modules with what is seen there, -1 to 1
};

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

/// Moves the mapping from modules to the patch by Gauss–Newton steps until the known modules lie where the
/// patch shows them: affine first, then the full projection. Returns the mapping to the picture. Gives up
/// early (returning what it has) when the correlation at the start is less than `least`.
GridFit fitInPatch(const StraightPatch& patch, const GridPattern& pattern, const Homography& start,
                   double least);

/// The same from a first guess of where the symbol lies.
GridFit fitGrid(const PictureLevels& picture, const GridPattern& pattern, const Homography& guess,
                bool negative, double least = 0.2);

} // namespace scanner::reader
