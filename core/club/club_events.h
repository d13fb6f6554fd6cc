#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

struct ClubState;
struct EventTally;
struct Operation;

/// Events that group checks, and what a crew writes about its trip. See Club for what holds of every
/// function.
class ClubEvents {
public:
    explicit ClubEvents(ClubState& state)
        : m_state(&state) {}

    /// Files a check under an event: a patrol, training day or carnival.
    Outcome fileUnder(const std::string& check, const std::string& event, Moment moment);
    std::vector<std::string> names() const; ///< that checks were filed under, newest first
    /// What went out and came back, over all boats. An event is a name that checks were filed under, or a
    /// day. NotFound without any check.
    Result<EventTally> tally(const std::string& event) const;
    /// What a crew writes about its trip, once its return check is signed or before; the newest holds. Hours
    /// and launches are counted to all kit that went out, once.
    Outcome recordOperation(const std::string& check, const Operation& operation, Moment moment);
    std::optional<Operation> operationOf(const std::string& check) const;

private:
    ClubState* m_state;
};

} // namespace core
