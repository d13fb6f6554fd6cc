#pragma once

#include "core/base/calendar_day.h"
#include "core/register/boat.h"
#include "core/register/location.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// What a person asks of a plan.
struct MakeReadyQuestion {
    std::vector<std::string>
        places;                     ///< only kit at these, and aboard the planned boats; empty: at all places
    std::vector<std::string> boats; ///< only these; empty: all that are not out
    double seconds = 10;            ///< for all goals together; later the best found so far is the answer
};

/// An item that counts today and can be laid to a boat (design: rules 3 and 8).
struct KitOnHand {
    ItemName item;
    std::string kitType;
    std::string homeBoat; ///< empty: none
    Location at;
    std::optional<CalendarDay> due; ///< of items that are alike what is due first is used first
};

/// A boat that may be made complete. Priorities count to six digits after the point; a boat of priority 0 is
/// planned after all others.
struct BoatToPlan {
    std::string boat;
    double priority = 1;
    std::vector<ManifestLine> lines; ///< in the manifest's order
};

struct MakeReadyTask {
    std::vector<BoatToPlan> boats;
    std::vector<KitOnHand> kit;
    double seconds = 10;
};

/// Carry that item from there to the boat.
struct KitMove {
    ItemName item;
    std::string kitType;
    Location from;
    std::string to;
    std::string forKitType; ///< of the line that it fills; another than its own for a substitute
};

/// A line that stays unfilled.
struct ShortLine {
    std::string kitType;
    int wanted = 0;
    int have = 0; ///< places filled if all kit that the plan leaves over were laid to this boat alone
};

struct BoatPlan {
    std::string boat;
    double priority = 1;
    bool complete = false;                ///< all required lines are filled once the moves are done
    std::vector<ShortLine> shortLines;    ///< required lines of a boat left out
    std::vector<ShortLine> unfilledOther; ///< lines that are not required
    bool asksNothing = false;             ///< no required line: its launch check cannot be complete (rules 3)
};

struct MakeReadyGoals {
    double priorityWeight = 0; ///< of the complete boats
    int otherLines = 0;        ///< lines not required, on complete boats, with all places filled
    int substitutes = 0;       ///< places filled by another type than the line's own
    int away = 0;              ///< places filled by an item whose home is another boat
    int trips = 0;             ///< pairs of from and to with at least one move
};

struct MakeReadyPlan {
    std::vector<BoatPlan> boats;       ///< as they were given
    std::vector<KitMove> moves;        ///< trip by trip, places first
    MakeReadyGoals goals;              ///< what the plan reaches
    double boundPriorityWeight = 0;    ///< no plan reaches more
    int boundOtherLines = 0;           ///< no plan of that priority weight reaches more
    int exactGoals = 0;                ///< so many, from the first on, are proven to be the best possible
    std::vector<std::string> boatsOut; ///< at sea: neither planned, nor is their kit on hand
    std::vector<ItemName> notPlaced;   ///< sound items that nobody knows the place of

    bool proven() const { return exactGoals >= 2; }
};

/// Chooses the boats to complete and the items for them. The goals are served one after the other, each by a
/// mixed-integer program as far as the time goes (design: rules 8); trips are made few by a search that does
/// not prove that there are no fewer. The same task gives the same plan unless time runs out. Pure but for
/// the stopwatch.
MakeReadyPlan planMakeReady(const MakeReadyTask& task);

} // namespace core
