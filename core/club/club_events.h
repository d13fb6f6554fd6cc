#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/phase.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

struct ClubState;
struct EventTally;
struct Operation;

/// An event of which each check is that is opened while it holds.
struct HeldEvent {
    std::string event;
    Instant since;
    Instant until; ///< it holds before it, and no more at it
    std::string by;
};

/// A launch or return check, and the event that it is filed under.
struct FiledCheck {
    std::string check; ///< its id
    std::string boat;
    Phase phase = Phase::Launch;
    Instant openedAt;
    std::string event; ///< empty: none
};

/// Events that group checks, and what a crew writes about its trip. See Club for what holds of every
/// function.
class ClubEvents {
public:
    explicit ClubEvents(ClubState& state)
        : m_state(&state) {}

    /// Files a check under an event: a patrol, training day or carnival.
    Outcome fileUnder(const std::string& check, const std::string& event, Moment moment);
    /// From now on an event holds: each launch and return check that is opened is of it, unless it is given
    /// another one, until the end of the moment's local day or `until`. One that holds already is over. The
    /// same event again, without another end, changes nothing. BadInput: no name, or an end that is past.
    Result<HeldEvent> begin(const std::string& event, std::optional<Instant> until, const std::string& by,
                            Moment moment);
    Result<HeldEvent> end(const std::string& by, Moment moment); ///< what held; NotFound: nothing does
    std::optional<HeldEvent> held(Instant now) const;
    std::vector<std::string> names() const; ///< that checks were filed under, newest first
    /// What went out and came back, over all boats. An event is a name that checks were filed under, or a
    /// day. NotFound without any check.
    Result<EventTally> tally(const std::string& event) const;
    /// The launch and return checks of an event or a day, as they were opened, but those that were let go.
    std::vector<FiledCheck> checksOf(const std::string& event) const;
    /// What a crew writes about its trip, once its return check is signed or before; the newest holds. Hours
    /// and launches are counted to all kit that went out, once.
    Outcome recordOperation(const std::string& check, const Operation& operation, Moment moment);
    std::optional<Operation> operationOf(const std::string& check) const;

private:
    ClubState* m_state;
};

} // namespace core
