#pragma once

#include "core/plan/make_ready/make_ready_problem.h"

#include <optional>
#include <vector>

namespace core {

/// Lays kit to every filled line, with the fewest substitutes, then the fewest items away from their home,
/// then the fewest moves: exact, a minimum-cost flow in whole numbers (LEMON's network simplex). Empty when
/// the kit does not do.
std::optional<std::vector<KitUse>> cheapestUse(const MakeReadyProblem& problem, const FilledLines& filled);

} // namespace core
