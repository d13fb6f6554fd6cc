#include "scanner/reader/image/grid_sampling.h"

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

/// Sum and extremes of a window's modules.
struct Levels {
    float sum = 0, least = 1e9f, most = -1e9f;
    int count = 0;

    void add(const Levels& other) {
        sum += other.sum;
        least = std::min(least, other.least);
        most = std::max(most, other.most);
        count += other.count;
    }
};

/// Levels of the square window around each module, first along the rows, then along the columns.
std::vector<Levels> windowLevels(const GridSamples& s, int reach) {
    std::vector<Levels> across(s.values.size()), result(s.values.size());
    for (int r = 0; r < s.rows; ++r)
        for (int c = 0; c < s.columns; ++c)
            for (int k = std::max(0, c - reach); k <= std::min(s.columns - 1, c + reach); ++k)
                across[r * s.columns + c].add({s.at(k, r), s.at(k, r), s.at(k, r), 1});
    for (int r = 0; r < s.rows; ++r)
        for (int k = std::max(0, r - reach); k <= std::min(s.rows - 1, r + reach); ++k)
            for (int c = 0; c < s.columns; ++c)
                result[r * s.columns + c].add(across[k * s.columns + c]);
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
        const auto levels = windowLevels(soft, threshold.window / 2);
        for (std::size_t i = 0; i < soft.values.size(); ++i)
            soft.values[i] = softValue(soft.values[i], levels[i]);
        return soft;
    }
    Levels whole;
    for (float value : soft.values)
        whole.add({value, value, value, 1});
    for (float& value : soft.values)
        value = softValue(value, whole);
    return soft;
}

} // namespace scanner::reader
