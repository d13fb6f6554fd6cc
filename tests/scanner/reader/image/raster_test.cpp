#include "scanner/reader/image/raster.h"

#include "scanner/reader/image/local_contrast.h"
#include "scanner/reader/image/sampling.h"

#include <gtest/gtest.h>

#include <random>

using namespace scanner::reader;

namespace {

scanner::GreyPicture noise(int width, int height) {
    std::mt19937 random(7);
    scanner::GreyPicture picture(width, height);
    for (auto& pixel : picture.pixels)
        pixel = static_cast<std::uint8_t>(random() % 256);
    return picture;
}

} // namespace

// Many places at once against one at a time, also where the raster hangs over the picture's edge.
TEST(Raster, showsWhatEachPlaceShows) {
    const auto picture = noise(64, 48);
    for (const double shift : {5.0, -20.0, 45.0}) {
        const Homography mapping{{0.7, 0.2, shift, -0.3, 0.8, 12, 0.002, -0.001, 1}};
        constexpr int width = 37, height = 21;
        std::vector<float> raster(static_cast<std::size_t>(width) * height);
        sampleRaster(picture, mapping, width, height, raster.data());
        for (int y = 0; y < height; ++y)
            for (int x = 0; x < width; ++x) {
                const scanner::Point p = mapping.map(x + 0.5, y + 0.5);
                EXPECT_NEAR(raster[y * width + x], sampleAt(picture, p.x, p.y), 3) << x << ',' << y;
            }
    }
}

TEST(Raster, aPictureOfOnePixelIsShownEverywhere) {
    std::vector<float> raster(6);
    sampleRaster(scanner::GreyPicture(1, 1, 90), {}, 3, 2, raster.data());
    EXPECT_EQ(raster, std::vector<float>(6, 90));
}

TEST(ContrastMap, transposedHasItsRowsAsColumns) {
    for (const auto& [width, height] : {std::pair{16, 24}, std::pair{19, 13}, std::pair{3, 40}}) {
        const ContrastMap map = contrastOf(noise(width, height), 2), turned = transposed(map);
        ASSERT_EQ(turned.width, height);
        ASSERT_EQ(turned.height, width);
        for (int y = 0; y < height; ++y)
            for (int x = 0; x < width; ++x)
                EXPECT_EQ(turned.row(x)[y], map.row(y)[x]) << x << ',' << y;
    }
}
