#include "tests/scanner/reader/scenes/scene.h"

#include "tests/scanner/reader/scenes/chance.h"

#include <algorithm>
#include <cmath>

namespace scenes {
namespace {

using scanner::GreyPicture;
using Vector = std::array<double, 3>;

constexpr int margin = 64; // pixels of ground around the frame

Vector times(const std::array<double, 9>& m, const Vector& v) {
    return {m[0] * v[0] + m[1] * v[1] + m[2] * v[2], m[3] * v[0] + m[4] * v[1] + m[5] * v[2],
            m[6] * v[0] + m[7] * v[1] + m[8] * v[2]};
}

Vector transposedTimes(const std::array<double, 9>& m, const Vector& v) {
    return {m[0] * v[0] + m[3] * v[1] + m[6] * v[2], m[1] * v[0] + m[4] * v[1] + m[7] * v[2],
            m[2] * v[0] + m[5] * v[1] + m[8] * v[2]};
}

std::array<double, 9> product(const std::array<double, 9>& a, const std::array<double, 9>& b) {
    std::array<double, 9> result{};
    for (int r = 0; r < 3; ++r)
        for (int c = 0; c < 3; ++c)
            for (int k = 0; k < 3; ++k)
                result[r * 3 + c] += a[r * 3 + k] * b[k * 3 + c];
    return result;
}

/// A label as the camera looks at it: pixels to modules and back.
class LabelView {
public:
    LabelView(const Scene& scene, const Placed& placed, const Pose& hand)
        : m_placed(placed)
        , m_pose(hand.after(placed.pose))
        , m_focal(scene.optics.focal)
        , m_middle{scene.width / 2.0, scene.height / 2.0}
        , m_radius(placed.bend > 0 ? placed.label.wide() * placed.module / 2 / placed.bend : 0) {
        const Vector& t = m_pose.place;
        m_eye = transposedTimes(m_pose.turn, {-t[0], -t[1], -t[2]});
    }

    scanner::Point toPicture(double u, double v) const {
        double x = (u - m_placed.label.wide() / 2) * m_placed.module, z = 0;
        const double y = (v - m_placed.label.high() / 2) * m_placed.module;
        if (m_radius > 0) {
            z = m_radius * (1 - std::cos(x / m_radius));
            x = m_radius * std::sin(x / m_radius);
        }
        Vector p = times(m_pose.turn, {x, y, z});
        for (int i = 0; i < 3; ++i)
            p[i] += m_pose.place[i];
        return {m_middle.x + m_focal * p[0] / p[2], m_middle.y + m_focal * p[1] / p[2]};
    }

