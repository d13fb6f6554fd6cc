#include "core/plan/lasting/kit_life.h"
#include "core/plan/replacement/replacement_plan.h"

#include <benchmark/benchmark.h>
#include <random>

// How long a replacement plan takes for a club (300 items), a district (8,000) and a country (1,000,000),
// once the register is read: sixteen kit types, half of them in four sizes, five years of record with 2 %
// lost a year.

namespace core {
namespace {

constexpr int kindsOfKit = 16;
const CalendarDay today = CalendarDay::fromNumber(739617); // 2026-01-01

KitType typeOf(int number, int items) {
    KitType type;
    type.name = "kit " + std::to_string(number);
    type.orderLeadDays = 10 + 5 * number;
    type.pack = 1 + number % 3;
    type.price = 20;
    LifeRule age;
    age.name = "retire";
    age.kind = RuleKind::FromMade;
    age.n = 60 + 6 * number;
    type.rules = {age};
    for (int size = 0; size < 4 && number % 2 == 0; ++size) {
        type.sizes.emplace_back();
        type.sizes.back().name = std::to_string(size);
        type.sizes.back().wanted = items * 9 / 10 / kindsOfKit / 4;
    }
    return type;
}

ItemRecord itemOf(int number, std::mt19937& random) {
    const auto daysAgo = [&](unsigned most) { return today.plusDays(-static_cast<int>(random() % most)); };
    ItemRecord record;
    record.item.kitType = "kit " + std::to_string(number % kindsOfKit);
    record.item.size = std::to_string(number / kindsOfKit % 4);
    record.item.registered = daysAgo(1826);
    record.item.made = record.item.registered;
    if (random() % 20 == 0) {
        record.item.state = ItemState::Missing;
        record.item.since = today.plusDays(-1);
    }
    return record;
}

ReplacementInput clubOf(int items) {
    std::mt19937 random(1);
    ReplacementInput input;
    std::vector<ManifestLine> lines;
    for (int i = 0; i < kindsOfKit; ++i) {
        const KitType type = typeOf(i, items);
        input.kitTypes[type.name] = type;
        lines.push_back({type.name, 1, true, {}, {}});
    }
    input.manifests.assign(static_cast<std::size_t>(items * 9 / 10 / kindsOfKit), lines);
    for (int i = 0; i < items; ++i)
        input.items.push_back(itemOf(i, random));
    return input;
}

void replacementPlan(benchmark::State& state) {
    const ReplacementInput club = clubOf(static_cast<int>(state.range(0)));
    std::size_t chances = 0;
    for (auto _ : state) {
        const ReplacementPlan plan = planReplacement(club, {}, today);
        benchmark::DoNotOptimize(plan.rows.data());
        chances = 0;
        for (const ReplacementRow& row : plan.rows)
            chances += row.chances.size();
    }
    state.counters["chances"] = static_cast<double>(chances);
}
BENCHMARK(replacementPlan)->Arg(300)->Arg(8'000)->Arg(1'000'000)->Unit(benchmark::kMillisecond);

void kitLives(benchmark::State& state) {
    const ReplacementInput club = clubOf(static_cast<int>(state.range(0)));
    for (auto _ : state)
        benchmark::DoNotOptimize(kitLivesOf(club.kitTypes, club.items, today).data());
}
BENCHMARK(kitLives)->Arg(300)->Arg(8'000)->Arg(1'000'000)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace core

BENCHMARK_MAIN();
