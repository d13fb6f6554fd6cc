#pragma once

#include "core/answers/missing_list.h"
#include "core/base/instant.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// What one boat took out and brought back in an event, summed over its trips.
struct BoatTally {
    std::string boat;
    std::optional<Instant> launchedAt; ///< the first signed launch check
    std::vector<std::string> launchedBy;
    std::optional<Instant> returnedAt; ///< the last signed return check; empty while it is out
    std::vector<std::string> returnedBy;
    std::vector<std::string> out;         ///< tag codes that went out, by code
    std::vector<std::string> back;        ///< of these, what came back on this boat
    std::vector<std::string> notReturned; ///< of these, what no check has seen since the launch
};

/// An item that came back on another boat. `against`: the item of the same kit type that went the other way;
/// empty: none did.
struct Swap {
    std::string code;
    std::string kitType;
    std::string wentOutOn;
    std::string cameBackOn;
    std::string against;
};

/// What went out and what came back, over all boats of a patrol, training day or carnival.
struct EventTally {
    std::string event;
    std::vector<BoatTally> boats;     ///< by name
    std::vector<Swap> swaps;          ///< pairs first, each pair once
    std::vector<MissingItem> missing; ///< of what went out, missing now
};

} // namespace core
