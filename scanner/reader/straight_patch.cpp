#include "scanner/reader/straight_patch.h"

#include "scanner/reader/sampling.h"

#include <algorithm>
#include <cmath>

namespace scanner::reader {

StraightPatch::StraightPatch(const PictureLevels& picture, const Homography& guess, int columns, int rows,
                             bool negative)
    : m_guess(guess)
    , m_width((columns + 2 * margin) * pixelsPerModule)
    , m_height((rows + 2 * margin) * pixelsPerModule)
    , m_values(static_cast<std::size_t>(m_width) * m_height) {
    warp(picture);
    even(negative);
    smooth();
}

Homography StraightPatch::fromModules() {
    constexpr double p = pixelsPerModule;
    return {{p, 0, p * margin, 0, p, p * margin, 0, 0, 1}};
}

Homography StraightPatch::toPicture() const {
    constexpr double p = pixelsPerModule;
    return m_guess * Homography{{1 / p, 0, -margin, 0, 1 / p, -margin, 0, 0, 1}};
}

void StraightPatch::warp(const PictureLevels& picture) {
    const Homography& guess = m_guess;
    const auto d = derivativeAt(guess, {m_width / 8.0 - margin, m_height / 8.0 - margin});
    const double step = std::sqrt(std::abs(d[0] * d[3] - d[1] * d[2])) / pixelsPerModule;
    const int level = picture.levelFor(step, 1.0);
    const GreyPicture& source = picture.levels[level];
    const double scale = 1.0 / (1 << level), pitch = 1.0 / pixelsPerModule;
    const auto& m = guess.m;
    for (int y = 0; y < m_height; ++y) {
        const double v = (y + 0.5) * pitch - margin;
        for (int x = 0; x < m_width; ++x) {
            const double u = (x + 0.5) * pitch - margin;
            const double w = scale / (m[6] * u + m[7] * v + m[8]);
            m_values[y * m_width + x] =
                sampleAt(source, (m[0] * u + m[1] * v + m[2]) * w, (m[3] * u + m[4] * v + m[5]) * w);
        }
    }
}

/// Subtracts the middle of the local extremes and divides by half their distance: extremes of five modules'
/// square.
void StraightPatch::even(bool negative) {
    constexpr int p = pixelsPerModule;
    constexpr float floorOfRange = 8; // grey levels; less is noise
    const int columns = m_width / p, rows = m_height / p;
    std::vector<float> low(columns * rows), high(columns * rows), low2(low), high2(high);
    for (int r = 0; r < rows; ++r)
        for (int c = 0; c < columns; ++c) {
            float least = 1e9f, most = -1e9f;
            for (int y = r * p; y < r * p + p; ++y)
                for (int x = c * p; x < c * p + p; ++x) {
                    least = std::min(least, m_values[y * m_width + x]);
                    most = std::max(most, m_values[y * m_width + x]);
                }
            low[r * columns + c] = least;
            high[r * columns + c] = most;
        }
    for (int r = 0; r < rows; ++r)
        for (int c = 0; c < columns; ++c) {
            float least = 1e9f, most = -1e9f;
            for (int k = std::max(0, c - 2); k <= std::min(columns - 1, c + 2); ++k) {
                least = std::min(least, low[r * columns + k]);
                most = std::max(most, high[r * columns + k]);
            }
            low2[r * columns + c] = least;
            high2[r * columns + c] = most;
        }
    const float sign = negative ? -1.0f : 1.0f;
    for (int r = 0; r < rows; ++r)
        for (int c = 0; c < columns; ++c) {
            float least = 1e9f, most = -1e9f;
            for (int k = std::max(0, r - 2); k <= std::min(rows - 1, r + 2); ++k) {
                least = std::min(least, low2[k * columns + c]);
                most = std::max(most, high2[k * columns + c]);
            }
            const float middle = (least + most) / 2, gain = sign / std::max(floorOfRange, (most - least) / 2);
            for (int y = r * p; y < r * p + p; ++y)
                for (int x = c * p; x < c * p + p; ++x)
                    m_values[y * m_width + x] = (m_values[y * m_width + x] - middle) * gain;
        }
}

/// 1-2-1 both ways, so that slopes lead from further off.
void StraightPatch::smooth() {
    std::vector<float> sum(m_width + 2);
    std::vector<float> result(m_values.size());
    for (int y = 0; y < m_height; ++y) {
        const float* above = row(std::max(0, y - 1));
        const float* here = row(y);
        const float* below = row(std::min(m_height - 1, y + 1));
        for (int x = 0; x < m_width; ++x)
            sum[x + 1] = above[x] + 2 * here[x] + below[x];
        sum[0] = sum[1];
        sum[m_width + 1] = sum[m_width];
        float* out = result.data() + y * m_width;
        for (int x = 0; x < m_width; ++x)
            out[x] = (sum[x] + 2 * sum[x + 1] + sum[x + 2]) * (1.0f / 16);
    }
    m_values.swap(result);
}

Slope slopeAt(const StraightPatch& patch, double x, double y) {
    const double px = x > 0.5 ? std::min(x - 0.5, patch.width() - 1.001) : 0.0;
    const double py = y > 0.5 ? std::min(y - 0.5, patch.height() - 1.001) : 0.0;
    const int ix = static_cast<int>(px), iy = static_cast<int>(py);
    const float fx = static_cast<float>(px - ix), fy = static_cast<float>(py - iy);
    const float* top = patch.row(iy) + ix;
    const float* low = patch.row(iy + 1) + ix;
    const float across = top[1] - top[0], acrossLow = low[1] - low[0];
    const float upper = top[0] + fx * across, lower = low[0] + fx * acrossLow;
    return {upper + fy * (lower - upper), across + fy * (acrossLow - across), lower - upper};
}

std::vector<PatternPoint> pointsOf(const GridPattern& pattern, bool four) {
    std::vector<PatternPoint> points;
    for (int row = -1; row <= pattern.rows; ++row)
        for (int column = -1; column <= pattern.columns; ++column) {
            const auto target = static_cast<float>(pattern.at(column, row));
            if (target == 0) continue;
            const float u = static_cast<float>(column) + 0.5f, v = static_cast<float>(row) + 0.5f;
            if (!four) {
                points.push_back({u, v, target});
                continue;
            }
            for (int i = 0; i < 4; ++i)
                points.push_back({u + (i % 2 ? 0.25f : -0.25f), v + (i / 2 ? 0.25f : -0.25f), target});
        }
    return points;
}

} // namespace scanner::reader
