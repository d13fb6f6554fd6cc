#include "scanner/reader/reed_solomon.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <random>
#include <vector>

using scanner::reader::ReedSolomon;

namespace {

using Word = std::vector<std::uint8_t>;

// ISO/IEC 18004, annex I: "01234567" as version 1-M, from memory.
const Word qrWord{0x10, 0x20, 0x0C, 0x56, 0x61, 0x80, 0xEC, 0x11, 0xEC, 0x11, 0xEC, 0x11, 0xEC,
                  0x11, 0xEC, 0x11, 0xA5, 0x24, 0xD4, 0xC1, 0xED, 0x36, 0xC7, 0x87, 0x2C, 0x55};
// ISO/IEC 16022, annex O: "123456" as a 10 × 10 symbol, from memory.
const Word matrixWord{142, 164, 186, 114, 25, 5, 88, 102};

/// Calls `use` with every choice of `count` places out of `size`.
template <class Use>
void forEveryChoice(int size, int count, const Use& use) {
    std::vector<bool> chosen(size, false);
    std::fill(chosen.begin(), chosen.begin() + count, true);
    do {
        std::vector<int> places;
        for (int i = 0; i < size; ++i)
            if (chosen[i]) places.push_back(i);
        use(places);
    } while (std::prev_permutation(chosen.begin(), chosen.end()));
}

} // namespace

TEST(ReedSolomon, publishedQrWordIsACodeWord) {
    Word word = qrWord;
    EXPECT_EQ(ReedSolomon::forQr().mend(word, 10), 0);
    word[3] ^= 1;
    EXPECT_EQ(ReedSolomon::forQr().mend(word, 10), 1);
    EXPECT_EQ(word, qrWord);
}

TEST(ReedSolomon, completesThePublishedWords) {
    Word qr = qrWord, matrix = matrixWord;
    std::fill(qr.begin() + 16, qr.end(), std::uint8_t{0});
    std::fill(matrix.begin() + 3, matrix.end(), std::uint8_t{0});
    ReedSolomon::forQr().complete(qr, 10);
    ReedSolomon::forDataMatrix().complete(matrix, 5);
    EXPECT_EQ(qr, qrWord);
    EXPECT_EQ(matrix, matrixWord);
}

TEST(ReedSolomon, mendsEveryChoiceOfPlacesUpToTheBound) {
    std::mt19937 random(1);
    for (int errors = 1; errors <= 5; ++errors)
        forEveryChoice(18, errors, [&](const std::vector<int>& places) {
            Word word(18);
            for (int i = 0; i < 8; ++i)
                word[i] = static_cast<std::uint8_t>(random());
            ReedSolomon::forDataMatrix().complete(word, 10);
            Word broken = word;
            for (const int place : places)
                broken[place] ^= static_cast<std::uint8_t>(1 + random() % 255);
            ASSERT_EQ(ReedSolomon::forDataMatrix().mend(broken, 10), errors);
            ASSERT_EQ(broken, word);
        });
}

TEST(ReedSolomon, mendsEveryValueOfOneAndTwoErrors) {
    for (int value = 1; value < 256; ++value)
        forEveryChoice(8, 1, [&](const std::vector<int>& places) {
            Word broken = matrixWord;
            broken[places[0]] ^= static_cast<std::uint8_t>(value);
            ASSERT_EQ(ReedSolomon::forDataMatrix().mend(broken, 5), 1);
            ASSERT_EQ(broken, matrixWord);
        });
    for (int value = 1; value < 256; value += 2)
        for (int other = 1; other < 256; other += 6)
            forEveryChoice(8, 2, [&](const std::vector<int>& places) {
                Word broken = matrixWord;
                broken[places[0]] ^= static_cast<std::uint8_t>(value);
                broken[places[1]] ^= static_cast<std::uint8_t>(other);
                ASSERT_EQ(ReedSolomon::forDataMatrix().mend(broken, 5), 2);
                ASSERT_EQ(broken, matrixWord);
            });
}

TEST(ReedSolomon, mendsErrorsBesideErasuresUpToTheBound) {
    std::mt19937 random(2);
    constexpr int size = 26, checks = 17; // a tag
    for (int erased = 0; erased <= checks; ++erased)
        for (int round = 0; round < 200; ++round) {
            Word word(size);
            for (int i = 0; i < size - checks; ++i)
                word[i] = static_cast<std::uint8_t>(random());
            ReedSolomon::forQr().complete(word, checks);
            std::vector<int> places(size);
            std::iota(places.begin(), places.end(), 0);
            std::shuffle(places.begin(), places.end(), random);
            const int errors = (checks - erased) / 2;
            Word broken = word;
            for (int i = 0; i < erased; ++i)
                broken[places[i]] = static_cast<std::uint8_t>(random());
            for (int i = erased; i < erased + errors; ++i)
                broken[places[i]] ^= static_cast<std::uint8_t>(1 + random() % 255);
            ASSERT_EQ(ReedSolomon::forQr().mend(broken, checks, std::span(places).first(erased)), errors);
            ASSERT_EQ(broken, word);
        }
}

TEST(ReedSolomon, leavesAWordBeyondMendingAsItWas) {
    std::mt19937 random(3);
    int refused = 0;
    for (int round = 0; round < 1000; ++round) {
        Word word(26);
        for (auto& value : word)
            value = static_cast<std::uint8_t>(random());
        const Word before = word;
        if (ReedSolomon::forQr().mend(word, 17) >= 0) continue;
        ++refused;
        ASSERT_EQ(word, before);
    }
    EXPECT_EQ(refused, 1000); // of random words one in 3·10^15 lies within eight errors of a code word
}

TEST(ReedSolomon, refusesSizesThatMakeNoSense) {
    Word word = matrixWord;
    const std::vector<int> six{0, 1, 2, 3, 4, 5};
    EXPECT_EQ(ReedSolomon::forDataMatrix().mend(word, 5, six), -1);
    EXPECT_EQ(ReedSolomon::forDataMatrix().mend(word, 8), -1);
    EXPECT_EQ(ReedSolomon::forDataMatrix().mend(word, 0), -1);
    EXPECT_EQ(ReedSolomon::forDataMatrix().mend(word, 5), 0);
}
