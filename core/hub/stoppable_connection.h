#pragma once

#include <chrono>
#include <pqxx/pqxx>
#include <string>

namespace core {

/// Connects like the library does, but for a limited time, and until somebody wants it to stop.
class StoppableConnecting : public pqxx::connectionpolicy {
public:
    StoppableConnecting(const std::string& settings, std::chrono::milliseconds atMost, int wake)
        : pqxx::connectionpolicy(settings)
        , m_atMost(atMost)
        , m_wake(wake) {}
    handle do_startconnect(handle kept) override;

private:
    void wait(handle started, bool isToBeRead, std::chrono::steady_clock::time_point end) const;

    const std::chrono::milliseconds m_atMost;
    const int m_wake;
};

/// A connection that stands, or pqxx::broken_connection. `wake`: a file descriptor that ends the connecting
/// when it can be read, or -1.
class StoppableConnection : public pqxx::connection_base {
public:
    StoppableConnection(const std::string& settings, std::chrono::milliseconds atMost, int wake);
    ~StoppableConnection() noexcept { close(); }

private:
    StoppableConnecting m_policy;
};

} // namespace core
