#include "scanner/reader/image/straight_patch.h"

#include "scanner/reader/image/sampling.h"
#include "scanner/reader/image/window_levels.h"

#include <algorithm>
#include <cmath>

namespace scanner::reader {
namespace {

std::array<float, 9> toFloats(const Homography& h) {
    std::array<float, 9> m{};
    std::transform(h.m.begin(), h.m.end(), m.begin(), [](double value) { return static_cast<float>(value); });
    return m;
}

/// Whether all of a patch shows pixels of the picture, so that sampling need not look out for its edges.
bool liesInside(const Homography& h, double width, double height, const GreyPicture& picture) {
    for (const Point& p : cornersOf(h, width, height))
        if (!(p.x > 2 && p.y > 2 && p.x < picture.width - 3 && p.y < picture.height - 3)) return false;
    // Behind the camera a corner can look inside while the middle is not.
    const double w = h.m[8];
    return w > 0 && w + h.m[6] * width > 0 && w + h.m[7] * height > 0 &&
           w + h.m[6] * width + h.m[7] * height > 0;
}

} // namespace

StraightPatch::StraightPatch(const PictureLevels& picture, const Homography& guess, int columns, int rows,
                             bool negative)
    : m_guess(guess)
    , m_width((columns + 2 * margin) * pixelsPerModule)
    , m_height((rows + 2 * margin) * pixelsPerModule)
    , m_values(static_cast<std::size_t>(m_width) * m_height) {
    warp(picture);
    evenOut(negative);
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
    const double step =
        modulePixelsAt(m_guess, {m_width / 8.0 - margin, m_height / 8.0 - margin}) / pixelsPerModule;
    const int level = picture.levelFor(step, 1.0);
    const GreyPicture& source = picture.levels[level];
    const double scale = 1.0 / (1 << level);
    const Homography h = Homography{{scale, 0, 0, 0, scale, 0, 0, 0, 1}} * toPicture();
    const bool inside = liesInside(h, m_width, m_height, source);
    const auto m = toFloats(h);
    for (int y = 0; y < m_height; ++y) {
        const float v = static_cast<float>(y) + 0.5f;
        const float x0 = m[1] * v + m[2], y0 = m[4] * v + m[5], w0 = m[7] * v + m[8];
        float* out = m_values.data() + y * m_width;
        for (int x = 0; x < m_width; ++x) {
            const float u = static_cast<float>(x) + 0.5f, w = 1.0f / (m[6] * u + w0);
            const float px = (m[0] * u + x0) * w, py = (m[3] * u + y0) * w;
            out[x] =
                inside ? sampleInside(source.pixels.data(), source.width, px, py) : sampleAt(source, px, py);
        }
    }
}

/// Subtracts the middle of the local extremes and divides by half their distance: extremes of five modules'
/// square.
void StraightPatch::evenOut(bool negative) {
    constexpr int p = pixelsPerModule;
    constexpr float floorOfRange = 8; // grey levels; less is noise
    const int columns = m_width / p, rows = m_height / p;
    std::vector<Levels> modules(static_cast<std::size_t>(columns) * rows);
    for (int y = 0; y < m_height; ++y)
        for (int x = 0; x < m_width; ++x)
            modules[y / p * columns + x / p].add(Levels::of(m_values[y * m_width + x]));
    const auto around = windowLevels(modules, columns, rows, 2);
    const float sign = negative ? -1.0f : 1.0f;
    for (int r = 0; r < rows; ++r)
        for (int c = 0; c < columns; ++c) {
            const Levels& levels = around[r * columns + c];
            const float middle = (levels.least + levels.most) / 2;
            const float gain = sign / std::max(floorOfRange, (levels.most - levels.least) / 2);
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

} // namespace scanner::reader
