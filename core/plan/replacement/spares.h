#pragma once

#include "core/plan/replacement/loss_rate.h"

namespace core {

/// P(N ≤ count) of the losses N in `itemYears` when the rate is known only by its Gamma distribution:
/// negative binomial (Gamma–Poisson; Gelman et al., Bayesian Data Analysis, chapter 2).
double chanceOfAtMost(int count, LossRate rate, double itemYears);

/// The fewest spares that cover the losses of `itemYears` with that confidence (above 0, below 1).
int sparesFor(LossRate rate, double itemYears, double confidence);

} // namespace core
