#include "scanner/reader/grid_fit.h"

#include "scanner/reader/sampling.h"
#include "scanner/reader/vectorised.h"

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

namespace {

struct PatternPoint {
    float u, v, target;
};

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

/// Value and slope of the patch at one place, in its pixels.
struct Slope {
    float value, dx, dy;
};

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

/// One Gauss–Newton problem: the known points, and how the present mapping sees them.
class GridFitter {
public:
    GridFitter(const StraightPatch& patch, const GridPattern& pattern)
        : m_patch(patch)
        , m_half(std::max(pattern.columns, pattern.rows) / 2.0)
        , m_middleU(pattern.columns / 2.0)
        , m_middleV(pattern.rows / 2.0)
        , m_few(pointsOf(pattern, false))
        , m_many(pointsOf(pattern, true)) {
        m_seen.resize(m_many.size());
    }

    /// Correlation at the mapping; remembers what is seen for the step.
    double look(const Homography& toPatch, bool many) {
        m_points = many ? &m_many : &m_few;
        double n = 0, s = 0, ss = 0, t = 0, tt = 0, st = 0;
        for (std::size_t i = 0; i < m_points->size(); ++i) {
            const PatternPoint& p = (*m_points)[i];
            const Point at = toPatch.map(p.u, p.v);
            m_seen[i] = slopeAt(m_patch, at.x, at.y);
            const double value = m_seen[i].value;
            n += 1;
            s += value;
            ss += value * value;
            t += p.target;
            tt += p.target * p.target;
            st += value * p.target;
        }
        const double vs = ss - s * s / n, vt = tt - t * t / n, c = st - s * t / n;
        m_gain = vs > 1e-9 ? std::clamp(c / vs, 0.3, 4.0) : 1;
        m_bias = (t - m_gain * s) / n;
        return vs > 1e-9 && vt > 1e-9 ? c / std::sqrt(vs * vt) : 0;
    }

    /// The mapping moved by one step with 6 (affine) or 8 parameters.
    Homography step(const Homography& toPatch, int parameters) const {
        float normal[8][8]{}, right[8]{};
        for (std::size_t i = 0; i < m_points->size(); ++i) {
            const PatternPoint& p = (*m_points)[i];
            const Slope& seen = m_seen[i];
            const float residual = p.target - static_cast<float>(m_gain * seen.value + m_bias);
            const float weight = 1.0f / (1.0f + residual * residual);
            const float u = static_cast<float>((p.u - m_middleU) / m_half),
                        v = static_cast<float>((p.v - m_middleV) / m_half);
            const auto d = derivativeAt(toPatch, {p.u, p.v});
            const float gu = static_cast<float>(m_gain * m_half * (seen.dx * d[0] + seen.dy * d[2]));
            const float gv = static_cast<float>(m_gain * m_half * (seen.dx * d[1] + seen.dy * d[3]));
            const float along = gu * u + gv * v;
            const float j[8] = {gu * u, gu * v, gu, gv * u, gv * v, gv, -along * u, -along * v};
            for (int a = 0; a < 8; ++a) {
                const float weighted = weight * j[a];
                right[a] += weighted * residual;
                for (int b = 0; b < 8; ++b)
                    normal[a][b] += weighted * j[b];
            }
        }
        double a[64], b[8]{};
        for (int r = 0; r < parameters; ++r) {
            for (int c = 0; c < parameters; ++c)
                a[r * parameters + c] = normal[r][c];
            a[r * parameters + r] += 1e-3 * normal[r][r] + 1e-6;
            b[r] = right[r];
        }
        if (!solve(a, b, parameters)) return toPatch;
        const double move =
            std::max({std::abs(b[2]), std::abs(b[5]), std::abs(b[0]), std::abs(b[4])}) * m_half;
        const double brake = move > 1 ? 1 / move : 1; // at most a module at once
        for (double& value : b)
            value *= brake;
        const Homography change{{1 + b[0], b[1], b[2], b[3], 1 + b[4], b[5], b[6], b[7], 1}};
        const Homography in{
            {1 / m_half, 0, -m_middleU / m_half, 0, 1 / m_half, -m_middleV / m_half, 0, 0, 1}};
        const Homography out{{m_half, 0, m_middleU, 0, m_half, m_middleV, 0, 0, 1}};
        return toPatch * (out * (change * in));
    }

private:
    const StraightPatch& m_patch;
    double m_half, m_middleU, m_middleV;
    std::vector<PatternPoint> m_few, m_many;
    const std::vector<PatternPoint>* m_points = nullptr;
    std::vector<Slope> m_seen;
    double m_gain = 1, m_bias = 0;
};

} // namespace

GridFit fitInPatch(const StraightPatch& patch, const GridPattern& pattern, const Homography& start,
                   double least) {
    GridFitter fitter(patch, pattern);
    Homography now = start;
    double correlation = fitter.look(now, false);
    Homography best = now;
    double bestCorrelation = correlation;
    const auto result = [&] { return GridFit{patch.toPicture() * best, bestCorrelation}; };
    if (correlation < least) return result();
    for (int i = 0; i < 11; ++i) {
        now = fitter.step(now, i < 3 ? 6 : 8);
        correlation = fitter.look(now, i >= 5);
        if (i == 5) bestCorrelation = -1; // more points from here: figures of another kind
        const double gain = correlation - bestCorrelation;
        if (gain > 0) {
            best = now;
            bestCorrelation = correlation;
        }
        if (i > 6 && gain < 1e-3) break;
        if (i == 4 && bestCorrelation < 0.3) break;
    }
    return result();
}

GridFit fitGrid(const PictureLevels& picture, const GridPattern& pattern, const Homography& guess,
                bool negative, double least) {
    const StraightPatch patch(picture, guess, pattern.columns, pattern.rows, negative);
    return fitInPatch(patch, pattern, StraightPatch::fromModules(), least);
}

} // namespace scanner::reader
