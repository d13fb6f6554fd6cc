#include "core/hub/time_limit.h"

#include <sys/socket.h>

namespace core {

TimeLimit::TimeLimit(std::chrono::milliseconds limit)
    : m_limit(limit)
    , m_thread([this] { watch(); }) {}

TimeLimit::~TimeLimit() {
    {
        const std::lock_guard lock(m_mutex);
        m_isOver = true;
    }
    m_changed.notify_all();
    m_thread.join();
}

void TimeLimit::watch() {
    std::unique_lock lock(m_mutex);
    while (!m_isOver) {
        if (m_socket < 0)
            m_changed.wait(lock);
        else if (std::chrono::steady_clock::now() < m_end)
            m_changed.wait_until(lock, m_end);
        else {
            ::shutdown(m_socket, SHUT_RDWR); // not closed: that is its owner's
            m_socket = -1;
        }
    }
}

TimeLimit::Call::Call(TimeLimit& limit, int socket)
    : m_limit(limit) {
    const std::lock_guard lock(m_limit.m_mutex);
    m_limit.m_socket = socket;
    m_limit.m_end = std::chrono::steady_clock::now() + m_limit.m_limit;
    m_limit.m_changed.notify_all();
}

TimeLimit::Call::~Call() {
    const std::lock_guard lock(m_limit.m_mutex);
    m_limit.m_socket = -1;
}

} // namespace core
