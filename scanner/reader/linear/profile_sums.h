#pragma once

#include <span>
#include <vector>

namespace scanner::reader {

/// Sums of a profile from its beginning to any place, also between two values, so that means over stretches
/// cost nothing.
class ProfileSums {
public:
    explicit ProfileSums(std::span<const float> profile)
        : m_sums(profile.size() + 2, 0)
        , m_count(static_cast<int>(profile.size())) {
        for (std::size_t i = 0; i < profile.size(); ++i)
            m_sums[i + 1] = m_sums[i] + profile[i];
        m_sums.back() = m_sums[profile.size()]; // so that the end is a place like any other
    }

    int count() const { return m_count; } ///< values of the profile
    double value(int i) const { return m_sums[i + 1] - m_sums[i]; }
    /// Of all before the place; nothing before the beginning, all beyond the end.
    double to(double x) const {
        if (!(x > 0)) return 0;
        if (x >= m_count) return m_sums.back();
        const int i = static_cast<int>(x);
        return m_sums[i] + (x - i) * value(i);
    }
    /// The sums before each value, of all, and once more of all.
    const double* data() const { return m_sums.data(); }

private:
    std::vector<double> m_sums;
    int m_count;
};

} // namespace scanner::reader