    double levelAt(double px, double py) const {
        const Vector d =
            transposedTimes(m_pose.turn, {(px - m_middle.x) / m_focal, (py - m_middle.y) / m_focal, 1});
        double along = -m_eye[2] / d[2], x = m_eye[0] + along * d[0];
        if (m_radius > 0) { // the nearer crossing of x² + (z - r)² = r²
            const double ez = m_eye[2] - m_radius, a = d[0] * d[0] + d[2] * d[2],
                         b = m_eye[0] * d[0] + ez * d[2],
                         c = m_eye[0] * m_eye[0] + ez * ez - m_radius * m_radius, root = b * b - a * c;
            if (root < 0) return -1;
            along = (-b - std::sqrt(root)) / a;
            const double sine = m_eye[0] + along * d[0], cosine = m_radius - m_eye[2] - along * d[2];
            x = m_radius * std::atan2(sine, cosine);
        }
        const double y = m_eye[1] + along * d[1];
        return m_placed.label.levelAt(x / m_placed.module + m_placed.label.wide() / 2,
                                      y / m_placed.module + m_placed.label.high() / 2);
    }

private:
    const Placed& m_placed;
    Pose m_pose;
    double m_focal;
    scanner::Point m_middle;
    double m_radius;
    Vector m_eye{};
};

/// Light as numbers, row by row.
struct Light {
    int width, height;
    std::vector<float> values;
};

void drawLabel(const Scene& scene, const Placed& placed, const Pose& hand, Light& light) {
    const LabelView view(scene, placed, hand);
    double left = 1e9, top = 1e9, right = -1e9, bottom = -1e9;
    const double quiet = placed.label.quiet();
    for (double a : {0.0, 0.25, 0.5, 0.75, 1.0})
        for (double v : {-4.0, placed.label.high() + 4}) {
            const auto p = view.toPicture(-quiet + a * (placed.label.wide() + 2 * quiet), v);
            left = std::min(left, p.x);
            right = std::max(right, p.x);
            top = std::min(top, p.y);
            bottom = std::max(bottom, p.y);
        }
    constexpr int fine = 4, count = fine * fine;
    for (int y = std::max(0, static_cast<int>(top) - 3); y < std::min<double>(light.height, bottom + 3); ++y)
        for (int x = std::max(0, static_cast<int>(left) - 3); x < std::min<double>(light.width, right + 3);
             ++x) {
            float& value = light.values[static_cast<std::size_t>(y) * light.width + x];
            float sum = 0;
            for (int i = 0; i < count; ++i) {
                const double moved = (i * 7 % count + 0.5) / count - 0.5; // a moment of the exposure
                const double level = view.levelAt(x + (i % fine + 0.5) / fine + moved * scene.optics.motionX,
                                                  y + (i / fine + 0.5) / fine + moved * scene.optics.motionY);
                sum += level < 0 ? value : static_cast<float>(level);
            }
            value = sum / count;
        }
}

void blur(Light& light, double sigma) {
    std::array<float, 9> weight{};
    float all = 0;
    for (int k = -4; k <= 4; ++k)
        all += weight[k + 4] = static_cast<float>(std::exp(-0.5 * k * k / (sigma * sigma)));
    for (float& w : weight)
        w /= all;
    const int w = light.width, h = light.height;
    std::vector<float> line(static_cast<std::size_t>(w) + 8), across(light.values.size());
    for (int y = 0; y < h; ++y) {
        const float* in = light.values.data() + static_cast<std::size_t>(y) * w;
        for (int x = -4; x < w + 4; ++x)
            line[x + 4] = in[std::clamp(x, 0, w - 1)];
        float* out = across.data() + static_cast<std::size_t>(y) * w;
        for (int k = 0; k < 9; ++k)
            for (int x = 0; x < w; ++x)
                out[x] += weight[k] * line[x + k];
    }
    std::fill(light.values.begin(), light.values.end(), 0.0f);
    for (int y = 0; y < h; ++y)
        for (int k = -4; k <= 4; ++k) {
            const float* in = across.data() + static_cast<std::size_t>(std::clamp(y + k, 0, h - 1)) * w;
            float* out = light.values.data() + static_cast<std::size_t>(y) * w;
            for (int x = 0; x < w; ++x)
                out[x] += weight[k + 4] * in[x];
        }
}

/// The ground moves as what is far away: by the hand's turns alone.
Light groundSeen(const Scene& scene, const Pose& hand) {
    Light light{scene.width, scene.height, {}};
    light.values.resize(static_cast<std::size_t>(scene.width) * scene.height);
    const double dx = scene.optics.focal * hand.turn[2], dy = scene.optics.focal * hand.turn[5];
    const double c = hand.turn[0], s = hand.turn[3];
    for (int y = 0; y < scene.height; ++y)
        for (int x = 0; x < scene.width; ++x) {
            const double px = x - scene.width / 2.0 - dx, py = y - scene.height / 2.0 - dy;
            const int gx = static_cast<int>(c * px + s * py + scene.width / 2.0 + margin),
                      gy = static_cast<int>(c * py - s * px + scene.height / 2.0 + margin);
            light.values[static_cast<std::size_t>(y) * scene.width + x] = scene.ground.row(
                std::clamp(gy, 0, scene.ground.height - 1))[std::clamp(gx, 0, scene.ground.width - 1)];
        }
    return light;
}

GreyPicture developed(const Light& light, const Optics& optics, std::mt19937& random) {
    static const std::vector<float> grain = [] {
        std::mt19937 own(1);
        std::normal_distribution<float> normal(0, 1);
        std::vector<float> values(1 << 16);
        for (float& value : values)
            value = normal(own);
        return values;
    }();
    GreyPicture picture(light.width, light.height);
    for (int y = 0; y < light.height; ++y) {
        std::size_t from = random() % grain.size();
        for (int x = 0; x < light.width; ++x) {
            const double even = 1 + optics.unevenness * (static_cast<double>(x) / light.width - 0.5);
            const double value =
                light.values[static_cast<std::size_t>(y) * light.width + x] * optics.exposure * even +
                optics.noise * grain[(from + static_cast<std::size_t>(x) * 7919) % grain.size()];
            picture.row(y)[x] = static_cast<std::uint8_t>(std::clamp(value + 0.5, 0.0, 255.0));
        }
    }
    return picture;
}

/// Smooth noise of a grain, -1 to 1.
void addTexture(GreyPicture& ground, int grainX, int grainY, double strength, std::mt19937& random) {
    const int columns = ground.width / grainX + 2, rows = ground.height / grainY + 2;
    std::vector<double> knots(static_cast<std::size_t>(columns) * rows);
    for (double& knot : knots)
        knot = between(-strength, strength, random);
    for (int y = 0; y < ground.height; ++y)
        for (int x = 0; x < ground.width; ++x) {
            const int cx = x / grainX, cy = y / grainY;
            const double fx = static_cast<double>(x % grainX) / grainX,
                         fy = static_cast<double>(y % grainY) / grainY;
            const double* k = knots.data() + cy * columns + cx;
            const double value =
                (1 - fy) * ((1 - fx) * k[0] + fx * k[1]) + fy * ((1 - fx) * k[columns] + fx * k[columns + 1]);
            ground.row(y)[x] = static_cast<std::uint8_t>(std::clamp(ground.row(y)[x] + value, 5.0, 250.0));
        }
}

} // namespace

Pose Pose::turned(double pitch, double yaw, double roll) {
    const std::array<double, 9> z{
        std::cos(roll), -std::sin(roll), 0, std::sin(roll), std::cos(roll), 0, 0, 0, 1},
        y{std::cos(yaw), 0, std::sin(yaw), 0, 1, 0, -std::sin(yaw), 0, std::cos(yaw)},
        x{1, 0, 0, 0, std::cos(pitch), -std::sin(pitch), 0, std::sin(pitch), std::cos(pitch)};
    return {product(product(x, y), z), {0, 0, 0}};
}

Pose Pose::after(const Pose& first) const {
    Pose both{product(turn, first.turn), times(turn, first.place)};
    for (int i = 0; i < 3; ++i)
        both.place[i] += place[i];
    return both;
}

GreyPicture makeGround(int width, int height, std::mt19937& random) {
    GreyPicture ground(width + 2 * margin, height + 2 * margin,
                       static_cast<std::uint8_t>(90 + below(80, random)));
    addTexture(ground, 160, 120, 30, random);
    const unsigned kind = below(3, random);
    if (kind == 0) addTexture(ground, 90, 3, 25, random); // wood
    if (kind == 1) {                                      // gravel
        const int grain = 3 + static_cast<int>(below(4, random));
        addTexture(ground, grain, grain, 60, random);
    }
    for (unsigned i = 0; i < 400 * below(2, random); ++i) { // strokes like print
        const int x = static_cast<int>(below(static_cast<unsigned>(ground.width - 40), random)),
                  y = static_cast<int>(below(static_cast<unsigned>(ground.height - 40), random));
        const int wide = 2 + static_cast<int>(below(20, random)),
                  high = 2 + static_cast<int>(below(6, random));
        for (int dy = 0; dy < high; ++dy)
            std::fill_n(ground.row(y + dy) + x, wide, static_cast<std::uint8_t>(below(80, random)));
    }
    return ground;
}

GreyPicture draw(const Scene& scene, const Pose& hand, std::mt19937& random) {
    Light light = groundSeen(scene, hand);
    for (const Placed& placed : scene.labels)
        drawLabel(scene, placed, hand, light);
    blur(light, scene.optics.blur);
    return developed(light, scene.optics, random);
}

scanner::Quad cornersOf(const Scene& scene, const Placed& placed, const Pose& hand) {
    const LabelView view(scene, placed, hand);
    const double w = placed.label.wide(), h = placed.label.high();
    return {view.toPicture(0, 0), view.toPicture(w, 0), view.toPicture(w, h), view.toPicture(0, h)};
}

} // namespace scenes
