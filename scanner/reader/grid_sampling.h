#pragma once

#include "scanner/reader/homography.h"
#include "scanner/reader/picture_levels.h"

#include <functional>
#include <vector>

namespace scanner::reader {

/// Grey values of a symbol's modules, row by row.
struct GridSamples {
    int columns = 0;
    int rows = 0;
    std::vector<float> values;

    float at(int column, int row) const { return values[row * columns + column]; }
};

using ModuleMapping = std::function<Point(double u, double v)>;

/// Mean of nine points within ± 0.22 of each module's middle; negative symbols come out turned to dark on
/// light.
GridSamples sampleGrid(const PictureLevels& picture, const ModuleMapping& toPicture, double modulePixels,
                       int columns, int rows, bool negative);

/// A way of telling dark from light: mean and middle of a window of modules (0: the whole), sharpened first
/// or not.
struct Threshold {
    int window;
    float sharpening;
};

/// The samples less their threshold, in parts of the local half range: negative is dark, the size says how
/// certain.
GridSamples softModules(const GridSamples& samples, const Threshold& threshold);

} // namespace scanner::reader
