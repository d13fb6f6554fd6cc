#pragma once

#include "core/plan/make_ready/make_ready.h"

#include <tuple>

namespace support {

/// Goals 1 to 4 of the best plan of a tiny task, by trying them all: priority weight (in thousandths), other
/// lines, substitutes, away. Shares nothing with the planner.
using GoalVector = std::tuple<long, int, int, int>;

GoalVector bestOfEveryPlan(const core::MakeReadyTask& task);

} // namespace support
