#pragma once

#include <chrono>

namespace support {

/// This program's clock (std::chrono::system_clock) is wrong by so much, from now on: what a machine writes
/// by a clock that somebody set badly. A program that links own_clock.cpp has this clock instead of the
/// library's.
void setClockOff(std::chrono::milliseconds ahead);

} // namespace support
