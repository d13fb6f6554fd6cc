#pragma once

#include "core/base/instant.h"

#include <cstdint>
#include <string>

namespace core {

/// By which unlocking and waiting are measured: this computer's clocks, or a test's.
class PinClock {
public:
    virtual ~PinClock() = default;
    virtual Instant now() const; ///< whoever sets the clock sets it, too
    /// Milliseconds since the computer was started, also those in which it slept. Nobody sets them.
    virtual std::int64_t awake() const;
    virtual std::string boot() const; ///< another text after each start of the computer
};

const PinClock& clockOfComputer();

} // namespace core
