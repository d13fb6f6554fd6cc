#pragma once

#include <optional>
#include <vector>

namespace core {

/// A life in any unit of time, above 0.
struct TimedLife {
    double time = 0;
    bool ended = true;
};

/// A Weibull distribution of lives: shape above 1 means that things wear out, about 1 that age does not
/// matter.
struct Weibull {
    double shape = 1;
    double scale = 1; ///< in the lives' unit; 63 % end by then
    double logLikelihood = 0;

    double lastingTo(double time) const;         ///< share that lasts longer
    double timeOfShareEnded(double share) const; ///< above 0, below 1
};

/// The maximum-likelihood fit to right-censored lives (NIST/SEMATECH e-Handbook 8.4.1.3). Empty when
/// nothing ended before the longest life known: then no fit exists.
std::optional<Weibull> fitWeibull(const std::vector<TimedLife>& lives);

} // namespace core
