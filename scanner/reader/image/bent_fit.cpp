#include "scanner/reader/image/bent_fit.h"

#include "scanner/reader/image/correlation.h"
#include "scanner/reader/image/vectorised.h"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <span>

namespace scanner::reader {
namespace {

constexpr int parameters = 12; // eleven of the camera, the last of its twelve is fixed; and the bend

/// A point of the bent label in space, with its change by the bend.
struct SpacePoint {
    double x, y, z;
    double xByBend, zByBend;
};

SpacePoint spacePoint(double s, double t, double bend) {
    const double angle = bend * s, sine = std::sin(angle), cosine = std::cos(angle);
    return {sine / bend, t, (1 - cosine) / bend, (s * cosine - sine / bend) / bend,
            (s * sine - (1 - cosine) / bend) / bend};
}

/// What one point says about camera and bend: a slope for each parameter, then noughts.
struct BentPull {
    float slopes[16];
    float weight, residual;
};

/// Sums over the points; the part left of the diagonal's second half is left out.
struct BentEquations {
    float left[parameters][16], right[16];
};

SCANNER_VECTORISED void sumUpBent(const BentPull* pulls, std::size_t count, BentEquations& sums) {
    EightFloats low[8]{}, high[parameters]{}, rightLow{}, rightHigh{};
    for (std::size_t i = 0; i < count; ++i) {
        EightFloats lowSlopes, highSlopes;
        std::memcpy(&lowSlopes, pulls[i].slopes, sizeof lowSlopes);
        std::memcpy(&highSlopes, pulls[i].slopes + 8, sizeof highSlopes);
        lowSlopes *= pulls[i].weight;
        highSlopes *= pulls[i].weight;
        rightLow += pulls[i].residual * lowSlopes;
        rightHigh += pulls[i].residual * highSlopes;
        for (int a = 0; a < 8; ++a) {
            low[a] += pulls[i].slopes[a] * lowSlopes;
            high[a] += pulls[i].slopes[a] * highSlopes;
        }
        for (int a = 8; a < parameters; ++a)
            high[a] += pulls[i].slopes[a] * highSlopes;
    }
    for (int a = 0; a < parameters; ++a) {
        if (a < 8) std::memcpy(sums.left[a], &low[a], sizeof low[a]);
        std::memcpy(sums.left[a] + 8, &high[a], sizeof high[a]);
    }
    std::memcpy(sums.right, &rightLow, sizeof rightLow);
    std::memcpy(sums.right + 8, &rightHigh, sizeof rightHigh);
}

Point project(const std::array<double, 12>& c, const SpacePoint& p) {
    const double w = c[8] * p.x + c[9] * p.y + c[10] * p.z + c[11];
    return {(c[0] * p.x + c[1] * p.y + c[2] * p.z + c[3]) / w,
            (c[4] * p.x + c[5] * p.y + c[6] * p.z + c[7]) / w};
}

class BentFitter {
public:
    BentFitter(const StraightPatch& patch, const GridPattern& pattern, bool alongRows)
        : m_patch(patch)
        , m_pattern(pattern)
        , m_half(pattern.columns / 2.0)
        , m_alongRows(alongRows) {
        // Flat and seen as the patch shows it: the bend's depth does not count yet.
        const double p = StraightPatch::pixelsPerModule, scale = m_half * p,
                     middle = (m_half + StraightPatch::margin) * p;
        m_camera = {0, 0, 0, middle, 0, 0, 0, middle, 0, 0, 0, 1};
        m_camera[alongRows ? 1 : 0] = scale;
        m_camera[alongRows ? 4 : 5] = scale;
    }

    /// Where to begin: a camera to pixels of the patch. One that cannot be gives numbers that correlate with
    /// nothing.
    void beginAt(const std::array<double, 12>& camera, double bend) {
        for (std::size_t i = 0; i < m_camera.size(); ++i)
            m_camera[i] = camera[i] / camera.back();
        m_bend = bend;
    }

    /// With the middles of the modules first, which shows soon enough where to go, then with all points.
    BentFit fit() {
        lookAt(m_pattern.middles);
        BentFit best = improve(12, 3);
        m_camera = best.camera;
        m_bend = best.bend;
        lookAt(m_pattern.quarters);
        return improve(6, 2);
    }

private:
    void lookAt(const std::vector<PatternPoint>& points) {
        m_points = points;
        m_seen.resize(points.size());
        m_at.resize(points.size());
        m_space.resize(points.size());
        m_pulls.resize(points.size());
        m_along.clear();
        m_arcOf.clear();
        const auto along = [&](const PatternPoint& p) { return m_alongRows ? p.v : p.u; };
        for (const PatternPoint& p : points)
            m_along.push_back(along(p));
        std::sort(m_along.begin(), m_along.end());
        m_along.erase(std::unique(m_along.begin(), m_along.end()), m_along.end());
        for (const PatternPoint& p : points)
            m_arcOf.push_back(static_cast<int>(std::lower_bound(m_along.begin(), m_along.end(), along(p)) -
                                               m_along.begin()));
    }

    BentFit improve(int most, int mostIdle) {
        BentFit best;
        best.correlation = -1;
        for (int i = 0, idle = 0; i < most && idle < mostIdle; ++i) {
            const double correlation = correlate();
            idle = correlation > best.correlation + 1e-3 ? 0 : idle + 1;
            if (correlation > best.correlation) best = {m_camera, m_bend, m_alongRows, m_half, correlation};
            step();
        }
        return best;
    }

