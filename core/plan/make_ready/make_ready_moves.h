#pragma once

#include "core/plan/make_ready/make_ready_problem.h"

#include <vector>

namespace core {

/// What must be carried, trip by trip: from places first, then from boats; within a trip in the manifest's
/// order.
std::vector<KitMove> movesOf(const MakeReadyTask& task, const MakeReadyProblem& problem,
                             const std::vector<KitUse>& uses);

/// Each boat, with what stays unfilled although all kit left over were laid to it.
std::vector<BoatPlan> boatPlansOf(const MakeReadyTask& task, const MakeReadyProblem& problem,
                                  const FilledLines& filled, const std::vector<KitUse>& uses);

} // namespace core
