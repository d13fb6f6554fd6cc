#pragma once

#include <QElapsedTimer>
#include <QTimer>

#include <chrono>

namespace support {

/// Measures how long the event loop of this thread is held up. A timer beats every 5 ms; a beat that comes
/// late was held up. Time that the thread was ready and another had the processor does not count, so that a
/// busy machine does not look like a slow program (Linux, proc(5): /proc/thread-self/schedstat, second
/// field).
class LoopWatch {
public:
    LoopWatch();

    /// The longest since it began or was asked last, up to now.
    std::chrono::milliseconds longest();

private:
    void beat();

    QTimer m_timer;
    QElapsedTimer m_clock;
    qint64 m_lastBeat = 0;    ///< nanoseconds
    qint64 m_lastWaiting = 0; ///< nanoseconds spent waiting for a processor
    qint64 m_longest = 0;
};

} // namespace support
