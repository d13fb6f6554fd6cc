#include "scanner/reader/image/raster.h"

#include "scanner/reader/image/sampling.h"
#include "scanner/reader/image/vectorised.h"

#include <algorithm>
#include <cstdint>
#include <vector>

namespace scanner::reader {
namespace {

/// A row of places between pixels: the pixel up and to the left of each, how far beyond its middle it lies,
/// and two neighbouring pixels of the row above and below it in one number each, the left one lowest.
struct RowOfPlaces {
    std::vector<std::int32_t> pixel;
    std::vector<float> right, down;
    std::vector<std::uint16_t> upper, lower;

    explicit RowOfPlaces(int count)
        : pixel(count)
        , right(count)
        , down(count)
        , upper(count)
        , lower(count) {}
};

/// Of row `v` of a raster, as `m` maps it to a picture of this size.
SCANNER_VECTORISED void findPlaces(const float* m, float v, int pictureWidth, int pictureHeight, int count,
                                   std::int32_t* pixel, float* right, float* down) {
    const float x0 = m[1] * v + m[2], y0 = m[4] * v + m[5], w0 = m[7] * v + m[8];
    const float mx = m[0], my = m[3], mw = m[6];
    const float lastX = static_cast<float>(pictureWidth) - 1.01f,
                lastY = static_cast<float>(pictureHeight) - 1.01f;
    for (int i = 0; i < count; ++i) {
        const float u = static_cast<float>(i) + 0.5f, w = 1.0f / (mw * u + w0);
        const float x = (mx * u + x0) * w, y = (my * u + y0) * w;
        // Written so that not-a-number falls on the first pixel too.
        const float px = x > 0.5f ? std::min(x - 0.5f, lastX) : 0.0f;
        const float py = y > 0.5f ? std::min(y - 0.5f, lastY) : 0.0f;
        const auto ix = static_cast<std::int32_t>(px), iy = static_cast<std::int32_t>(py);
        right[i] = px - static_cast<float>(ix);
        down[i] = py - static_cast<float>(iy);
        pixel[i] = iy * pictureWidth + ix;
    }
}

SCANNER_VECTORISED void blendCorners(const std::uint16_t* upper, const std::uint16_t* lower,
                                     const float* right, const float* down, float* out, int count) {
    for (int i = 0; i < count; ++i) {
        const std::int32_t a = upper[i] & 255, b = upper[i] >> 8, c = lower[i] & 255, d = lower[i] >> 8;
        const float above = static_cast<float>(a) + right[i] * static_cast<float>(b - a);
        const float below = static_cast<float>(c) + right[i] * static_cast<float>(d - c);
        out[i] = above + down[i] * (below - above);
    }
}

void sampleRow(const GreyPicture& picture, const float* m, float v, RowOfPlaces& places, float* out) {
    const int count = static_cast<int>(places.pixel.size());
    findPlaces(m, v, picture.width, picture.height, count, places.pixel.data(), places.right.data(),
               places.down.data());
    std::uint16_t *upper = places.upper.data(), *lower = places.lower.data();
    for (int i = 0; i < count; ++i) {
        const std::uint8_t* above = picture.pixels.data() + places.pixel[i];
        const std::uint8_t* below = above + picture.width;
        upper[i] = static_cast<std::uint16_t>(above[0] | above[1] << 8);
        lower[i] = static_cast<std::uint16_t>(below[0] | below[1] << 8);
    }
    blendCorners(upper, lower, places.right.data(), places.down.data(), out, count);
}

} // namespace

void sampleRaster(const GreyPicture& picture, const Homography& toPicture, int width, int height,
                  float* out) {
    if (picture.width < 2 || picture.height < 2) {
        for (int y = 0; y < height; ++y)
            for (int x = 0; x < width; ++x) {
                const Point p = toPicture.map(x + 0.5, y + 0.5);
                out[y * width + x] = sampleAt(picture, p.x, p.y);
            }
        return;
    }
    float m[9];
    std::transform(toPicture.m.begin(), toPicture.m.end(), m,
                   [](double value) { return static_cast<float>(value); });
    RowOfPlaces places(width);
    for (int y = 0; y < height; ++y)
        sampleRow(picture, m, static_cast<float>(y) + 0.5f, places, out + y * width);
}

void sampleRaster(const PictureLevels& picture, const Homography& toPicture, int width, int height,
                  float* out) {
    const int level = picture.levelFor(modulePixelsAt(toPicture, {width / 2.0, height / 2.0}), 1.0);
    sampleRaster(picture.levels[level], scaling(1.0 / (1 << level)) * toPicture, width, height, out);
}

} // namespace scanner::reader
