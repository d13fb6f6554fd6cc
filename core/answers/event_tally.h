#pragma once

#include "core/answers/missing_list.h"

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
    std::string returnSignedBy;        ///< whoever was named aboard of that check
    std::vector<ItemName> out;         ///< what went out, by id
    std::vector<ItemName> back;        ///< of these, what came back on this boat
    std::vector<ItemName> notReturned; ///< of these, what no check has seen since the launch
};

/// An item that came back on another boat. `against`: the item of the same kit type that went the other way;
/// empty: none did.
struct Swap {
    ItemName item;
    std::string kitType;
    std::string wentOutOn;
    std::string cameBackOn;
    ItemName against;
};

/// What went out and what came back, over all boats of a patrol, training day or carnival.
struct EventTally {
    std::string event;
    std::vector<BoatTally> boats;     ///< by name
    std::vector<Swap> swaps;          ///< pairs first, each pair once, named by the item that went out first
    std::vector<MissingItem> missing; ///< of what went out, missing now
};

/// A thing that went out on a trip.
struct TripItem {
    ItemName item;
    std::string kitType;
    std::string backOn;     ///< the boat whose return check saw it first after the launch; empty: none did
    bool seenSince = false; ///< any check saw it after the launch
};

/// One signed launch check with what went out by it.
struct Trip {
    SignOff launch;
    std::vector<std::string> launchPeople; ///< whom it named
    std::optional<SignOff> next;           ///< the boat's next signed check, a launch or a return
    std::vector<std::string> nextPeople;
    std::vector<TripItem> kit; ///< in the order of the sightings, each once
};

/// Adds the trips up: as they were begun, a later one decides about what went out again. `missing`: the
/// club's missing list, of which the event keeps what went out. What the code settles under "an event". Pure.
EventTally tallyOf(const std::string& event, const std::vector<Trip>& trips,
                   const std::vector<MissingItem>& missing);

/// Those that were opened on that day in this machine's time zone.
std::vector<CheckRun> openedOn(CalendarDay day, std::vector<CheckRun> runs);

} // namespace core
