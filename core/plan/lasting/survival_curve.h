#pragma once

#include <optional>
#include <vector>

namespace core {

/// How long one thing lasted, in days: until it ended, or until it was last known to be there (censored).
struct Life {
    int days = 0;
    bool ended = true;
};

/// One age at which something ended.
struct SurvivalStep {
    int days = 0;
    int atRisk = 0; ///< that had come to this age
    int endings = 0;
    double lasting = 1; ///< share that lasts longer
    double error = 0;   ///< Greenwood's standard error of it; 0 when the share is 0
    double low = 1;     ///< 95 % band on the logarithm, cut at 1; 0 to 0 when the share is 0
    double high = 1;
};

/// The curve of Kaplan and Meier with censoring: an ending and a censoring at the same age, the ending counts
/// first. One step for each age with an ending, rising.
class SurvivalCurve {
public:
    explicit SurvivalCurve(std::vector<Life> lives);

    const std::vector<SurvivalStep>& steps() const { return m_steps; }
    /// The first age to which at most half last; empty when more than half last to the end of the record.
    std::optional<int> medianDays() const;
    /// The curve at an age, with what came to it and without endings: empty beyond the longest life known.
    /// Before the first ending all last, and there is no band.
    std::optional<SurvivalStep> at(int days) const;

private:
    std::vector<SurvivalStep> m_steps;
    std::vector<int> m_ages; ///< that lives came to, rising
};

} // namespace core
