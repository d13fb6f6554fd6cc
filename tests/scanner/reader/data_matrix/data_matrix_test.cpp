#include "scanner/reader/data_matrix/data_matrix.h"
#include "scanner/reader/data_matrix/matrix_agreement.h"

#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>

#include <random>

using namespace scanner::reader;

namespace {

GridSamples softOf(const scanner::GreyPicture& modules) {
    GridSamples soft{modules.width, modules.height, {}};
    for (const auto value : modules.pixels)
        soft.values.push_back(value ? 1.0f : -1.0f);
    return soft;
}

const MatrixSize* sizeOf(int modules) {
    for (const MatrixSize& size : matrixSizes())
        if (size.modules == modules) return &size;
    return nullptr;
}

} // namespace

// ZXing's writer chooses the size by the text: digits go two a codeword, so these cover 10 to 26.
TEST(DataMatrix, mendsWhatAnotherEncoderDrewInEverySize) {
    std::vector<int> seen;
    for (const int digits : {6, 10, 16, 24, 36, 44, 60, 72, 88}) {
        const GridSamples soft = softOf(pictures::dataMatrixModules(std::string(digits, '7')));
        const MatrixSize* size = sizeOf(soft.columns);
        ASSERT_TRUE(size) << soft.columns;
        seen.push_back(size->modules);
        const auto reading = mendMatrix(soft, *size, 0, 0);
        ASSERT_TRUE(reading) << size->modules;
        EXPECT_EQ(reading->errors, 0) << size->modules;
        EXPECT_EQ(reading->modules.values, soft.values) << size->modules;
    }
    EXPECT_EQ(seen, (std::vector<int>{10, 12, 14, 16, 18, 20, 22, 24, 26}));
}

TEST(DataMatrix, mendsAnyOneModuleOfATag) {
    const GridSamples clean = softOf(pictures::dataMatrixModules(pictures::tagCode(5)));
    const MatrixSize* size = sizeOf(clean.columns);
    ASSERT_TRUE(size);
    for (int row = 1; row + 1 < clean.rows; ++row)
        for (int column = 1; column + 1 < clean.columns; ++column) {
            GridSamples broken = clean;
            broken.values[row * clean.columns + column] *= -1;
            const auto reading = mendMatrix(broken, *size, 0, 0);
            ASSERT_TRUE(reading);
            EXPECT_EQ(reading->modules.values, clean.values);
        }
}

TEST(DataMatrix, refusesASymbolWithoutData) {
    const MatrixSize* size = sizeOf(14);
    GridSamples half{14, 14, std::vector<float>(14 * 14, 1.0f)};
    for (int i = 0; i < 14 * 14; i += 3)
        half.values[i] = -1;
    EXPECT_FALSE(mendMatrix(half, *size, 0, 0));
}

// Sixteen modules of the data are on the wrong side, less surely than the others are right, as smeared: in
// more codewords than Reed-Solomon mends, for which none is given up here.
TEST(DataMatrix, mendsByAgreementWhatIsSmearedBeyondTheCode) {
    for (unsigned number = 0; number < 40; ++number) {
        const GridSamples clean = softOf(pictures::dataMatrixModules(pictures::tagCode(number)));
        const MatrixSize* size = sizeOf(clean.columns);
        ASSERT_TRUE(size);
        GridSamples smeared = clean;
        std::mt19937 random(number);
        for (int hit = 0; hit < 16; ++hit) {
            const int row = 1 + static_cast<int>(random() % (clean.rows - 2)),
                      column = 1 + static_cast<int>(random() % (clean.columns - 2)),
                      place = row * clean.columns + column;
            smeared.values[place] = -0.3f * clean.values[place];
        }
        EXPECT_FALSE(mendMatrix(smeared, *size, 0, 0)) << number;
        const auto reading = mendByAgreement(smeared, *size);
        ASSERT_TRUE(reading) << number;
        EXPECT_EQ(reading->modules.values, clean.values);
        EXPECT_TRUE(reading->needsGuesswork());
    }
}

TEST(DataMatrix, findsNoAgreementInNoise) {
    std::mt19937 random(9);
    std::normal_distribution<float> noise;
    int told = 0;
    for (int round = 0; round < 2000; ++round) {
        GridSamples soft{14, 14, std::vector<float>(14 * 14)};
        for (float& value : soft.values)
            value = noise(random);
        told += mendByAgreement(soft, *sizeOf(14)).has_value();
    }
    EXPECT_LE(told, 4); // about one in a thousand, of which hardly any text is a tag
    EXPECT_FALSE(mendByAgreement(softOf(pictures::dataMatrixModules("777777")), *sizeOf(10)));
}
