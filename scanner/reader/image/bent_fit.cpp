#include "scanner/reader/image/bent_fit.h"

#include "scanner/reader/image/correlation.h"

#include <algorithm>
#include <cmath>

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

Point project(const std::array<double, 12>& c, const SpacePoint& p) {
    const double w = c[8] * p.x + c[9] * p.y + c[10] * p.z + c[11];
    return {(c[0] * p.x + c[1] * p.y + c[2] * p.z + c[3]) / w,
            (c[4] * p.x + c[5] * p.y + c[6] * p.z + c[7]) / w};
}

class BentFitter {
public:
    BentFitter(const StraightPatch& patch, const GridPattern& pattern, bool alongRows)
        : m_patch(patch)
        , m_points(pattern.quarters)
        , m_half(pattern.columns / 2.0)
        , m_alongRows(alongRows)
        , m_seen(m_points.size())
        , m_at(m_points.size())
        , m_space(m_points.size()) {
        // Flat and seen as the patch shows it: the bend's depth does not count yet.
        const double p = StraightPatch::pixelsPerModule, scale = m_half * p,
                     middle = (m_half + StraightPatch::margin) * p;
        m_camera = {0, 0, 0, middle, 0, 0, 0, middle, 0, 0, 0, 1};
        m_camera[alongRows ? 1 : 0] = scale;
        m_camera[alongRows ? 4 : 5] = scale;
    }

    /// At the present camera and bend; remembers what is seen there for the step.
    double correlate() {
        Correlation<double> correlation;
        for (std::size_t i = 0; i < m_points.size(); ++i) {
            const PatternPoint& p = m_points[i];
            const double a = p.u, b = p.v;
            m_space[i] = m_alongRows ? spacePoint(b, a, m_bend) : spacePoint(a, b, m_bend);
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
        float normal[parameters][parameters]{}, right[parameters]{};
        for (std::size_t i = 0; i < m_points.size(); ++i) {
            const Slope& seen = m_seen[i];
            const float residual = m_points[i].target - static_cast<float>(m_gain * seen.value + m_bias);
            const float weight = 1.0f / (1.0f + residual * residual);
            float j[parameters];
            jacobian(i, j);
            for (int a = 0; a < parameters; ++a) {
                const float weighted = weight * j[a];
                right[a] += weighted * residual;
                for (int b = 0; b < parameters; ++b)
                    normal[a][b] += weighted * j[b];
            }
        }
        double a[parameters * parameters], b[parameters];
        for (int r = 0; r < parameters; ++r) {
            for (int c = 0; c < parameters; ++c)
                a[r * parameters + c] = normal[r][c];
            a[r * parameters + r] *= 1.01;
            a[r * parameters + r] += 1e-6;
            b[r] = right[r];
        }
        if (!solve(a, b, parameters)) return;
        for (int k = 0; k < 11; ++k)
            m_camera[k] += b[k];
        m_bend = std::clamp(m_bend + std::clamp(b[11], -0.3, 0.3), 0.1, 1.4);
    }

    BentFit fit() {
        BentFit best;
        best.correlation = -1;
        int idle = 0;
        for (int i = 0; i < 15 && idle < 3; ++i) {
            const double correlation = correlate();
            idle = correlation > best.correlation + 1e-3 ? 0 : idle + 1;
            if (correlation > best.correlation) best = {m_camera, m_bend, m_alongRows, m_half, correlation};
            step();
        }
        return best;
    }

private:
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
    const std::vector<PatternPoint>& m_points;
    double m_half;
    bool m_alongRows;
    std::array<double, 12> m_camera{};
    double m_bend = 0.6; // at 0 the slope by the bend vanishes and no step would leave it
    std::vector<Slope> m_seen;
    std::vector<Point> m_at;
    std::vector<SpacePoint> m_space;
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

} // namespace scanner::reader
