#include "scanner/reader/image/grid_fit.h"

#include "scanner/reader/image/correlation.h"
#include "scanner/reader/image/vectorised.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstring>

namespace scanner::reader {
namespace {

/// Takes -1 to 1 to the modules of a pattern.
Homography scaling(const GridPattern& pattern) {
    const double half = std::max(pattern.columns, pattern.rows) / 2.0;
    return {{half, 0, pattern.columns / 2.0, 0, half, pattern.rows / 2.0, 0, 0, 1}};
}

Homography inverseScaling(const GridPattern& pattern) {
    const double half = std::max(pattern.columns, pattern.rows) / 2.0;
    return {{1 / half, 0, -pattern.columns / 2.0 / half, 0, 1 / half, -pattern.rows / 2.0 / half, 0, 0, 1}};
}

/// The normal equations of a step: sums over the points, each with eight slopes and a weight.
struct NormalEquations {
    float left[8][8]{}, right[8]{};
};

/// What one point says about where the grid should go.
struct Pull {
    float slopes[8];
    float weight, residual;
};

SCANNER_VECTORISED void sumUp(const Pull* pulls, std::size_t count, NormalEquations& sums) {
    EightFloats row0{}, row1{}, row2{}, row3{}, row4{}, row5{}, row6{}, row7{}, right{};
    for (std::size_t i = 0; i < count; ++i) {
        EightFloats slopes;
        std::memcpy(&slopes, pulls[i].slopes, sizeof slopes);
        const EightFloats weighted = pulls[i].weight * slopes;
        right += pulls[i].residual * weighted;
        row0 += slopes[0] * weighted;
        row1 += slopes[1] * weighted;
        row2 += slopes[2] * weighted;
        row3 += slopes[3] * weighted;
        row4 += slopes[4] * weighted;
        row5 += slopes[5] * weighted;
        row6 += slopes[6] * weighted;
        row7 += slopes[7] * weighted;
    }
    const EightFloats rows[8] = {row0, row1, row2, row3, row4, row5, row6, row7};
    std::memcpy(sums.left, rows, sizeof sums.left);
    std::memcpy(sums.right, &right, sizeof sums.right);
}

/// Some points of a pattern at once: where they lie in the patch, and the four pixels around each.
struct Points {
    static constexpr int most = 64;
    float x[most], y[most], w[most]; ///< in the patch, and the projection's factor
    float right[most], down[most];   ///< beyond the middle of the pixel up and to the left
    std::int32_t pixel[most];
    float corners[4][most]; ///< clockwise from that pixel
};

SCANNER_VECTORISED void findPoints(const PatternPoint* points, int count, const float* m, int width,
                                   int height, Points& out) {
    const float a = m[0], b = m[1], c = m[2], d = m[3], e = m[4], f = m[5], g = m[6], h = m[7], k = m[8];
    const float lastX = static_cast<float>(width) - 1.01f, lastY = static_cast<float>(height) - 1.01f;
    for (int i = 0; i < count; ++i) {
        const float u = points[i].u, v = points[i].v, w = 1.0f / (g * u + h * v + k);
        const float x = (a * u + b * v + c) * w, y = (d * u + e * v + f) * w;
        // Written so that not-a-number falls on the first pixel too.
        const float px = x > 0.5f ? std::min(x - 0.5f, lastX) : 0.0f;
        const float py = y > 0.5f ? std::min(y - 0.5f, lastY) : 0.0f;
        const auto ix = static_cast<std::int32_t>(px), iy = static_cast<std::int32_t>(py);
        out.x[i] = x;
        out.y[i] = y;
        out.w[i] = w;
        out.right[i] = px - static_cast<float>(ix);
        out.down[i] = py - static_cast<float>(iy);
        out.pixel[i] = iy * width + ix;
    }
}

/// Value at each point, and its slopes by the pattern's coordinates.
SCANNER_VECTORISED void findSlopes(const Points& p, int count, const float* m, float* value, float* byU,
                                   float* byV) {
    const float a = m[0], b = m[1], d = m[3], e = m[4], g = m[6], h = m[7];
    for (int i = 0; i < count; ++i) {
        const float across = p.corners[1][i] - p.corners[0][i], acrossLow = p.corners[2][i] - p.corners[3][i];
        const float upper = p.corners[0][i] + p.right[i] * across,
                    lower = p.corners[3][i] + p.right[i] * acrossLow;
        const float dx = across + p.down[i] * (acrossLow - across), dy = lower - upper;
        const float turn = dx * p.x[i] + dy * p.y[i];
        value[i] = upper + p.down[i] * dy;
        byU[i] = (dx * a + dy * d - turn * g) * p.w[i];
        byV[i] = (dx * b + dy * e - turn * h) * p.w[i];
    }
}

void lookAround(const StraightPatch& patch, int count, Points& points) {
    const float* pixels = patch.row(0);
    for (int i = 0; i < count; ++i) {
        const float* here = pixels + points.pixel[i];
        points.corners[0][i] = here[0];
        points.corners[1][i] = here[1];
        points.corners[2][i] = here[patch.width() + 1];
        points.corners[3][i] = here[patch.width()];
    }
}

} // namespace

GridFitter::GridFitter(const StraightPatch& patch, const GridPattern& pattern, const Homography& start)
    : m_patch(patch)
    , m_pattern(pattern)
    , m_inner(scaling(pattern))
    , m_current(start * m_inner)
    , m_best(m_current) {}

Homography GridFitter::toPatch() const {
    return m_best * inverseScaling(m_pattern);
}

/// Correlation at the mapping; remembers values and slopes for the step.
double GridFitter::correlate(const Homography& toPatch, const std::vector<PatternPoint>& points) {
    const std::size_t count = points.size();
    for (std::vector<float>* seen : {&m_values, &m_byU, &m_byV})
        seen->resize(count);
    float m[9];
    for (int i = 0; i < 9; ++i)
        m[i] = static_cast<float>(toPatch.m[i]);
    Points some;
    for (std::size_t first = 0; first < count; first += Points::most) {
        const int n = static_cast<int>(std::min<std::size_t>(Points::most, count - first));
        findPoints(points.data() + first, n, m, m_patch.width(), m_patch.height(), some);
        lookAround(m_patch, n, some);
        findSlopes(some, n, m, m_values.data() + first, m_byU.data() + first, m_byV.data() + first);
    }
    Correlation<float> correlation;
    for (std::size_t i = 0; i < count; ++i)
        correlation.add(m_values[i], points[i].target);
    const float spread = correlation.spread();
    if (!(spread > 1e-4f && correlation.targetSpread() > 1e-4f)) return 0;
    m_gain = std::clamp(correlation.covariance() / spread, 0.3f, 4.0f);
    m_bias = (correlation.targets - m_gain * correlation.sum) / correlation.count;
    return correlation.value(1e-4f, 1e-4f);
}

/// One step with 6 (affine) or 8 parameters from what was last seen.
void GridFitter::step(int parameters, const std::vector<PatternPoint>& points) {
    std::vector<Pull> pulls;
    pulls.reserve(points.size());
    for (std::size_t i = 0; i < points.size(); ++i) {
        const PatternPoint& p = points[i];
        const float residual = p.target - (m_gain * m_values[i] + m_bias);
        const float weight = 1.0f / (1.0f + residual * residual);
        const float gu = m_gain * m_byU[i], gv = m_gain * m_byV[i], along = gu * p.u + gv * p.v;
        pulls.push_back(
            {{gu * p.u, gu * p.v, gu, gv * p.u, gv * p.v, gv, -along * p.u, -along * p.v}, weight, residual});
    }
    NormalEquations sums;
    sumUp(pulls.data(), pulls.size(), sums);
    double a[64], b[8]{};
    for (int r = 0; r < parameters; ++r) {
        for (int c = 0; c < parameters; ++c)
            a[r * parameters + c] = sums.left[r][c];
        a[r * parameters + r] += 1e-3 * sums.left[r][r] + 1e-6;
        b[r] = sums.right[r];
    }
    if (!solve(a, b, parameters)) return;
    const double half = m_inner.m[0];
    const double move = std::max({std::abs(b[2]), std::abs(b[5]), std::abs(b[0]), std::abs(b[4])}) * half;
    const double brake = move > 1 ? 1 / move : 1; // at most a module at once
    for (double& value : b)
        value *= brake;
    m_current = m_current * Homography{{1 + b[0], b[1], b[2], b[3], 1 + b[4], b[5], b[6], b[7], 1}};
}

bool GridFitter::approach(double least, int affineSteps, int fullSteps) {
    const auto& points = m_pattern.middles;
    m_bestCorrelation = correlate(m_current, points);
    if (m_bestCorrelation < least) return false;
    for (int i = 0; i < affineSteps + fullSteps; ++i) {
        if (i == affineSteps && m_bestCorrelation < least + 0.1) return false;
        step(i < affineSteps ? 6 : 8, points);
        const double correlation = correlate(m_current, points);
        if (correlation > m_bestCorrelation) {
            m_bestCorrelation = correlation;
            m_best = m_current;
        }
    }
    return true;
}

void GridFitter::refine() {
    const auto& points = m_pattern.quarters;
    m_current = m_best;
    m_bestCorrelation = correlate(m_current, points);
    for (int i = 0; i < 6; ++i) {
        step(8, points);
        const double correlation = correlate(m_current, points), gain = correlation - m_bestCorrelation;
        if (gain > 0) {
            m_bestCorrelation = correlation;
            m_best = m_current;
        }
        if (gain < 1e-3 && i > 0) break;
    }
}

GridFit fitGrid(const PictureLevels& picture, const GridPattern& pattern, const Homography& guess,
                bool negative, double least) {
    const StraightPatch patch(picture, guess, pattern.columns, pattern.rows, negative);
    GridFitter fitter(patch, pattern, StraightPatch::fromModules());
    if (fitter.approach(least, 3, 2) && fitter.correlation() > 0.3) fitter.refine();
    return {patch.toPicture() * fitter.toPatch(), fitter.correlation()};
}

} // namespace scanner::reader
