#include "scanner/reader/ordered_decoder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

using scanner::reader::OrderedDecoder;
using Bits = OrderedDecoder::Bits;

namespace {

constexpr int length = 24, information = 12;

/// The extended Golay code (24, 12) of distance 8 by its generator polynomial x^11 + x^10 + x^6 + x^5 + x^4 +
/// x^2 + 1 and a parity bit; MacWilliams and Sloane, "The Theory of Error-Correcting Codes", chapter 2, from
/// memory.
std::vector<Bits> golayGenerators() {
    std::vector<Bits> rows;
    for (int shift = 0; shift < information; ++shift) {
        std::uint64_t row = std::uint64_t{0xC75} << shift;
        if (__builtin_parityll(row)) row |= std::uint64_t{1} << (length - 1);
        rows.push_back({row});
    }
    return rows;
}

std::vector<std::uint64_t> allWords(const std::vector<Bits>& rows, std::uint64_t fixed) {
    std::vector<std::uint64_t> words{fixed};
    for (const Bits& row : rows)
        for (std::size_t i = 0, count = words.size(); i < count; ++i)
            words.push_back(words[i] ^ row[0]);
    return words;
}

float against(std::uint64_t word, const std::vector<float>& seen) {
    float wrong = 0, all = 0;
    for (int i = 0; i < length; ++i) {
        all += std::abs(seen[i]);
        if ((word >> i & 1) != (seen[i] > 0)) wrong += std::abs(seen[i]);
    }
    return wrong / all;
}

/// A word as it comes through noise: one is +1, nought -1.
std::vector<float> noisy(std::uint64_t word, float noise, std::mt19937& random) {
    std::normal_distribution<float> deviation(0, noise);
    std::vector<float> seen;
    for (int i = 0; i < length; ++i)
        seen.push_back((word >> i & 1 ? 1.0f : -1.0f) + deviation(random));
    return seen;
}

} // namespace

TEST(OrderedDecoder, theCodeOfThisTestIsGolays) {
    int eights = 0;
    for (const std::uint64_t word : allWords(golayGenerators(), 0)) {
        const int weight = __builtin_popcountll(word);
        EXPECT_TRUE(weight % 4 == 0 && weight != 4 && weight != 20);
        eights += weight == 8;
    }
    EXPECT_EQ(eights, 759);
}

// Judged by a look at all 4,096 words. Two turned bits are enough for a code of this length to miss hardly
// any.
TEST(OrderedDecoder, findsTheWordsThatAgreeBest) {
    const std::uint64_t fixed = 0x5A5A5A;
    const auto rows = golayGenerators();
    const auto words = allWords(rows, fixed);
    const OrderedDecoder decoder(length, {fixed}, rows);
    std::mt19937 random(11);
    int sameBest = 0, sameNext = 0;
    constexpr int rounds = 1000;
    for (int round = 0; round < rounds; ++round) {
        const auto seen = noisy(words[random() % words.size()], 0.8f, random);
        std::vector<float> all;
        for (const std::uint64_t word : words)
            all.push_back(against(word, seen));
        std::partial_sort(all.begin(), all.begin() + 2, all.end());
        const auto best = decoder.decode(seen);
        ASSERT_NE(std::find(words.begin(), words.end(), best.word[0]), words.end());
        ASSERT_NEAR(best.against, against(best.word[0], seen), 1e-5);
        sameBest += best.against < all[0] + 1e-5f;
        sameNext += best.nextAgainst < all[1] + 1e-5f;
    }
    EXPECT_GE(sameBest, rounds * 99 / 100);
    EXPECT_GE(sameNext, rounds * 80 / 100);
}

TEST(OrderedDecoder, mendsMoreThanHalfTheDistance) {
    const auto rows = golayGenerators();
    const auto words = allWords(rows, 0);
    const OrderedDecoder decoder(length, {}, rows);
    std::vector<float> seen;
    for (int i = 0; i < length; ++i)
        seen.push_back(words[1234] >> i & 1 ? 1.0f : -1.0f);
    for (const int place : {2, 7, 11, 15, 22}) // five; hard decisions mend three
        seen[place] *= -0.3f;
    const auto best = decoder.decode(seen);
    EXPECT_EQ(best.word[0], words[1234]);
    EXPECT_GT(best.nextAgainst, best.against);
}

TEST(OrderedDecoder, saysNothingOfNothing) {
    const OrderedDecoder decoder(length, {}, golayGenerators());
    const std::vector<float> blank(length, 0.0f), shorter(length - 1, 1.0f);
    EXPECT_EQ(decoder.decode(blank).against, 1);
    EXPECT_EQ(decoder.decode(shorter).against, 1);
}
