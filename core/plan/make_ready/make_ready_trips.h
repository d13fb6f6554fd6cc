#pragma once

#include "core/plan/make_ready/make_ready_problem.h"

#include <functional>
#include <vector>

namespace core {

/// Trips of that use: pairs of whereabouts and boat with at least one move.
int tripsOf(const MakeReadyProblem& problem, const std::vector<KitUse>& uses);

/// The same lines filled with no more substitutes nor items away from home, in fewer trips where a search
/// finds them: it takes up one trip after the other and looks for like kit that lies where a trip is made
/// anyway. No proof that there are no fewer. Asks `goOn` before each trip.
std::vector<KitUse> inFewerTrips(const MakeReadyProblem& problem, const std::vector<KitUse>& uses,
                                 const std::function<bool()>& goOn);

} // namespace core
