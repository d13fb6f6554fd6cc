#include "core/plan/lasting/survival_curve.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace core {
namespace {

std::vector<Life> lives(const std::vector<int>& ended, const std::vector<int>& censored) {
    std::vector<Life> all;
    for (const int days : censored)
        all.push_back({days, false});
    for (const int days : ended)
        all.push_back({days, true});
    return all;
}

/// 6-MP remissions in weeks (Blood 21:699–716, 1963).
SurvivalCurve remissions() {
    return SurvivalCurve(
        lives({6, 6, 6, 7, 10, 13, 16, 22, 23}, {6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35}));
}

TEST(SurvivalCurve, isThatOfThePublishedRemissions) {
    // Output of the R package `survival` for the same data.
    struct Row {
        int at, atRisk, endings;
        double lasting, error, low, high;
    };
    const std::vector<Row> table{
        {6, 21, 3, .8571429, .0763604, .720, 1.000}, {7, 17, 1, .8067227, .0869353, .653, .996},
        {10, 15, 1, .7529412, .0963497, .586, .968}, {13, 12, 1, .6901961, .1068147, .510, .935},
        {16, 11, 1, .6274510, .1140539, .439, .896}, {22, 7, 1, .5378151, .1282338, .337, .858},
        {23, 6, 1, .4481793, .1345915, .249, .807}};
    const SurvivalCurve curve = remissions();
    ASSERT_EQ(curve.steps().size(), table.size());
    for (std::size_t i = 0; i < table.size(); ++i) {
        const SurvivalStep& step = curve.steps()[i];
        EXPECT_EQ(step.days, table[i].at);
        EXPECT_EQ(step.atRisk, table[i].atRisk);
        EXPECT_EQ(step.endings, table[i].endings);
        EXPECT_NEAR(step.lasting, table[i].lasting, 5e-8);
        EXPECT_NEAR(step.error, table[i].error, 5e-8);
        EXPECT_NEAR(step.low, table[i].low, 5e-4);
        EXPECT_NEAR(step.high, table[i].high, 5e-4);
    }
    EXPECT_EQ(curve.medianDays(), 23);
}

TEST(SurvivalCurve, isThatOfThePublishedTable) {
    // Critical Care 2004 8:389, table 2.
    const SurvivalCurve curve(lives({1, 1, 4, 5, 9, 22}, {6, 9}));
    const std::vector<std::pair<int, double>> table{{1, .750}, {4, .625}, {5, .500}, {9, 1 / 3.0}, {22, 0}};
    ASSERT_EQ(curve.steps().size(), table.size());
    for (std::size_t i = 0; i < table.size(); ++i) {
        EXPECT_EQ(curve.steps()[i].days, table[i].first);
        EXPECT_NEAR(curve.steps()[i].lasting, table[i].second, 1e-12);
    }
    EXPECT_EQ(curve.medianDays(), 5);
    EXPECT_EQ(curve.steps().back().high, 0);
}

TEST(SurvivalCurve, isThatOfTheTwentyUnits) {
    // Failures and removals of NIST/SEMATECH e-Handbook 8.2.1.5; curve and errors by scipy 1.10 and numpy.
    std::vector<int> censored{50, 100, 125, 150};
    censored.insert(censored.end(), 10, 200);
    const SurvivalCurve curve(lives({10, 32, 56, 98, 122, 181}, censored));
    const std::vector<std::pair<double, double>> table{
        {.95, .0487339717},         {.90, .0670820393},         {.8470588235, .0813883199},
        {.7941176471, .0919212798}, {.7373949580, .1013568034}, {.6703590527, .1121406859}};
    ASSERT_EQ(curve.steps().size(), table.size());
    for (std::size_t i = 0; i < table.size(); ++i) {
        EXPECT_NEAR(curve.steps()[i].lasting, table[i].first, 1e-10);
        EXPECT_NEAR(curve.steps()[i].error, table[i].second, 1e-10);
    }
    EXPECT_EQ(curve.medianDays(), std::nullopt) << "more than half outlast the record";
}

TEST(SurvivalCurve, withoutCensoringIsTheShareThatIsLeft) {
    // Control arm of the same study: S at 1, 2, 3, 4, 5, 8, 11, 12, 15, 17, 22, 23.
    const std::vector<int> control{1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23};
    const std::vector<double> table{.9048, .8095, .7619, .6667, .5714, .3810,
                                    .2857, .1905, .1429, .0952, .0476, 0};
    const SurvivalCurve curve(lives(control, {}));
    ASSERT_EQ(curve.steps().size(), table.size());
    for (std::size_t i = 0; i < table.size(); ++i) {
        const auto longer = std::count_if(control.begin(), control.end(),
                                          [&](int days) { return days > curve.steps()[i].days; });
        EXPECT_NEAR(curve.steps()[i].lasting, table[i], 5e-5);
        EXPECT_NEAR(curve.steps()[i].lasting, static_cast<double>(longer) / 21, 1e-12);
    }
}

TEST(SurvivalCurve, saysNothingBeyondTheLongestLife) {
    const SurvivalCurve curve = remissions();
    EXPECT_EQ(curve.at(0)->lasting, 1);
    EXPECT_EQ(curve.at(5)->lasting, 1);
    EXPECT_NEAR(curve.at(6)->lasting, .8571429, 5e-8);
    EXPECT_NEAR(curve.at(35)->lasting, .4481793, 5e-8);
    EXPECT_EQ(curve.at(35)->atRisk, 1);
    EXPECT_EQ(curve.at(6)->atRisk, 21) << "that came to that age";
    EXPECT_EQ(curve.at(8)->atRisk, 16);
    EXPECT_FALSE(curve.at(36));
    EXPECT_FALSE(SurvivalCurve({}).at(0));
    EXPECT_EQ(SurvivalCurve({}).medianDays(), std::nullopt);
    EXPECT_TRUE(SurvivalCurve(lives({}, {3, 4})).steps().empty());
}

} // namespace
} // namespace core
