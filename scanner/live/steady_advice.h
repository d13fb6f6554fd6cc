#pragma once

#include "scanner/live/picture_advice.h"

#include <chrono>

namespace scanner {

/// Makes of the advice on single pictures what a person can read: another advice, or none, takes over only
/// when every look for a while has given it. A value: no clock, no thread.
class SteadyAdvice {
public:
    explicit SteadyAdvice(std::chrono::milliseconds hold = std::chrono::milliseconds(800))
        : m_hold(hold) {}

    /// What one further look gave. `at` is the source's own time and never falls. True when it changes what
    /// is told.
    bool update(PictureAdvice advice, std::chrono::milliseconds at);
    PictureAdvice told() const { return m_told; }

private:
    std::chrono::milliseconds m_hold;
    PictureAdvice m_told = PictureAdvice::None;
    PictureAdvice m_last = PictureAdvice::None;
    std::chrono::milliseconds m_since{0}; ///< the first look that gave m_last
};

} // namespace scanner
