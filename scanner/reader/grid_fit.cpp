#include "scanner/reader/grid_fit.h"

#include <algorithm>
#include <cmath>

namespace scanner::reader {
namespace {

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
