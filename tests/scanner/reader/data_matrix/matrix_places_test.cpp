#include "scanner/reader/data_matrix/matrix_places.h"

#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace scanner::reader;
using scanner::GreyPicture;
using scanner::Quad;

namespace {

constexpr int module = 4; // pixels
constexpr int left = 60, top = 50;

/// On a light sheet of 200 × 160 pixels; `negative`: all turned, light print on a dark sheet.
GreyPicture sheetWith(const GreyPicture& modules, bool negative) {
    GreyPicture sheet(200, 160, 225);
    pictures::paste(sheet, pictures::enlarged(modules, module), left, top);
    if (negative)
        for (auto& pixel : sheet.pixels)
            pixel = static_cast<std::uint8_t>(255 - pixel);
    return sheet;
}

const Quad wholeSheet{{{0, 0}, {200, 0}, {200, 160}, {0, 160}}};

double farthestCorner(const Quad& a, const Quad& b) {
    double most = 0;
    for (std::size_t i = 0; i < a.size(); ++i)
        most = std::max(most, std::hypot(a[i].x - b[i].x, a[i].y - b[i].y));
    return most;
}

} // namespace

// The symbols are drawn by ZXing's writer: solid on the left and below.
TEST(MatrixPlaces, findTheSymbolItsTurnAndItsSize) {
    for (const int digits : {16, 24, 44}) {
        const GreyPicture modules = pictures::dataMatrixModules(std::string(digits, '7'));
        const double right = left + module * modules.width, foot = top + module * modules.height;
        const Quad symbol{{{left, top}, {right, top}, {right, foot}, {left, foot}}};
        for (const bool negative : {false, true}) {
            const PictureLevels picture(sheetWith(modules, negative));
            const auto places = matrixPlacesIn(picture, wholeSheet, negative);
            const auto best = std::max_element(
                places.begin(), places.end(),
                [](const MatrixPlace& a, const MatrixPlace& b) { return a.share < b.share; });
            ASSERT_NE(best, places.end()) << digits;
            EXPECT_LT(farthestCorner(best->corners, symbol), 1.5 * module) << digits;
            EXPECT_EQ(best->sizes.front(), modules.width);
            EXPECT_TRUE(matrixPlacesIn(picture, wholeSheet, !negative).empty());
        }
    }
}

TEST(MatrixPlaces, findNothingWithoutAlternatingSidesOrInAnEmptyRegion) {
    EXPECT_TRUE(
        matrixPlacesIn(PictureLevels(sheetWith(GreyPicture(14, 14, 20), false)), wholeSheet, false).empty());
    const PictureLevels blank(GreyPicture(200, 160, 225));
    EXPECT_TRUE(matrixPlacesIn(blank, wholeSheet, false).empty());
    const Quad line{{{0, 0}, {50, 50}, {100, 100}, {150, 150}}};
    const PictureLevels symbol(sheetWith(pictures::dataMatrixModules("7777777777777777"), false));
    EXPECT_FALSE(matrixPlacesIn(symbol, wholeSheet, false).empty());
    EXPECT_TRUE(matrixPlacesIn(symbol, line, false).empty());
}
