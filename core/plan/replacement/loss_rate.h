#pragma once

#include "core/register/item.h"

#include <cstdint>

namespace core {

/// A year of item-years and of chances, in days.
inline constexpr double daysOfYear = 365.25;

/// What is believed of losses before the club's own record speaks: so many losses in so many item-years.
struct LossPrior {
    double losses = 0.5;
    double itemYears = 10;
};

/// What a club's record says of one kit type.
struct LossRecord {
    int losses = 0;        ///< missing, or written off as lost
    std::int64_t days = 0; ///< that items were in service, added up

    /// Adds one item: its days in service, and whether it was lost. An item of unknown beginning gives no
    /// time, but its loss counts.
    void add(const Item& item, CalendarDay today);
    double itemYears() const { return static_cast<double>(days) / daysOfYear; }
};

/// The rate at which an item of a type is lost, per item-year: Gamma distributed. Conjugate to the Poisson
/// count of losses (NIST/SEMATECH e-Handbook 8.2.5 and 8.4.6).
struct LossRate {
    double shape = 0.5;
    double rate = 10; ///< item-years

    double mean() const { return shape / rate; }
};

LossRate lossRateOf(const LossRecord& record, const LossPrior& prior);

/// P(N ≤ count) of the losses N in `itemYears` when the rate is known only by its Gamma distribution:
/// negative binomial (Gamma–Poisson; Gelman et al., Bayesian Data Analysis, chapter 2).
double chanceOfAtMost(int count, LossRate rate, double itemYears);

/// The fewest spares that cover the losses of `itemYears` with that confidence (above 0, below 1).
int sparesFor(LossRate rate, double itemYears, double confidence);

} // namespace core
