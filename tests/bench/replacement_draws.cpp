#include "core/plan/replacement/shortage.h"
#include "core/plan/replacement/survivors.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <random>

// The chance of running short beside plain drawing: a rate from its Gamma distribution, a life for each item,
// and how often too few are left. Says how many standard errors apart the two are; exit 1 when any is
// beyond 4.
//   replacement_draws [DRAWS]       a million unless given

namespace core {
namespace {

struct Case {
    const char* name;
    int wanted;
    Cohort old, fresh;
    LossRate rate;
};

const Case cases[] = {
    {"20 items, 16 wanted, 2 years, Gamma(3, 40)", 16, {20, 2}, {}, {3, 40}},
    {"8 of 8 on 2027-04-01, Gamma(4.5, 90)", 8, {8, 455 / daysOfYear}, {}, {4.5, 90}},
    {"3 old and 8 new, 2029-01-01, Gamma(4, 80)", 8, {3, 1096 / daysOfYear}, {8, 642 / daysOfYear}, {4, 80}},
    {"6 old and 5 new, 2028-04-01, Gamma(4.5, 90)",
     8,
     {6, 821 / daysOfYear},
     {5, 367 / daysOfYear},
     {4.5, 90}},
    {"no record: 30 items, 16 wanted, 5 years", 16, {30, 5}, {}, {0.5, 10}},
    {"no record: 100 items, 80 wanted, 2 years", 80, {100, 2}, {}, {0.5, 10}},
};

int leftOf(const Cohort& cohort, double rate, std::mt19937_64& random) {
    std::exponential_distribution<double> life(rate);
    int left = 0;
    for (int i = 0; i < cohort.items; ++i)
        left += life(random) > cohort.years ? 1 : 0;
    return left;
}

double drawn(const Case& each, long draws, std::mt19937_64& random) {
    std::gamma_distribution<double> rates(each.rate.shape, 1 / each.rate.rate);
    long shorts = 0;
    for (long i = 0; i < draws; ++i) {
        const double rate = rates(random);
        shorts += leftOf(each.old, rate, random) + leftOf(each.fresh, rate, random) < each.wanted ? 1 : 0;
    }
    return static_cast<double>(shorts) / static_cast<double>(draws);
}

int compare(long draws) {
    std::mt19937_64 random(20260101);
    int apart = 0;
    for (const Case& each : cases) {
        const Survivors survivors(each.rate,
                                  each.old.items * each.old.years + each.fresh.items * each.fresh.years);
        const double reckoned = survivors.chanceOfFewer(each.wanted, each.old, each.fresh);
        const double seen = drawn(each, draws, random);
        const double error = std::sqrt(reckoned * (1 - reckoned) / static_cast<double>(draws));
        const double errors = (seen - reckoned) / error;
        std::printf("%-45s reckoned %.10f drawn %.6f ± %.6f (%+.2f)\n", each.name, reckoned, seen, error,
                    errors);
        apart += std::abs(errors) > 4 ? 1 : 0;
    }
    return apart;
}

} // namespace
} // namespace core

int main(int argc, char** argv) {
    const long draws = argc > 1 ? std::atol(argv[1]) : 1'000'000;
    if (draws < 1) return 2;
    return core::compare(draws) == 0 ? 0 : 1;
}
