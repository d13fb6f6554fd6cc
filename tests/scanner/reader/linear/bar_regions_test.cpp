#include "scanner/reader/linear/bar_regions.h"

#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace scanner::reader;
using scanner::GreyPicture;

namespace {

/// By the definition: differences of the neighbours, where there are four, multiplied and summed over each
/// cell.
BarCells::Tensor cellOf(const GreyPicture& picture, int column, int row) {
    BarCells::Tensor sum;
    for (int y = std::max(1, row * 8); y < std::min(picture.height - 1, row * 8 + 8); ++y)
        for (int x = std::max(1, column * 8); x < std::min(picture.width - 1, column * 8 + 8); ++x) {
            const float dx = static_cast<float>(picture.row(y)[x + 1] - picture.row(y)[x - 1]),
                        dy = static_cast<float>(picture.row(y + 1)[x] - picture.row(y - 1)[x]);
            sum.xx += dx * dx;
            sum.xy += dx * dy;
            sum.yy += dy * dy;
        }
    return sum;
}

} // namespace

TEST(BarCells, holdTheProductsOfTheirGradients) {
    for (const auto& [width, height] : {std::pair{48, 32}, {53, 41}, {8, 8}, {15, 17}}) {
        const GreyPicture picture = pictures::noise(width, height);
        const BarCells cells = barCellsOf(picture);
        ASSERT_EQ(cells.columns, width / 8);
        ASSERT_EQ(cells.rows, height / 8);
        for (int row = 0; row < cells.rows; ++row)
            for (int column = 0; column < cells.columns; ++column) {
                const auto& seen = cells.cells[row * cells.columns + column];
                const auto wanted = cellOf(picture, column, row);
                EXPECT_EQ(seen.xx, wanted.xx) << width << ": " << column << ',' << row;
                EXPECT_EQ(seen.xy, wanted.xy) << width << ": " << column << ',' << row;
                EXPECT_EQ(seen.yy, wanted.yy) << width << ": " << column << ',' << row;
            }
    }
}

TEST(BarCells, aPictureOfLessThanACellHasNone) {
    for (const auto& [width, height] : {std::pair{7, 20}, {20, 7}, {0, 0}})
        EXPECT_TRUE(barCellsOf(GreyPicture(width, height, 90)).cells.empty()) << width;
}
