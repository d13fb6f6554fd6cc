#pragma once

#include "core/base/error_code.h"
#include "core/base/result.h"
#include "core/base/store_failure.h"
#include "core/club/club_hub.h"
#include "core/hub/hub_connection.h"

#include <cstdint>
#include <memory>
#include <string>

namespace core {

/// A connection to the hub at that URL. StoreFailure as HubConnection and hubUrlFrom say.
std::unique_ptr<HubConnection> connectedHub(const std::string& url);

/// Puts the URL to an error that has no place yet, unless it may hold a password.
void sayWhere(Error& error, const std::string& url);

/// What stands behind a HubLink.
struct HubLink::Line {
    Line();
    ~Line();
    Line(const Line&) = delete;
    Line& operator=(const Line&) = delete;

    /// Runs `work` on the connection, which is made if there is none to that URL. A kept one may have been
    /// cut since: then `work` runs again, from its beginning, on a new one.
    template <class Work>
    auto over(const std::string& to, Work work) -> decltype(work(std::declval<HubConnection&>()));
    void connect(const std::string& to);
    void drop();

    std::unique_ptr<HubConnection> connection;
    std::string url; ///< that it is of
    int club = 0;    ///< on the hub, of the last exchange; 0: there was none
    int wake = -1;   ///< readable from `stop` on
    int roundTripsBefore = 0;

    /// This machine's board as it was computed last, and what it was computed of: the file's change mark, and
    /// the day. No machine: this user wrote nothing in the file yet, and it has none.
    struct Board {
        std::int64_t mark = -1;
        std::string day, machine, text;
    } board;
};

template <class Work>
auto HubLink::Line::over(const std::string& to, Work work) -> decltype(work(std::declval<HubConnection&>())) {
    for (bool isKept = connection && url == to;; isKept = false) {
        try {
            if (!isKept) connect(to);
            return work(*connection);
        } catch (StoreFailure& failure) {
            const bool isCut = failure.error.code == ErrorCode::HubNotReached;
            if (isCut) drop();
            if (isCut && isKept) continue;
            sayWhere(failure.error, to);
            throw;
        }
    }
}

} // namespace core
