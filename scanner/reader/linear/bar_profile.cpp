#include "scanner/reader/linear/bar_profile.h"

#include "scanner/reader/image/vectorised.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace scanner::reader {
namespace {

struct Cubic {
    int first;
    float weight[4];
};

/// Four weights of the Catmull-Rom cubic around a pixel coordinate; the first pixel may lie outside.
Cubic cubicAt(double x) {
    const double p = x - 0.5, whole = std::floor(p);
    const float t = static_cast<float>(p - whole);
    return {static_cast<int>(whole) - 1,
            {t * (-0.5f + t * (1 - 0.5f * t)), 1 + t * t * (-2.5f + 1.5f * t),
             t * (0.5f + t * (2 - 1.5f * t)), t * t * (-0.5f + 0.5f * t)}};
}

float cubicSample(const GreyPicture& picture, double x, double y) {
    const Cubic cx = cubicAt(std::clamp(x, -1e6, 1e6)), cy = cubicAt(std::clamp(y, -1e6, 1e6));
    float sum = 0;
    for (int j = 0; j < 4; ++j) {
        const std::uint8_t* row = picture.row(std::clamp(cy.first + j, 0, picture.height - 1));
        float line = 0;
        for (int i = 0; i < 4; ++i)
            line += cx.weight[i] * static_cast<float>(row[std::clamp(cx.first + i, 0, picture.width - 1)]);
        sum += cy.weight[j] * line;
    }
    return sum;
}

/// Places along a line: the first of the four pixels each way that a cubic takes, and how far behind the
/// second.
SCANNER_VECTORISED void findPlaces(float x0, float y0, float dx, float dy, int pictureWidth, int count,
                                   std::int32_t* first, float* across, float* down) {
    for (int i = 0; i < count; ++i) {
        const float x = x0 + static_cast<float>(i) * dx - 0.5f, y = y0 + static_cast<float>(i) * dy - 0.5f;
        const auto ix = static_cast<std::int32_t>(x), iy = static_cast<std::int32_t>(y);
        across[i] = x - static_cast<float>(ix);
        down[i] = y - static_cast<float>(iy);
        first[i] = (iy - 1) * pictureWidth + ix - 1;
    }
}

/// Adds one row of the cubics: four pixels each in one number, the first lowest.
SCANNER_VECTORISED void addRow(const std::uint32_t* fours, const float* across, const float* down, int row,
                               float* sums, int count) {
    // The weight of each of the four rows as a polynomial of the place between them.
    static constexpr float polynomials[4][4] = {
        {0, -0.5f, 1, -0.5f}, {1, 0, -2.5f, 1.5f}, {0, 0.5f, 2, -1.5f}, {0, 0, -0.5f, 0.5f}};
    const float *w = polynomials[row], w0 = w[0], w1 = w[1], w2 = w[2], w3 = w[3];
    for (int i = 0; i < count; ++i) {
        const float t = across[i], s = down[i];
        const auto pixel = [four = fours[i]](int k) {
            return static_cast<float>(static_cast<std::int32_t>(four >> (8 * k) & 255U));
        };
        const float line = t * (-0.5f + t * (1 - 0.5f * t)) * pixel(0) +
                           (1 + t * t * (-2.5f + 1.5f * t)) * pixel(1) +
                           t * (0.5f + t * (2 - 1.5f * t)) * pixel(2) + t * t * (-0.5f + 0.5f * t) * pixel(3);
        sums[i] += (w0 + s * (w1 + s * (w2 + s * w3))) * line;
    }
}

/// Adds the samples along lines that lie inside the picture.
class LineSampler {
public:
    LineSampler(const GreyPicture& picture, int count)
        : m_picture(picture)
        , m_first(count)
        , m_fours(count)
        , m_across(count)
        , m_down(count) {}

    void add(Point from, Point step, std::vector<float>& sums) {
        const int count = static_cast<int>(m_first.size());
        findPlaces(static_cast<float>(from.x), static_cast<float>(from.y), static_cast<float>(step.x),
                   static_cast<float>(step.y), m_picture.width, count, m_first.data(), m_across.data(),
                   m_down.data());
        for (int row = 0; row < 4; ++row) {
            const std::uint8_t* pixels = m_picture.row(row);
            for (int i = 0; i < count; ++i) {
                const std::uint8_t* p = pixels + m_first[i];
                m_fours[i] = static_cast<std::uint32_t>(p[0]) | static_cast<std::uint32_t>(p[1]) << 8 |
                             static_cast<std::uint32_t>(p[2]) << 16 | static_cast<std::uint32_t>(p[3]) << 24;
            }
            addRow(m_fours.data(), m_across.data(), m_down.data(), row, sums.data(), count);
        }
    }

private:
    const GreyPicture& m_picture;
    std::vector<std::int32_t> m_first;
    std::vector<std::uint32_t> m_fours;
    std::vector<float> m_across, m_down;
};

bool isInside(const GreyPicture& picture, Point p) {
    return p.x > 3 && p.y > 3 && p.x < picture.width - 4 && p.y < picture.height - 4;
}

} // namespace

BarProfile profileOf(const GreyPicture& picture, const BarRegion& region, double offset, double height,
                     double beyond) {
    constexpr double step = 0.35;
    const int count = static_cast<int>((region.length + 2 * beyond) / step);
    const int lines = std::clamp(static_cast<int>(height), 1, 16);
    BarProfile profile;
    profile.step = step;
    profile.along = region.along;
    const double back = region.length / 2 + beyond;
    profile.start = {region.centre.x - back * region.along.x + offset * region.upright.x,
                     region.centre.y - back * region.along.y + offset * region.upright.y};
    profile.values.assign(static_cast<std::size_t>(std::max(0, count)), 0);
    const Point way{step * region.along.x, step * region.along.y};
    LineSampler sampler(picture, std::max(0, count));
    for (int line = 0; line < lines; ++line) {
        const double up = height * ((line + 0.5) / lines - 0.5);
        const Point from{profile.start.x + up * region.upright.x, profile.start.y + up * region.upright.y};
        if (isInside(picture, from) && isInside(picture, {from.x + count * way.x, from.y + count * way.y}))
            sampler.add(from, way, profile.values);
        else
            for (int i = 0; i < count; ++i)
                profile.values[i] += cubicSample(picture, from.x + i * way.x, from.y + i * way.y);
    }
    for (float& value : profile.values)
        value /= static_cast<float>(lines);
    return profile;
}

} // namespace scanner::reader
