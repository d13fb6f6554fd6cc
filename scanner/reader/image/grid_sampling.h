#pragma once

#include "scanner/reader/image/homography.h"
#include "scanner/reader/image/picture_levels.h"
#include "scanner/reader/image/sampling.h"

#include <vector>

namespace scanner::reader {

/// Grey values of a symbol's modules, row by row.
struct GridSamples {
    int columns = 0;
    int rows = 0;
    std::vector<float> values;

    float at(int column, int row) const { return values[row * columns + column]; }
};

/// Mean of nine points within ± 0.22 of each module's middle; negative symbols come out turned to dark on
/// light. `toPicture` maps (u, v) in modules to a Point of the full picture.
template <class Mapping>
GridSamples sampleGrid(const PictureLevels& picture, const Mapping& toPicture, double modulePixels,
                       int columns, int rows, bool negative) {
    const int level = picture.levelFor(modulePixels, 4.0);
    const GreyPicture& source = picture.levels[level];
    const double scale = 1.0 / (1 << level);
    GridSamples samples{columns, rows, std::vector<float>(static_cast<std::size_t>(columns) * rows)};
    for (int r = 0; r < rows; ++r)
        for (int c = 0; c < columns; ++c) {
            float sum = 0;
            for (int i = 0; i < 9; ++i) {
                const Point p = toPicture(c + 0.5 + 0.22 * (i % 3 - 1), r + 0.5 + 0.22 * (i / 3 - 1));
                sum += sampleAt(source, p.x * scale, p.y * scale);
            }
            samples.values[r * columns + c] = negative ? 255 - sum / 9 : sum / 9;
        }
    return samples;
}

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
