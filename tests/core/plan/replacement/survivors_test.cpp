#include "core/plan/replacement/survivors.h"

#include <boost/math/distributions/beta.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace core {
namespace {

double chance(int wanted, Cohort old, LossRate rate, Cohort fresh = {}) {
    const Survivors survivors(rate, old.items * old.years + fresh.items * fresh.years);
    return survivors.chanceOfFewer(wanted, old, fresh);
}

TEST(Survivors, nodesAreThoseOfTheLaguerrePolynomials) {
    // Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.9, n = 5 (shape 1: weight e^(−x)).
    const std::vector<QuadratureNode> table{{.263560319718, .521755610583},
                                            {1.413403059107, .398666811083},
                                            {3.596425771041, .0759424496817},
                                            {7.085810005859, .00361175867992},
                                            {12.640800844276, .0000233699723858}};
    const auto nodes = gaussLaguerre(1, 5);
    ASSERT_EQ(nodes.size(), table.size());
    for (std::size_t i = 0; i < table.size(); ++i) {
        EXPECT_NEAR(nodes[i].at, table[i].at, 1e-11);
        EXPECT_NEAR(nodes[i].weight, table[i].weight, 1e-12);
    }
}

TEST(Survivors, nodesGiveTheMomentsOfAGammaDistribution) {
    for (const double shape : {0.5, 1.0, 4.5, 60.0, 5000.0})
        for (const int count : {1, 8, 64, 400}) {
            double mass = 0, mean = 0;
            for (const QuadratureNode& node : gaussLaguerre(shape, count)) {
                mass += node.weight;
                mean += node.weight * node.at;
            }
            EXPECT_NEAR(mass, 1, 1e-12) << shape << ' ' << count;
            EXPECT_NEAR(mean, shape, 1e-11 * shape) << shape << ' ' << count;
        }
}

TEST(Survivors, areBinomialAtAKnownRate) {
    // P(survivors ≤ 15 of 20), each with 0.9: cumulative binomial table, .0432 (four places).
    EXPECT_NEAR(chanceOfFewer(16, {20, 1}, {}, -std::log(.9)), .0432, 5e-5);
    EXPECT_NEAR(chanceOfFewer(16, {}, {20, 1}, -std::log(.9)), .0432, 5e-5);
    EXPECT_NEAR(chanceOfFewer(16, {12, 1}, {8, 1}, -std::log(.9)), .0432, 5e-5) << "two halves of one lot";
}

TEST(Survivors, mixedOverTheRateAreExact) {
    // n = 20, D = 16, Gamma(3, 40), two years: .18385133410 in exact rational arithmetic.
    EXPECT_NEAR(chance(16, {20, 2}, {3, 40}), .18385133410, 1e-11);
    // 5 % is passed at 1.1564421607 years; scipy 1.10.
    EXPECT_NEAR(chance(16, {20, 1.1564421607}, {3, 40}), .05, 1e-9);
}

/// The chance in closed form, for the few items that doubles bear: Σ over the losses of
/// C(n,k)·E[(1−s)^k·s^(n−k)].
double exactly(int wanted, int items, double years, LossRate rate) {
    long double sum = 0;
    for (int left = 0; left < wanted; ++left)
        for (int i = 0; i <= items - left; ++i) {
            const long double sign = i % 2 == 0 ? 1 : -1;
            const long double choose = std::exp(std::lgamma(items + 1.0L) - std::lgamma(left + 1.0L) -
                                                std::lgamma(i + 1.0L) - std::lgamma(items - left - i + 1.0L));
            sum += sign * choose *
                   std::pow(rate.rate / (rate.rate + years * (left + i)), (long double)rate.shape);
        }
    return static_cast<double>(sum);
}

TEST(Survivors, agreeWithTheClosedFormOfSmallLots) {
    for (const LossRate rate : {LossRate{0.5, 10}, LossRate{4.5, 90}, LossRate{30, 200}})
        for (const double years : {0.0, 0.3, 3.0, 10.0})
            for (int wanted = 1; wanted <= 8; ++wanted)
                EXPECT_NEAR(chance(wanted, {8, years}, rate), exactly(wanted, 8, years, rate), 1e-11)
                    << rate.shape << ' ' << years << ' ' << wanted;
}

/// The same chance another way round: the share of life by which the wanted-th item from the end is gone is
/// Beta distributed (an order statistic), and it is short when the rate is beyond that share. One integral
/// over a smooth function, by Boost's adaptive Gauss–Kronrod rule.
double byOrderStatistic(int wanted, int items, double years, LossRate rate) {
    const boost::math::beta_distribution<double> share(wanted, items - wanted + 1.0);
    const auto inside = [&](double s) {
        if (s <= 0 || s >= 1) return 0.0;
        return boost::math::pdf(share, s) *
               boost::math::gamma_q(rate.shape, -rate.rate * std::log(s) / years);
    };
    const double low = boost::math::quantile(share, 1e-17),
                 high = boost::math::quantile(complement(share, 1e-17));
    return boost::math::quadrature::gauss_kronrod<double, 31>::integrate(inside, low, high, 12, 1e-13);
}

TEST(Survivors, agreeWithTheLawOfTheOrderStatistic) {
    for (const LossRate rate :
         {LossRate{0.5, 10}, LossRate{4.5, 90}, LossRate{40, 900}, LossRate{2000, 50'000}})
        for (const int items : {1, 5, 40, 150})
            for (const double years : {0.5, 4.0})
                for (const int wanted : {items, items - items / 10, items - items / 3})
                    EXPECT_NEAR(chance(wanted, {items, years}, rate),
                                byOrderStatistic(wanted, items, years, rate), 1e-9)
                        << items << ' ' << wanted << ' ' << years << ' ' << rate.shape;
}

TEST(Survivors, ofACountrysItemsAreNearlyExact) {
    // With a record that goes with the number of items; and without any, where the nodes run out.
    const LossRate known{3000.5, 60'010}, unknown{0.5, 10};
    EXPECT_NEAR(chance(55'000, {60'000, 1.7}, known), byOrderStatistic(55'000, 60'000, 1.7, known), 1e-9);
    EXPECT_NEAR(chance(2'500, {3'000, 2}, unknown), byOrderStatistic(2'500, 3'000, 2, unknown), 2e-3);
}

TEST(Survivors, stayExactWhenLittleIsKnownOfManyItems) {
    // The Gamma(0.5, 10) of a club without a record: 64 nodes are wrong in the fifth digit here. Composite
    // Gauss–Legendre over the logarithm of the rate (numpy 1.24, scipy 1.10).
    EXPECT_NEAR(chance(16, {30, 5}, {0.5, 10}), 0.11071039491667845, 1e-11);
    EXPECT_NEAR(chance(80, {100, 2}, {0.5, 10}), 0.13329792785238315, 1e-11);
    EXPECT_NEAR(chance(250, {300, 3}, {20, 300}), 0.5926128775752669, 1e-11);
    EXPECT_NEAR(chance(900, {1000, 2}, {50, 1500}), 0.0027199458008717505, 1e-12);
}

TEST(Survivors, atTheEnds) {
    EXPECT_EQ(chance(8, {7, 0}, {3, 40}), 1) << "fewer there than wanted";
    EXPECT_EQ(chance(8, {8, 0}, {3, 40}), 0) << "no time, no loss";
    EXPECT_NEAR(chance(8, {8, 1}, {3, 40}), 1 - std::pow(40.0 / 48, 3), 1e-12) << "any loss is one too many";
    EXPECT_EQ(chance(0, {8, 1}, {3, 40}), 0);
    EXPECT_EQ(chance(8, {8, 1}, {3, 40}, {0, 1}), chance(8, {8, 1}, {3, 40}));
}

TEST(Survivors, ofManyItemsAreWhatTheNormalLawSays) {
    // A rate as good as known: the central limit theorem with continuity correction.
    const double rate = .05, share = std::exp(-rate);
    const int items = 100'000, wanted = static_cast<int>(items * share) - 100;
    const double sigma = std::sqrt(items * share * (1 - share));
    const double normal = .5 * std::erfc((items * share - (wanted - .5)) / sigma / std::sqrt(2.0));
    EXPECT_NEAR(chance(wanted, {items, 1}, {rate * 1e9, 1e9}), normal, 5e-4);
    EXPECT_NEAR(chance(wanted, {items / 2, 1}, {rate * 1e9, 1e9}, {items / 2, 1}), normal, 5e-4);
}

} // namespace
} // namespace core
