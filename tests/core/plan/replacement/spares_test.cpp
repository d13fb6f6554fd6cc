#include "core/plan/replacement/loss_rate.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace core {
namespace {

/// A rate that is as good as known: the negative binomial then is a Poisson distribution.
LossRate knownRate(double rate) {
    return {rate * 1e12, 1e12};
}

TEST(Spares, chancesAreThoseOfTheCumulativePoissonTable) {
    // Textbook table of the cumulative Poisson distribution, four places.
    struct Row {
        double mean;
        std::vector<double> below; ///< P(N ≤ 0), P(N ≤ 1) …
    };
    const std::vector<Row> table{
        {0.5, {.6065, .9098, .9856, .9982, .9998}},
        {1, {.3679, .7358, .9197, .9810, .9963, .9994, .9999}},
        {2, {.1353, .4060, .6767, .8571, .9473, .9834, .9955, .9989, .9998}},
        {5, {.0067, .0404, .1247, .2650, .4405, .6160, .7622, .8666, .9319, .9682, .9863}}};
    for (const Row& row : table)
        for (std::size_t k = 0; k < row.below.size(); ++k)
            EXPECT_NEAR(chanceOfAtMost(static_cast<int>(k), knownRate(row.mean), 1), row.below[k], 5e-5)
                << row.mean << ' ' << k;
}

TEST(Spares, areTheFewestThatReachTheConfidence) {
    // Follows from the same table.
    const std::vector<double> means{0.05, 0.1, 0.2, 0.3, 0.5, 0.75, 1,  1.5, 2,
                                    2.5,  3,   4,   5,   6,   8,    10, 15,  20};
    const std::vector<std::pair<double, std::vector<int>>> stock{
        {.90, {0, 0, 1, 1, 1, 2, 2, 3, 4, 5, 5, 7, 8, 9, 12, 14, 20, 26}},
        {.95, {0, 1, 1, 1, 2, 2, 3, 4, 5, 5, 6, 8, 9, 10, 13, 15, 22, 28}},
        {.99, {1, 1, 2, 2, 3, 3, 4, 5, 6, 7, 8, 9, 11, 12, 15, 18, 25, 31}}};
    for (const auto& [confidence, spares] : stock)
        for (std::size_t i = 0; i < means.size(); ++i)
            EXPECT_EQ(sparesFor(knownRate(means[i]), 1, confidence), spares[i])
                << confidence << ' ' << means[i];
    // One hundred and four in a year, 5 % stock-out: 121 (University of Southampton, edshare document 6210).
    EXPECT_EQ(sparesFor(knownRate(104), 1, .95), 121);
}

TEST(Spares, changeAtTheBreakPoints) {
    // The largest mean for which 0, 1, 2, 3 suffice at 95 %, to five places.
    const std::vector<double> breaks{0.05129, 0.35536, 0.81769, 1.36632, 1.97015, 2.61301};
    for (std::size_t s = 0; s < breaks.size(); ++s) {
        EXPECT_EQ(sparesFor(knownRate(breaks[s] - 1e-5), 1, .95), static_cast<int>(s));
        EXPECT_EQ(sparesFor(knownRate(breaks[s] + 1e-5), 1, .95), static_cast<int>(s) + 1);
    }
}

TEST(Spares, areMoreWhenTheRateIsHardlyKnown) {
    // Gamma–Poisson: the predictive distribution is negative binomial; recomputed with scipy 1.10.
    const LossRate thin{6, 7};
    EXPECT_NEAR(chanceOfAtMost(0, thin, 1), .448795, 1e-6);
    EXPECT_NEAR(chanceOfAtMost(2, thin, 1), .448795 + .336596 + .147261, 2e-6);
    const std::vector<double> confidences{.90, .95, .99};
    const auto sparesOf = [&](LossRate rate, double itemYears) {
        std::vector<int> spares;
        for (const double confidence : confidences)
            spares.push_back(sparesFor(rate, itemYears, confidence));
        return spares;
    };
    EXPECT_EQ(sparesOf({6, 7}, 1), (std::vector<int>{2, 3, 4}));
    EXPECT_EQ(sparesOf({6, 7}, 2), (std::vector<int>{4, 4, 6}));
    EXPECT_EQ(sparesOf({21, 6}, 1), (std::vector<int>{6, 7, 9}));
    EXPECT_EQ(sparesOf({1.5, 3}, 1), (std::vector<int>{2, 2, 3}));
    EXPECT_EQ(sparesOf(knownRate(.5), 1), (std::vector<int>{1, 2, 3})) << "as if the rate were known";
    EXPECT_EQ(sparesOf({0.5, 32441}, 90247), (std::vector<int>{4, 6, 11}));
}

TEST(Spares, ofALongerLeadTime) {
    // Gamma(7.5, 130.8333), 24 items for 1.5 years; scipy 1.10.
    const LossRate rate{7.5, 10 + 120 + 5.0 / 6};
    EXPECT_NEAR(chanceOfAtMost(0, rate, 36), .1615350775, 1e-9);
    EXPECT_NEAR(1 - chanceOfAtMost(3, rate, 36), .1734664202, 1e-9);
    EXPECT_NEAR(1 - chanceOfAtMost(5, rate, 36), .0346160188, 1e-9);
    EXPECT_EQ(sparesFor(rate, 36, .95), 5);
    EXPECT_EQ(sparesFor(rate, 0, .95), 0) << "nothing is lost in no time";
}

} // namespace
} // namespace core
