#include "core/plan/lasting/weibull.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace core {
namespace {

std::vector<TimedLife> timedLives(const std::vector<double>& ended, const std::vector<double>& censored) {
    std::vector<TimedLife> all;
    for (const double time : ended)
        all.push_back({time, true});
    for (const double time : censored)
        all.push_back({time, false});
    return all;
}

TEST(Weibull, fitsThePublishedFailures) {
    // NIST/SEMATECH e-Handbook 8.4.1.3: ten failures, ten units still running at 500 hours; printed there:
    // scale 606.5280, shape 1.7208, log-likelihood 75.135 (its sign is lost). Last digits by scipy 1.10.
    const auto fit = fitWeibull(
        timedLives({54, 187, 216, 240, 244, 335, 361, 373, 375, 386}, std::vector<double>(10, 500)));
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->scale, 606.52756, 5e-5);
    EXPECT_NEAR(fit->shape, 1.720797, 5e-7);
    EXPECT_NEAR(fit->logLikelihood, -75.13462, 5e-5);
    EXPECT_NEAR(fit->timeOfShareEnded(.1), 164.02, 5e-2);
    EXPECT_NEAR(fit->lastingTo(400), .61352, 1e-5);
    EXPECT_NEAR(fit->lastingTo(500) / fit->lastingTo(400), .79557, 1e-5);
    EXPECT_NEAR(fit->scale * std::tgamma(1 + 1 / fit->shape), 540.737, 5e-3) << "the mean";
}

TEST(Weibull, fitsTheWorkedExample) {
    // scipy 1.10.
    const auto fit = fitWeibull(timedLives({2.1, 3.4, 4.0, 4.7, 5.2, 5.9, 6.3, 7.1},
                                           {1.0, 2.5, 3.0, 4.5, 5.0, 6.0, 6.5, 7.5, 8, 8, 8, 8}));
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->shape, 2.5763384667, 1e-9);
    EXPECT_NEAR(fit->scale, 8.4439147051, 1e-9);
    EXPECT_NEAR(fit->logLikelihood, -25.2896272527, 1e-9);
    EXPECT_NEAR(fit->timeOfShareEnded(.1), 3.5253192363, 1e-9);
    EXPECT_NEAR(fit->lastingTo(5), .7716420608, 1e-9);
    EXPECT_NEAR(fit->lastingTo(7) / fit->lastingTo(5), .6993533456, 1e-9);
}

TEST(Weibull, doesNotDependOnTheUnitOfTime) {
    const auto days = fitWeibull(timedLives({210, 340, 400, 470, 520}, {800}));
    const auto years = fitWeibull(timedLives({2.10, 3.40, 4.00, 4.70, 5.20}, {8.00}));
    ASSERT_TRUE(days && years);
    EXPECT_NEAR(days->shape, years->shape, 1e-10);
    EXPECT_NEAR(days->scale, 100 * years->scale, 1e-8);
}

TEST(Weibull, findsWhatItWasDrawnFrom) {
    std::mt19937_64 random(7);
    std::weibull_distribution<double> drawn(2.2, 9);
    std::vector<TimedLife> sample;
    for (int i = 0; i < 20'000; ++i) {
        const double time = drawn(random);
        sample.push_back({std::min(time, 10.0), time <= 10});
    }
    const auto fit = fitWeibull(sample);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->shape, 2.2, .06); // four standard errors, about 0.8/√n of each
    EXPECT_NEAR(fit->scale, 9, .15);
}

TEST(Weibull, hasNoFitWhenNothingEndedBeforeTheLongestLife) {
    EXPECT_FALSE(fitWeibull({}));
    EXPECT_FALSE(fitWeibull(timedLives({}, {3, 4, 5})));
    EXPECT_FALSE(fitWeibull(timedLives({5, 5, 5}, {3, 4})));
    const auto barely = fitWeibull(timedLives({4.9, 5, 5}, {3, 4}));
    ASSERT_TRUE(barely);
    EXPECT_GT(barely->shape, 10);
    const auto sameAge = fitWeibull(timedLives({5, 5, 5}, {6}));
    ASSERT_TRUE(sameAge);
    EXPECT_TRUE(std::isfinite(sameAge->shape) && std::isfinite(sameAge->scale));
}

} // namespace
} // namespace core
