#include "core/plan/replacement/survivors.h"

#include <boost/math/distributions/binomial.hpp>
#include <boost/math/special_functions/beta.hpp>

#include <algorithm>
#include <cmath>

namespace core {
namespace {

constexpr double nothing = 1e-19;

/// Whether P(X ≤ k) below the mean, or P(X ≥ k) above it, is less than 3e-20: Chernoff's bound. Most nodes
/// are settled by it when there are many items, at a tenth of the cost of the sum.
bool isOutOfReach(int k, int n, double gone) {
    constexpr double farthest = 45;
    const auto term = [](double share, double expected) {
        return share > 0 ? share * std::log(share / expected) : 0;
    };
    const double share = static_cast<double>(k) / n;
    return n * (term(share, 1 - gone) + term(1 - share, gone)) > farthest;
}

/// P(X < bound) for X ~ Binomial(n, 1 − gone).
double binomialBelow(int bound, int n, double gone) {
    if (bound <= 0) return 0;
    if (bound > n) return 1;
    if (gone <= 0) return 0;
    if (gone >= 1) return 1;
    const double mean = n * (1 - gone);
    if (bound - 1 < mean && isOutOfReach(bound - 1, n, gone)) return 0;
    if (bound > mean && isOutOfReach(bound, n, gone)) return 1;
    return boost::math::ibeta(n - bound + 1.0, static_cast<double>(bound), gone);
}

double binomialAt(int k, int n, double gone) {
    if (k < 0 || k > n) return 0;
    if (gone <= 0 || gone >= 1) return k == (gone <= 0 ? n : 0) ? 1 : 0;
    return boost::math::pdf(boost::math::binomial_distribution<double>(n, 1 - gone), k);
}

/// One binomial count and its chances, walked up or down without asking for each anew.
class Walk {
public:
    Walk(int n, double gone, int k)
        : m_n(n)
        , m_odds((1 - gone) / gone)
        , m_k(k)
        , m_chance(binomialAt(k, n, gone)) {}

    double chance() const { return m_chance; }
    void up() {
        m_chance *= m_odds * (m_n - m_k) / (m_k + 1.0);
        ++m_k;
    }
    void down() {
        m_chance *= m_k / ((m_n - m_k + 1.0) * m_odds);
        --m_k;
    }

private:
    int m_n;
    double m_odds;
    int m_k;
    double m_chance;
};

/// Sum over the survivors k of the old cohort, from the likeliest outwards, of P(k) · P(fresh < wanted − k).
double chanceOfBoth(int wanted, int old, double oldGone, int fresh, double freshGone) {
    const int last = std::min(old, wanted - 1);
    const int middle = std::clamp(static_cast<int>(std::floor((old + 1) * (1 - oldGone))), 0, last);
    double sum = 0;
    const Walk start(old, oldGone, middle);
    Walk up = start;
    for (int k = middle; k <= last && up.chance() > nothing; ++k, up.up())
        sum += up.chance() * binomialBelow(wanted - k, fresh, freshGone);
    Walk down = start;
    for (int k = middle - 1; k >= 0; --k) {
        down.down();
        if (down.chance() < nothing) break;
        sum += down.chance() * binomialBelow(wanted - k, fresh, freshGone);
    }
    return std::min(sum, 1.0);
}

double shareGone(double rate, double years) {
    return -std::expm1(-rate * years);
}

/// A polynomial in e^(−x) of degree s needs about so many nodes: each adds a factor (s / (1 + s))².
int nodesFor(double degree) {
    constexpr double perDegree = 14; // −ln 1e-12 / 2, rounded up
    return static_cast<int>(std::clamp(perDegree * (degree + 0.5), 64.0, 1600.0));
}

} // namespace

double chanceOfFewer(int wanted, const Cohort& old, const Cohort& fresh, double rate) {
    const double oldGone = shareGone(rate, old.years), freshGone = shareGone(rate, fresh.years);
    if (fresh.items == 0) return binomialBelow(wanted, old.items, oldGone);
    if (old.items == 0) return binomialBelow(wanted, fresh.items, freshGone);
    if (wanted > old.items + fresh.items) return 1;
    return chanceOfBoth(wanted, old.items, oldGone, fresh.items, freshGone);
}

Survivors::Survivors(LossRate rate, double mostItemYears)
    : m_rate(rate.rate)
    , m_nodes(gaussLaguerre(rate.shape, nodesFor(mostItemYears / rate.rate))) {}

double Survivors::chanceOfFewer(int wanted, const Cohort& old, const Cohort& fresh) const {
    double sum = 0;
    for (const QuadratureNode& node : m_nodes)
        sum += node.weight * core::chanceOfFewer(wanted, old, fresh, node.at / m_rate);
    return std::clamp(sum, 0.0, 1.0);
}

} // namespace core
