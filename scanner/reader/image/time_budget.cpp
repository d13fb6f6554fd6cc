#include "scanner/reader/image/time_budget.h"

#include <ctime>

namespace scanner::reader {

TimeBudget::TimeBudget(Duration budget, bool thread)
    : m_limited(true)
    , m_thread(thread)
    , m_end(now() + budget) {}

TimeBudget TimeBudget::ofWall(Duration budget) {
    return {budget, false};
}

TimeBudget TimeBudget::ofThread(Duration budget) {
    return {budget, true};
}

TimeBudget::Duration TimeBudget::now() const {
    timespec time{};
    clock_gettime(m_thread ? CLOCK_THREAD_CPUTIME_ID : CLOCK_MONOTONIC, &time);
    return std::chrono::seconds(time.tv_sec) + std::chrono::nanoseconds(time.tv_nsec);
}

} // namespace scanner::reader
