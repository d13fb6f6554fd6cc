#pragma once

#include <chrono>

namespace scanner::reader {

/// Time that may be spent: by the clock on the wall, or, to measure on a busy machine, of the processor by
/// this thread.
class TimeBudget {
public:
    using Duration = std::chrono::nanoseconds;

    /// Without limit.
    TimeBudget() = default;
    /// Starts now.
    static TimeBudget ofWall(Duration budget);
    static TimeBudget ofThread(Duration budget);

    bool isSpent() const { return m_limited && now() >= m_end; }
    /// Whether it will be, with so much more work.
    bool isSpentAfter(Duration work) const { return m_limited && now() + work >= m_end; }

private:
    TimeBudget(Duration budget, bool thread);
    Duration now() const;

    bool m_limited = false;
    bool m_thread = false;
    Duration m_end{0};
};

} // namespace scanner::reader
