#pragma once

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <thread>

namespace core {

/// Ends a connection that keeps its caller waiting for too long: a server that is stopped, or a line that is
/// dead, would do so for ever. Its socket is shut down, and whoever reads from it hears that it has ended.
class TimeLimit {
public:
    explicit TimeLimit(std::chrono::milliseconds limit);
    ~TimeLimit();
    TimeLimit(const TimeLimit&) = delete;
    TimeLimit& operator=(const TimeLimit&) = delete;

    /// While it lives, the call that runs on that socket may take the limit.
    class Call {
    public:
        Call(TimeLimit& limit, int socket);
        ~Call();
        Call(const Call&) = delete;
        Call& operator=(const Call&) = delete;

    private:
        TimeLimit& m_limit;
    };

private:
    void watch();

    const std::chrono::milliseconds m_limit;
    std::mutex m_mutex;
    std::condition_variable m_changed;
    int m_socket = -1; ///< of the call that runs; -1: none does
    std::chrono::steady_clock::time_point m_end;
    bool m_isOver = false;
    std::thread m_thread;
};

} // namespace core
