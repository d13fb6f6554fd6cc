#pragma once

#include "core/plan/gauss_laguerre.h"
#include "core/plan/replacement/loss_rate.h"

#include <vector>

namespace core {

/// Items that are all lost at the same rate, for so many years.
struct Cohort {
    int items = 0;
    double years = 0;
};

/// P(survivors < wanted) when each item is lost at `rate` per year: Binomial(n, e^(−rate·years)) survivors of
/// each cohort, added up. `rate` and years 0 or more.
double chanceOfFewer(int wanted, const Cohort& old, const Cohort& fresh, double rate);

/// The same, mixed over a loss rate that is known only by its Gamma distribution (design: rules 9). Made once
/// for a kit type and asked often.
class Survivors {
public:
    /// `mostItemYears`: the largest items · years that will be asked for; it decides the number of nodes, so
    /// that the mixture is right to about 1e-11 (up to a limit that no record of a club reaches; beyond it
    /// the error grows slowly).
    Survivors(LossRate rate, double mostItemYears);

    double chanceOfFewer(int wanted, const Cohort& old, const Cohort& fresh = {}) const;

private:
    double m_rate;
    std::vector<QuadratureNode> m_nodes;
};

} // namespace core
