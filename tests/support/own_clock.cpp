#include "tests/support/own_clock.h"

#include <ctime>

namespace {

std::chrono::milliseconds aheadNow{0};

} // namespace

namespace support {

void setClockOff(std::chrono::milliseconds ahead) {
    aheadNow = ahead;
}

} // namespace support

// In place of the library's own, which is what a program finds that has none: the clock is asked in one place
// of core, and core knows nothing of tests.
std::chrono::system_clock::time_point std::chrono::system_clock::now() noexcept {
    timespec at{};
    ::clock_gettime(CLOCK_REALTIME, &at);
    return time_point(duration_cast<duration>(seconds(at.tv_sec) + nanoseconds(at.tv_nsec) + aheadNow));
}
