#include "scanner/reader/image/bit_mask.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <utility>
#include <vector>

namespace {

using scanner::reader::BitMask;
using scanner::reader::ContrastMap;

/// Widths beside and at the ends of words.
constexpr int widths[] = {0, 1, 63, 64, 65, 130};
constexpr int height = 20;

ContrastMap grain(int width) {
    std::mt19937 random(static_cast<unsigned>(width));
    std::uniform_int_distribution<int> level(-127, 127);
    ContrastMap map{width, height, {}};
    for (int i = 0; i < width * height; ++i)
        map.values.push_back(static_cast<std::int8_t>(level(random)));
    return map;
}

bool isSet(const BitMask& mask, int x, int y) {
    return (mask.row(y)[x / 64] >> x % 64 & 1) != 0;
}

/// One pixel after the other: the rule of dilation and erosion by a square, Serra, Image Analysis and
/// Mathematical Morphology, 1982 (from memory). What lies outside of the picture neither widens nor narrows.
std::vector<bool> spreadPixelwise(const std::vector<bool>& mask, int width, int reach, bool value) {
    std::vector<bool> result = mask;
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x)
            for (int v = std::max(0, y - reach); v <= std::min(height - 1, y + reach); ++v)
                for (int u = std::max(0, x - reach); u <= std::min(width - 1, x + reach); ++u)
                    if (mask[v * width + u] == value) result[y * width + x] = value;
    return result;
}

TEST(BitMask, holdsWhatIsDarkOrLight) {
    for (const int width : widths) {
        const ContrastMap map = grain(width);
        const BitMask dark = darkPixels(map, 90), light = lightPixels(map, 90);
        for (int y = 0; y < height; ++y)
            for (int x = 0; x < width; ++x) {
                EXPECT_EQ(isSet(dark, x, y), map.row(y)[x] < -90) << x << ' ' << y << " of " << width;
                EXPECT_EQ(isSet(light, x, y), map.row(y)[x] > 90) << x << ' ' << y << " of " << width;
            }
    }
}

TEST(BitMask, isClosedAsPixelAfterPixel) {
    for (const int width : widths)
        for (const int reach : {1, 2}) {
            const ContrastMap map = grain(width);
            std::vector<bool> pixels;
            for (const std::int8_t level : map.values)
                pixels.push_back(level < -110);
            pixels = spreadPixelwise(spreadPixelwise(pixels, width, reach, true), width, reach, false);
            BitMask mask = darkPixels(map, 110);
            mask.close(reach);
            for (int y = 0; y < height; ++y)
                for (int x = 0; x < width; ++x)
                    EXPECT_EQ(isSet(mask, x, y), pixels[y * width + x]) << x << ' ' << y << " of " << width;
        }
}

TEST(BitMask, handsOutEachRunAndTheFirstPixelOfEach) {
    for (const int width : widths) {
        const BitMask mask = darkPixels(grain(width), 40);
        for (int y = 0; y < height; ++y) {
            std::vector<std::pair<int, int>> expected, runs;
            for (int x = 0; x < width; ++x) {
                if (!isSet(mask, x, y)) continue;
                if (expected.empty() || expected.back().second != x) expected.emplace_back(x, x);
                expected.back().second = x + 1;
            }
            scanner::reader::forEachRun(mask.row(y), mask.words(),
                                        [&](int from, int to) { runs.emplace_back(from, to); });
            EXPECT_EQ(runs, expected) << "row " << y << " of " << width;
            int x = 0;
            for (const auto& [from, to] : expected) {
                x = scanner::reader::firstSet(mask.row(y), mask.words(), x);
                EXPECT_EQ(x, from);
                EXPECT_EQ(scanner::reader::firstSet(mask.row(y), mask.words(), to - 1), to - 1);
                x = to;
            }
            EXPECT_EQ(scanner::reader::firstSet(mask.row(y), mask.words(), x), 64 * mask.words());
        }
    }
}

} // namespace
