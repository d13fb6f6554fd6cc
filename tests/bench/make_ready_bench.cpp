#include "core/plan/make_ready/make_ready.h"
#include "tests/core/plan/make_ready/random_tasks.h"

#include <benchmark/benchmark.h>

#include <algorithm>

// Make-ready plans of a club (3 boats), a district (30) and a region (300) with kit for all but 5 to 15 % of
// the places, once the register is read. Each seed is another task; a line for each, so that the worst is
// seen. `seconds` is what the plan may take: goal (1) is proven within them when exact_goals is 1 or more.

namespace {

void makeReady(benchmark::State& state) {
    const int boats = static_cast<int>(state.range(0));
    const auto seed = static_cast<unsigned>(state.range(1));
    core::MakeReadyTask task = support::RandomTasks(seed).fleet(
        boats, std::max(1, boats / 30 * 5), 5 + 5 * static_cast<int>(seed % 3), state.range(2) == 1);
    task.seconds = static_cast<double>(state.range(3));
    core::MakeReadyPlan plan;
    for (auto _ : state)
        plan = core::planMakeReady(task);
    state.counters["items"] = static_cast<double>(task.kit.size());
    state.counters["exact_goals"] = plan.exactGoals;
    state.counters["weight_gap_%"] =
        100 * (plan.boundPriorityWeight / std::max(1.0, plan.goals.priorityWeight) - 1);
    state.counters["lines_gap"] = plan.boundOtherLines - plan.goals.otherLines;
    state.counters["trips"] = plan.goals.trips;
}
BENCHMARK(makeReady)
    ->ArgNames({"boats", "seed", "own_lines", "seconds"})
    ->ArgsProduct({{3, 30, 300}, {1, 2, 3, 4}, {0, 1}, {2, 10}})
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime()
    ->Iterations(1);

} // namespace
