#include "tests/support/loop_watch.h"

#include <algorithm>
#include <fstream>
#include <utility>

namespace support {
namespace {

qint64 waitingForProcessor() {
    std::ifstream file("/proc/thread-self/schedstat");
    qint64 running = 0, waiting = 0;
    file >> running >> waiting;
    return waiting;
}

} // namespace

LoopWatch::LoopWatch() {
    m_timer.setTimerType(Qt::PreciseTimer);
    m_timer.callOnTimeout([this] { beat(); });
    m_clock.start();
    m_lastWaiting = waitingForProcessor();
    m_timer.start(5);
}

void LoopWatch::beat() {
    const qint64 now = m_clock.nsecsElapsed();
    const qint64 waiting = waitingForProcessor();
    m_longest = std::max(m_longest, (now - m_lastBeat) - (waiting - m_lastWaiting));
    m_lastBeat = now;
    m_lastWaiting = waiting;
}

std::chrono::milliseconds LoopWatch::longest() {
    beat();
    return std::chrono::milliseconds(std::exchange(m_longest, 0) / 1'000'000);
}

} // namespace support
