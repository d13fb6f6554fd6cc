#include "scanner/reader/grid_sampling.h"

#include "scanner/reader/sampling.h"

#include <algorithm>
#include <cmath>

namespace scanner::reader {
namespace {

/// Each module strengthened against the mean of its four neighbours, which blur has mixed into it.
GridSamples sharpened(const GridSamples& samples, float amount) {
    GridSamples result = samples;
    for (int r = 0; r < samples.rows; ++r)
        for (int c = 0; c < samples.columns; ++c) {
            const float around =
                samples.at(std::max(0, c - 1), r) + samples.at(std::min(samples.columns - 1, c + 1), r) +
                samples.at(c, std::max(0, r - 1)) + samples.at(c, std::min(samples.rows - 1, r + 1));
            result.values[r * samples.columns + c] += amount * (samples.at(c, r) - around / 4);
        }
    return result;
}

struct Levels {
    float mean, least, most;
};

Levels levelsOf(const GridSamples& s, int left, int top, int right, int bottom) {
    Levels levels{0, 1e9f, -1e9f};
    for (int r = top; r < bottom; ++r)
        for (int c = left; c < right; ++c) {
            const float value = s.at(c, r);
            levels.mean += value;
            levels.least = std::min(levels.least, value);
            levels.most = std::max(levels.most, value);
        }
    levels.mean /= static_cast<float>((right - left) * (bottom - top));
    return levels;
}

} // namespace

GridSamples sampleGrid(const PictureLevels& picture, const ModuleMapping& toPicture, double modulePixels,
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

GridSamples softModules(const GridSamples& samples, const Threshold& threshold) {
    constexpr float floorOfRange = 6; // grey levels
    const GridSamples source = threshold.sharpening > 0 ? sharpened(samples, threshold.sharpening) : samples;
    GridSamples soft = source;
    const int reach = threshold.window / 2;
    Levels levels = levelsOf(source, 0, 0, source.columns, source.rows);
    for (int r = 0; r < source.rows; ++r)
        for (int c = 0; c < source.columns; ++c) {
            if (threshold.window > 0)
                levels =
                    levelsOf(source, std::max(0, c - reach), std::max(0, r - reach),
                             std::min(source.columns, c + reach + 1), std::min(source.rows, r + reach + 1));
            const float middle = (levels.least + levels.most) / 2, half = (levels.most - levels.least) / 2;
            soft.values[r * source.columns + c] =
                (source.at(c, r) - (middle + levels.mean) / 2) / std::max(floorOfRange, half);
        }
    return soft;
}

} // namespace scanner::reader