    /// At the present camera and bend; remembers what is seen there for the step.
    double correlate() {
        // The points lie in rows and columns, so that few places along the arc occur.
        std::vector<SpacePoint> arc;
        for (float along : m_along)
            arc.push_back(spacePoint(along, 0, m_bend));
        Correlation<double> correlation;
        for (std::size_t i = 0; i < m_points.size(); ++i) {
            const PatternPoint& p = m_points[i];
            m_space[i] = arc[m_arcOf[i]];
            m_space[i].y = m_alongRows ? p.u : p.v;
            m_at[i] = project(m_camera, m_space[i]);
            m_seen[i] = slopeAt(m_patch, static_cast<float>(m_at[i].x), static_cast<float>(m_at[i].y));
            correlation.add(m_seen[i].value, p.target);
        }
        const double spread = correlation.spread();
        m_gain = spread > 1e-9 ? std::clamp(correlation.covariance() / spread, 0.3, 4.0) : 1;
        m_bias = (correlation.targets - m_gain * correlation.sum) / correlation.count;
        return correlation.value(1e-9, 1e-9);
    }

    void step() {
        for (std::size_t i = 0; i < m_points.size(); ++i) {
            BentPull& pull = m_pulls[i];
            pull.residual = m_points[i].target - static_cast<float>(m_gain * m_seen[i].value + m_bias);
            pull.weight = 1.0f / (1.0f + pull.residual * pull.residual);
            jacobian(i, pull.slopes);
        }
        BentEquations sums;
        sumUpBent(m_pulls.data(), m_pulls.size(), sums);
        double a[parameters * parameters], b[parameters];
        for (int r = 0; r < parameters; ++r) {
            for (int c = 0; c < parameters; ++c)
                a[r * parameters + c] = r < 8 || c >= 8 ? sums.left[r][c] : sums.left[c][r];
            a[r * parameters + r] *= 1.01;
            a[r * parameters + r] += 1e-6;
            b[r] = sums.right[r];
        }
        if (!solve(a, b, parameters)) return;
        for (int k = 0; k < 11; ++k)
            m_camera[k] += b[k];
        m_bend = std::clamp(m_bend + std::clamp(b[11], -0.3, 0.3), 0.1, 1.4);
    }

    void jacobian(std::size_t i, float* j) const {
        const SpacePoint& q = m_space[i];
        const double w = m_camera[8] * q.x + m_camera[9] * q.y + m_camera[10] * q.z + m_camera[11];
        const double gx = m_gain * m_seen[i].dx / w, gy = m_gain * m_seen[i].dy / w;
        const double gw = -(gx * m_at[i].x + gy * m_at[i].y);
        const double place[4] = {q.x, q.y, q.z, 1};
        for (int k = 0; k < 4; ++k) {
            j[k] = static_cast<float>(gx * place[k]);
            j[4 + k] = static_cast<float>(gy * place[k]);
            if (k < 3) j[8 + k] = static_cast<float>(gw * place[k]);
        }
        const double byX = gx * m_camera[0] + gy * m_camera[4] + gw * m_camera[8];
        const double byZ = gx * m_camera[2] + gy * m_camera[6] + gw * m_camera[10];
        j[11] = static_cast<float>(byX * q.xByBend + byZ * q.zByBend);
    }

    const StraightPatch& m_patch;
    const GridPattern& m_pattern;
    std::span<const PatternPoint> m_points;
    double m_half;
    bool m_alongRows;
    std::array<double, 12> m_camera{};
    double m_bend = 0.6; // at 0 the slope by the bend vanishes and no step would leave it
    std::vector<Slope> m_seen;
    std::vector<Point> m_at;
    std::vector<SpacePoint> m_space;
    std::vector<BentPull> m_pulls; ///< noughts behind the slopes
    std::vector<float> m_along;    ///< places along the arc, and which of them each point has
    std::vector<int> m_arcOf;
    double m_gain = 1, m_bias = 0;
};

/// The camera in pixels of the picture instead of the patch.
std::array<double, 12> throughHomography(const Homography& h, const std::array<double, 12>& camera) {
    std::array<double, 12> product{};
    for (int row = 0; row < 3; ++row)
        for (int column = 0; column < 4; ++column)
            for (int k = 0; k < 3; ++k)
                product[row * 4 + column] += h.m[row * 3 + k] * camera[k * 4 + column];
    return product;
}

} // namespace

Point BentFit::map(double u, double v) const {
    const double a = u / half - 1, b = v / half - 1;
    return project(camera, alongRows ? spacePoint(b, a, bend) : spacePoint(a, b, bend));
}

BentFit fitBentGrid(const PictureLevels& picture, const GridPattern& pattern, const GridFit& flat,
                    bool negative) {
    const StraightPatch patch(picture, flat.toPicture, pattern.columns, pattern.rows, negative);
    BentFit best;
    best.correlation = -1;
    for (bool alongRows : {false, true}) {
        const BentFit fit = BentFitter(patch, pattern, alongRows).fit();
        if (fit.correlation > best.correlation) best = fit;
    }
    best.camera = throughHomography(patch.toPicture(), best.camera);
    return best;
}

BentFit refitBentGrid(const PictureLevels& picture, const GridPattern& pattern, const BentFit& start,
                      const Homography& flat, bool negative) {
    const StraightPatch patch(picture, flat, pattern.columns, pattern.rows, negative);
    const double w = patch.width(), h = patch.height();
    const auto toPatch =
        projectionThrough(cornersOf(patch.toPicture(), w, h), {{{0, 0}, {w, 0}, {w, h}, {0, h}}});
    if (!toPatch) return start;
    BentFitter fitter(patch, pattern, start.alongRows);
    fitter.beginAt(throughHomography(*toPatch, start.camera), start.bend);
    BentFit fit = fitter.fit();
    fit.camera = throughHomography(patch.toPicture(), fit.camera);
    return fit;
}

} // namespace scanner::reader
