#include "scanner/reader/image/raster.h"

#include "scanner/reader/image/local_contrast.h"
#include "scanner/reader/image/sampling.h"

#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <tuple>

using namespace scanner::reader;

// Many places at once against one at a time, also where the raster hangs over the picture's edge.
TEST(Raster, showsWhatEachPlaceShows) {
    const auto picture = pictures::noise(64, 48);
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

// Also where the window hangs over the edge, whose pixels count again there.
TEST(ContrastMap, isEachPixelsDifferenceFromTheMeanAroundIt) {
    for (const auto& [width, height, radius] :
         {std::tuple{40, 30, 3}, std::tuple{13, 9, 15}, std::tuple{70, 5, 20}}) {
        const auto picture = pictures::noise(width, height);
        const ContrastMap map = contrastOf(picture, radius);
        for (int y = 0; y < height; ++y)
            for (int x = 0; x < width; ++x) {
                double sum = 0;
                for (int v = y - radius; v <= y + radius; ++v)
                    for (int u = x - radius; u <= x + radius; ++u)
                        sum += picture.row(std::clamp(v, 0, height - 1))[std::clamp(u, 0, width - 1)];
                const double mean = sum / ((2 * radius + 1) * (2 * radius + 1));
                EXPECT_NEAR(map.row(y)[x], std::clamp(picture.row(y)[x] - mean, -127.0, 127.0), 0.51)
                    << x << ',' << y;
            }
    }
}

TEST(ContrastMap, transposedHasItsRowsAsColumns) {
    for (const auto& [width, height] : {std::pair{16, 24}, std::pair{19, 13}, std::pair{3, 40}}) {
        const ContrastMap map = contrastOf(pictures::noise(width, height), 2), turned = transposed(map);
        ASSERT_EQ(turned.width, height);
        ASSERT_EQ(turned.height, width);
        for (int y = 0; y < height; ++y)
            for (int x = 0; x < width; ++x)
                EXPECT_EQ(turned.row(x)[y], map.row(y)[x]) << x << ',' << y;
    }
}
