#include "scanner/reader/image/straight_patch.h"

#include "scanner/reader/image/sampling.h"
#include "scanner/reader/image/vectorised.h"
#include "scanner/reader/image/window_levels.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace scanner::reader {
namespace {

/// A row of places between pixels: the pixel up and to the left of each, and how far beyond its middle it
/// lies.
struct RowOfPlaces {
    std::vector<std::int32_t> pixel;
    std::vector<float> right, down;
    std::vector<std::uint8_t> corners[4]; ///< of the four pixels around, clockwise from that one

    explicit RowOfPlaces(int count)
        : pixel(count)
        , right(count)
        , down(count) {
        for (auto& corner : corners)
            corner.resize(count);
    }
};

/// Of row `v` of a patch, as `m` maps it to a picture of this width.
SCANNER_VECTORISED void findPlaces(const float* m, float v, int pictureWidth, int count, std::int32_t* pixel,
                                   float* right, float* down) {
    const float x0 = m[1] * v + m[2], y0 = m[4] * v + m[5], w0 = m[7] * v + m[8];
    const float mx = m[0], my = m[3], mw = m[6];
    for (int x = 0; x < count; ++x) {
        const float u = static_cast<float>(x) + 0.5f, w = 1.0f / (mw * u + w0);
        const float px = (mx * u + x0) * w - 0.5f, py = (my * u + y0) * w - 0.5f;
        const auto ix = static_cast<std::int32_t>(px), iy = static_cast<std::int32_t>(py);
        right[x] = px - static_cast<float>(ix);
        down[x] = py - static_cast<float>(iy);
        pixel[x] = iy * pictureWidth + ix;
    }
}

SCANNER_VECTORISED void blendCorners(const std::uint8_t* a, const std::uint8_t* b, const std::uint8_t* c,
                                     const std::uint8_t* d, const float* right, const float* down, float* out,
                                     int count) {
    for (int x = 0; x < count; ++x) {
        const float upper = static_cast<float>(a[x]) + right[x] * static_cast<float>(b[x] - a[x]);
        const float lower = static_cast<float>(d[x]) + right[x] * static_cast<float>(c[x] - d[x]);
        out[x] = upper + down[x] * (lower - upper);
    }
}

/// Samples a row whose places all lie inside the picture.
void sampleRow(const GreyPicture& picture, const std::array<float, 9>& m, float v, RowOfPlaces& places,
               float* out) {
    const int count = static_cast<int>(places.pixel.size());
    findPlaces(m.data(), v, picture.width, count, places.pixel.data(), places.right.data(),
               places.down.data());
    std::uint8_t *a = places.corners[0].data(), *b = places.corners[1].data(), *c = places.corners[2].data(),
                 *d = places.corners[3].data();
    for (int x = 0; x < count; ++x) {
        const std::uint8_t* pixel = picture.pixels.data() + places.pixel[x];
        a[x] = pixel[0];
        b[x] = pixel[1];
        c[x] = pixel[picture.width + 1];
        d[x] = pixel[picture.width];
    }
    blendCorners(a, b, c, d, places.right.data(), places.down.data(), out, count);
}

SCANNER_VECTORISED void smoothAcross(const float* above, const float* here, const float* below, float* sum,
                                     float* out, int count) {
    for (int x = 0; x < count; ++x)
        sum[x + 1] = above[x] + 2 * here[x] + below[x];
    sum[0] = sum[1];
    sum[count + 1] = sum[count];
    for (int x = 0; x < count; ++x)
        out[x] = (sum[x] + 2 * sum[x + 1] + sum[x + 2]) * (1.0f / 16);
}

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
    RowOfPlaces places(m_width);
    for (int y = 0; y < m_height; ++y) {
        const float v = static_cast<float>(y) + 0.5f;
        if (inside) {
            sampleRow(source, m, v, places, m_values.data() + y * m_width);
            continue;
        }
        const float x0 = m[1] * v + m[2], y0 = m[4] * v + m[5], w0 = m[7] * v + m[8];
        float* out = m_values.data() + y * m_width;
        for (int x = 0; x < m_width; ++x) {
            const float u = static_cast<float>(x) + 0.5f, w = 1.0f / (m[6] * u + w0);
            const float px = (m[0] * u + x0) * w, py = (m[3] * u + y0) * w;
            out[x] = sampleAt(source, px, py);
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
        for (int c = 0; c < columns; ++c)
            for (int x = c * p; x < c * p + p; ++x)
                modules[y / p * columns + c].add(Levels::of(m_values[y * m_width + x]));
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
        smoothAcross(above, here, below, sum.data(), result.data() + y * m_width, m_width);
    }
    m_values.swap(result);
}

} // namespace scanner::reader
