#pragma once

#include "core/hub/hub_url.h"

#include <chrono>
#include <memory>
#include <string>
#include <vector>

namespace pqxx {
class result;
} // namespace pqxx

namespace core {

/// A connection to a hub. Belongs to one thread. Nobody waits for ever: connecting ends after 10 seconds, a
/// call after 90. Throws StoreFailure: HubNotReached, also when the server went away beneath a call or kept
/// it waiting for too long; HubNotPrepared; HubRefused, with what the server says; what core/hub/hub_facts.h
/// says. After each of them but HubNotReached it may be used further.
class HubConnection {
public:
    /// `wake`: a file descriptor that ends the connecting when it can be read, or -1.
    explicit HubConnection(const HubUrl& url, int wake = -1);
    ~HubConnection();
    HubConnection(const HubConnection&) = delete;
    HubConnection& operator=(const HubConnection&) = delete;

    /// One statement, by itself a transaction, with its parameters as texts: one round trip. Within core/hub.
    pqxx::result run(const char* statement, const std::vector<std::string>& parameters);
    /// The same with its parameters in binary form: a text is its bytes, an array a BinaryArray. Whatever
    /// else is wanted is written as a text and cast by the statement (`$1::text::uuid`).
    pqxx::result runBinary(const char* statement, const std::vector<std::string>& parameters);
    /// A script without parameters, in one transaction. Within core/hub.
    void script(const std::string& statements);
    std::string quotedName(const std::string& name) const; ///< as an identifier of SQL

    int roundTrips() const { return m_roundTrips; } ///< since it stands

    /// From now on `waitForNews` hears when another machine of that club pushed something. False: it does
    /// already.
    bool listenTo(int club);
    /// False: the time is up, or `wake` (a file descriptor, or -1) can be read.
    bool waitForNews(std::chrono::milliseconds atMost, int wake);

private:
    struct Line;
    std::unique_ptr<Line> m_line;
    int m_roundTrips = 0;
};

} // namespace core
