#include "core/plan/lasting/weibull.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace core {
namespace {

/// The likelihood with the scale at its best for each shape, as a function of the shape alone. Times are in
/// units of the longest, so that no power runs over.
class Profile {
public:
    explicit Profile(const std::vector<TimedLife>& lives) {
        for (const TimedLife& life : lives)
            m_longest = std::max(m_longest, life.time);
        for (const TimedLife& life : lives) {
            m_logs.push_back(std::log(life.time / m_longest));
            if (!life.ended) continue;
            m_sumOfEnded += m_logs.back();
            m_earliest = std::min(m_earliest, m_logs.back());
            ++m_endings;
        }
    }

    bool hasFit() const { return m_earliest < 0; }

    struct Slope {
        double value;
        double change;
    };
    /// Of the profile per ending; it falls with the shape, so it has one zero.
    Slope slopeAt(double shape) const {
        double sum = 0, first = 0, second = 0;
        for (const double log : m_logs) {
            const double power = std::exp(shape * log);
            sum += power;
            first += power * log;
            second += power * log * log;
        }
        const double mean = first / sum;
        return {1 / shape + m_sumOfEnded / m_endings - mean,
                -1 / (shape * shape) - (second / sum - mean * mean)};
    }

    Weibull fitAt(double shape) const {
        double sum = 0;
        for (const double log : m_logs)
            sum += std::exp(shape * log);
        Weibull fit;
        fit.shape = shape;
        fit.scale = m_longest * std::pow(sum / m_endings, 1 / shape);
        const double logScale = std::log(fit.scale);
        fit.logLikelihood = m_endings * (std::log(shape) - shape * logScale - 1) +
                            (shape - 1) * (m_sumOfEnded + m_endings * std::log(m_longest));
        return fit;
    }

private:
    std::vector<double> m_logs;
    double m_longest = 0;
    double m_sumOfEnded = 0;
    double m_earliest = 0;
    int m_endings = 0;
};

/// Newton's steps, halved where they would leave what is known to hold the zero.
double zeroOf(const Profile& profile) {
    double low = 0, high = 1;
    while (profile.slopeAt(high).value > 0)
        low = std::exchange(high, 2 * high);
    double shape = std::max(low, high / 2);
    for (int step = 0; step < 200; ++step) {
        const auto slope = profile.slopeAt(shape);
        (slope.value > 0 ? low : high) = shape;
        double next = shape - slope.value / slope.change;
        if (!(next > low && next < high)) next = (low + high) / 2;
        if (std::abs(next - shape) <= 1e-14 * shape) return next;
        shape = next;
    }
    return shape;
}

} // namespace

double Weibull::lastingTo(double time) const {
    return std::exp(-std::pow(time / scale, shape));
}

double Weibull::timeOfShareEnded(double share) const {
    return scale * std::pow(-std::log1p(-share), 1 / shape);
}

std::optional<Weibull> fitWeibull(const std::vector<TimedLife>& lives) {
    const Profile profile(lives);
    if (!profile.hasFit()) return std::nullopt;
    return profile.fitAt(zeroOf(profile));
}

} // namespace core
