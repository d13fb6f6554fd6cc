#pragma once

#include "core/plan/make_ready/make_ready_problem.h"

#include <functional>
#include <optional>
#include <vector>

namespace core {

/// Lays kit to every filled line, with the fewest substitutes, then the fewest items away from their home,
/// then the fewest moves: exact, a minimum-cost flow in whole numbers (LEMON's network simplex). Empty when
/// the kit does not do.
std::optional<std::vector<KitUse>> cheapestUse(const MakeReadyProblem& problem, const FilledLines& filled);

/// Trips of that use: pairs of whereabouts and boat with at least one move.
int tripsOf(const MakeReadyProblem& problem, const std::vector<KitUse>& uses);

/// The same lines filled with no more substitutes nor items away from home, in fewer trips where a search
/// finds them: it takes up one trip after the other and looks for like kit that lies where a trip is made
/// anyway. No proof that there are no fewer. Asks `goOn` before each trip.
std::vector<KitUse> inFewerTrips(const MakeReadyProblem& problem, const std::vector<KitUse>& uses,
                                 const std::function<bool()>& goOn);

/// What must be carried, trip by trip: from places first, then from boats; within a trip in the manifest's
/// order.
std::vector<KitMove> movesOf(const MakeReadyTask& task, const MakeReadyProblem& problem,
                             const std::vector<KitUse>& uses);

/// Each boat, with what stays unfilled although all kit left over were laid to it.
std::vector<BoatPlan> boatPlansOf(const MakeReadyTask& task, const MakeReadyProblem& problem,
                                  const FilledLines& filled, const std::vector<KitUse>& uses);

} // namespace core
