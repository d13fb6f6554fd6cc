#include "core/hub/stoppable_connection.h"

#include <array>
#include <libpq-fe.h>
#include <new>
#include <poll.h>

namespace core {

using namespace std::chrono_literals;

StoppableConnection::StoppableConnection(const std::string& settings, std::chrono::milliseconds atMost,
                                         int wake)
    : pqxx::connection_base(m_policy)
    , m_policy(settings, atMost, wake) {
    init();
}

void StoppableConnecting::wait(handle started, bool isToBeRead,
                               std::chrono::steady_clock::time_point end) const {
    const auto left =
        std::chrono::duration_cast<std::chrono::milliseconds>(end - std::chrono::steady_clock::now());
    const short wanted = isToBeRead ? POLLIN : POLLOUT;
    std::array<pollfd, 2> handles{{{PQsocket(started), wanted, 0}, {m_wake, POLLIN, 0}}};
    if (left <= 0ms || ::poll(handles.data(), handles.size(), static_cast<int>(left.count())) == 0)
        throw pqxx::broken_connection("timeout expired");
    if (handles[1].revents != 0) throw pqxx::broken_connection("stopped");
}

/// PostgreSQL, "Database Connection Control Functions": PQconnectPoll.
pqxx::connectionpolicy::handle StoppableConnecting::do_startconnect(handle kept) {
    if (kept != nullptr) return kept;
    const auto end = std::chrono::steady_clock::now() + m_atMost;
    handle started = PQconnectStart(options().c_str());
    if (started == nullptr) throw std::bad_alloc();
    try {
        if (PQstatus(started) == CONNECTION_BAD) throw pqxx::broken_connection(PQerrorMessage(started));
        for (auto next = PGRES_POLLING_WRITING; next != PGRES_POLLING_OK; next = PQconnectPoll(started)) {
            if (next == PGRES_POLLING_FAILED) throw pqxx::broken_connection(PQerrorMessage(started));
            wait(started, next == PGRES_POLLING_READING, end);
        }
    } catch (...) {
        PQfinish(started);
        throw;
    }
    return started;
}

} // namespace core
