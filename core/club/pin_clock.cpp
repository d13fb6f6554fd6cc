#include "core/club/pin_clock.h"

#include <ctime>
#include <fstream>

namespace core {

Instant PinClock::now() const {
    return Instant::now();
}

std::int64_t PinClock::awake() const {
    timespec time{};
    ::clock_gettime(CLOCK_BOOTTIME, &time);
    return std::int64_t{time.tv_sec} * 1000 + time.tv_nsec / 1'000'000;
}

std::string PinClock::boot() const {
    std::ifstream file("/proc/sys/kernel/random/boot_id");
    std::string id;
    std::getline(file, id);
    return id;
}

const PinClock& clockOfComputer() {
    static const PinClock clock;
    return clock;
}

} // namespace core
