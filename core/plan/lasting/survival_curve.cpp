#include "core/plan/lasting/survival_curve.h"

#include <algorithm>
#include <cmath>

namespace core {
namespace {

constexpr double normal95 = 1.959963984540054;

void addBand(SurvivalStep& step, double variance) {
    step.error = step.lasting * std::sqrt(variance);
    const double factor = std::exp(normal95 * std::sqrt(variance));
    step.low = step.lasting / factor;
    step.high = std::min(1.0, step.lasting * factor);
}

} // namespace

SurvivalCurve::SurvivalCurve(std::vector<Life> lives) {
    std::sort(lives.begin(), lives.end(), [](const Life& a, const Life& b) { return a.days < b.days; });
    for (const Life& life : lives)
        m_ages.push_back(life.days);
    double lasting = 1, variance = 0; // of the logarithm, by Greenwood
    for (std::size_t i = 0; i < lives.size();) {
        SurvivalStep step;
        step.days = lives[i].days;
        step.atRisk = static_cast<int>(lives.size() - i);
        for (; i < lives.size() && lives[i].days == step.days; ++i)
            step.endings += lives[i].ended ? 1 : 0;
        if (step.endings == 0) continue;
        const double left = step.atRisk - step.endings;
        step.lasting = lasting = lasting * left / step.atRisk;
        if (left > 0) {
            variance += step.endings / (step.atRisk * left);
            addBand(step, variance);
        } else {
            step.low = step.high = 0;
        }
        m_steps.push_back(step);
    }
}

std::optional<int> SurvivalCurve::medianDays() const {
    constexpr double half = .5 + 1e-12; // shares are products of quotients
    const auto found = std::find_if(m_steps.begin(), m_steps.end(),
                                    [](const SurvivalStep& step) { return step.lasting <= half; });
    return found == m_steps.end() ? std::nullopt : std::optional(found->days);
}

std::optional<SurvivalStep> SurvivalCurve::at(int days) const {
    const auto known = m_ages.end() - std::lower_bound(m_ages.begin(), m_ages.end(), days);
    if (days < 0 || known == 0) return std::nullopt;
    SurvivalStep found;
    for (const SurvivalStep& step : m_steps)
        if (step.days <= days) found = step;
    found.days = days;
    found.atRisk = static_cast<int>(known);
    found.endings = 0;
    return found;
}

} // namespace core
