#pragma once

#include "scanner/reader/image/straight_patch.h"

#include <vector>

namespace scanner::reader {

/// How a grid of modules lies in the picture.
struct GridFit {
    Homography toPicture;   ///< modules to pixels of the full picture
    double correlation = 0; ///< of the known modules with what is seen there, -1 to 1
};

/// Moves a mapping from modules to a patch by Gauss-Newton steps until the known modules lie where the patch
/// shows them. Gain and bias are free, outliers weigh little.
class GridFitter {
public:
    GridFitter(const StraightPatch& patch, const GridPattern& pattern, const Homography& start);

    /// Affine steps, then steps of the full projection, with one point a module; stops at once (false) when
    /// the start correlates less than `least`.
    bool approach(double least, int affineSteps, int fullSteps);
    /// Steps of the full projection with four points a module, until they gain nothing.
    void refine();

    double correlation() const { return m_bestCorrelation; }
    /// Modules to the patch.
    Homography toPatch() const;

private:
    double correlate(const Homography& toPatch, const std::vector<PatternPoint>& points);
    void step(int parameters, const std::vector<PatternPoint>& points);

    const StraightPatch& m_patch;
    const GridPattern& m_pattern;
    Homography m_inner; ///< module coordinates scaled to -1 to 1, which keeps the normal equations even
    Homography m_current, m_best;
    double m_bestCorrelation = -1;
    std::vector<float> m_values, m_byU, m_byV; ///< seen at each point, and its slopes
    float m_gain = 1, m_bias = 0;
};

/// A whole fit from a first guess of where the symbol lies.
GridFit fitGrid(const PictureLevels& picture, const GridPattern& pattern, const Homography& guess,
                bool negative, double least = 0.2);

} // namespace scanner::reader
