#include "core/check/assignment.h"
#include "core/check/boat_check.h"
#include "core/upkeep/due_date.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <random>

// How long the rules take and how that grows. Targets on one core: a due list of 8,000 items under 20 ms, an
// assignment of 1,000 places under 100 ms.

namespace core {
namespace {

LifeRule rule(const char* name, RuleKind kind, double n) {
    LifeRule made;
    made.name = name;
    made.kind = kind;
    made.n = n;
    made.source = "maker's instructions";
    return made;
}

/// As a life jacket has it: printed expiry, age, a yearly service with steps, and a cylinder of its own.
KitType datedType() {
    KitType kitType;
    kitType.name = "life jacket";
    kitType.rules = {rule("expiry", RuleKind::Stamped, 0), rule("age", RuleKind::FromMade, 120),
                     rule("service", RuleKind::ServiceEvery, 24), rule("cylinder", RuleKind::FromMade, 36)};
    kitType.rules[2].steps = {{108, 12}};
    kitType.rules[3].part = "cylinder";
    return kitType;
}

ItemRecord datedItem(std::mt19937& random) {
    const auto day = [&](int from) {
        return CalendarDay::fromNumber(from + static_cast<int>(random() % 2000));
    };
    ItemRecord record;
    record.item.made = day(736000);
    record.item.stamped = day(739000);
    record.parts = {{"cylinder", day(737500), {}, {}}};
    for (int i = 0; i < 3; ++i)
        record.services.push_back({"", "service", day(737000), {}, true});
    return record;
}

/// Every item's rules, and the items in the order of their earliest due day.
void dueList(benchmark::State& state) {
    std::mt19937 random(1);
    const KitType kitType = datedType();
    std::vector<ItemRecord> items;
    for (int i = 0; i < 10000; ++i)
        items.push_back(datedItem(random));
    const CalendarDay today = CalendarDay::fromNumber(739689);
    for (auto _ : state) {
        std::vector<std::pair<int, int>> byDue;
        byDue.reserve(static_cast<std::size_t>(state.range(0)));
        for (int i = 0; i < state.range(0); ++i) {
            const auto dues = dueDatesOf(items[static_cast<std::size_t>(i) % items.size()], kitType, today);
            byDue.emplace_back(earliestOf(dues)->due->number(), i);
        }
        std::sort(byDue.begin(), byDue.end());
        benchmark::DoNotOptimize(byDue.data());
    }
    state.SetComplexityN(state.range(0));
}
BENCHMARK(dueList)->Arg(300)->Arg(8000)->Arg(1000000)->Unit(benchmark::kMillisecond)->Complexity();

/// Lines of four like places, each with one substitute, as boats have them.
AssignmentTask linesOfFour(int places) {
    std::mt19937 random(2);
    AssignmentTask task;
    const int types = places / 4 + 1;
    std::vector<int> typeOf;
    for (int i = 0; i < places * 11 / 10; ++i) {
        task.items.push_back({random() % 5 > 0, 738000 + static_cast<int>(random() % 900)});
        typeOf.push_back(static_cast<int>(random() % static_cast<unsigned>(types)));
    }
    for (int p = 0; p < places; ++p) {
        AssignmentPlace place{p / 4 % 4 > 0, {}};
        const int own = p / 4;
        const int substitute = (own * 7 + 3) % types;
        for (std::size_t i = 0; i < typeOf.size(); ++i)
            if (typeOf[i] == own || typeOf[i] == substitute)
                place.choices.push_back({static_cast<int>(i), typeOf[i] == own});
        task.places.push_back(std::move(place));
    }
    return task;
}

/// Every place takes about `percent` of the items, with no order in it: worse than any boat.
AssignmentTask disorder(int places, int percent) {
    std::mt19937 random(3);
    AssignmentTask task;
    for (int i = 0; i < places; ++i)
        task.items.push_back({random() % 2 > 0, 738000 + static_cast<int>(random() % 900)});
    for (int p = 0; p < places; ++p) {
        AssignmentPlace place{random() % 2 > 0, {}};
        for (int i = 0; i < places; ++i)
            if (static_cast<int>(random() % 100) < percent) place.choices.push_back({i, random() % 2 > 0});
        task.places.push_back(std::move(place));
    }
    return task;
}

/// More places than items, all alike: everything ties.
AssignmentTask allAlike(int places) {
    AssignmentTask task;
    for (int i = 0; i < places * 3 / 4; ++i)
        task.items.push_back({true, 738000});
    AssignmentPlace place{true, {}};
    for (int i = 0; i < places * 3 / 4; ++i)
        place.choices.push_back({i, true});
    task.places.assign(static_cast<std::size_t>(places), place);
    return task;
}

void assign(benchmark::State& state, const AssignmentTask& task) {
    for (auto _ : state)
        benchmark::DoNotOptimize(bestAssignment(task));
    state.SetComplexityN(state.range(0));
}

void assignLinesOfFour(benchmark::State& state) {
    assign(state, linesOfFour(static_cast<int>(state.range(0))));
}
void assignDisorder2(benchmark::State& state) {
    assign(state, disorder(static_cast<int>(state.range(0)), 2));
}
void assignDisorder50(benchmark::State& state) {
    assign(state, disorder(static_cast<int>(state.range(0)), 50));
}
void assignAllAlike(benchmark::State& state) {
    assign(state, allAlike(static_cast<int>(state.range(0))));
}
BENCHMARK(assignLinesOfFour)->Arg(10)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond)->Complexity();
BENCHMARK(assignDisorder2)->Arg(10)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond)->Complexity();
BENCHMARK(assignDisorder50)->Arg(10)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond)->Complexity();
BENCHMARK(assignAllAlike)->Arg(10)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond)->Complexity();

/// A whole launch check: `items` seen, a line for each four of them.
void judgeLaunchCheck(benchmark::State& state) {
    std::mt19937 random(4);
    BoatCheckInput input{.location = Location::boat("Heron"),
                         .phase = Phase::Launch,
                         .today = CalendarDay::fromNumber(738500)};
    const int items = static_cast<int>(state.range(0));
    for (int line = 0; line < items / 4 + 1; ++line) {
        KitType kitType = datedType();
        kitType.name = "type " + std::to_string(line);
        input.lines.push_back({kitType.name, 4, line % 4 > 0, {}, {}});
        input.kitTypes.emplace(kitType.name, kitType);
    }
    for (int i = 0; i < items; ++i) {
        SeenItem seen;
        seen.record = datedItem(random);
        seen.record.item.id = "K" + std::to_string(100000 + i);
        seen.record.item.kitType = "type " + std::to_string(i / 4);
        input.seen.push_back(std::move(seen));
    }
    for (auto _ : state)
        benchmark::DoNotOptimize(judge(input));
    state.SetComplexityN(state.range(0));
}
BENCHMARK(judgeLaunchCheck)
    ->Arg(10)
    ->Arg(30)
    ->Arg(100)
    ->Arg(1000)
    ->Unit(benchmark::kMillisecond)
    ->Complexity();

} // namespace
} // namespace core

BENCHMARK_MAIN();
