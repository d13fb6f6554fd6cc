#include "scanner/reader/image/grid_sampling.h"

#include "scanner/reader/image/window_levels.h"

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

float softValue(float value, const Levels& levels) {
    constexpr float floorOfRange = 6; // grey levels
    const float middle = (levels.least + levels.most) / 2,
                mean = levels.sum / static_cast<float>(levels.count);
    return (value - (middle + mean) / 2) / std::max(floorOfRange, (levels.most - levels.least) / 2);
}

} // namespace

GridSamples softModules(const GridSamples& samples, const Threshold& threshold) {
    GridSamples soft = threshold.sharpening > 0 ? sharpened(samples, threshold.sharpening) : samples;
    if (threshold.window > 0) {
        std::vector<Levels> modules;
        modules.reserve(soft.values.size());
        for (float value : soft.values)
            modules.push_back(Levels::of(value));
        const auto levels = windowLevels(modules, soft.columns, soft.rows, threshold.window / 2);
        for (std::size_t i = 0; i < soft.values.size(); ++i)
            soft.values[i] = softValue(soft.values[i], levels[i]);
        return soft;
    }
    Levels whole;
    for (float value : soft.values)
        whole.add(Levels::of(value));
    for (float& value : soft.values)
        value = softValue(value, whole);
    return soft;
}

} // namespace scanner::reader
