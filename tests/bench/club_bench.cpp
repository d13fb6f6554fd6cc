#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_register.h"
#include "tests/bench/club_history.h"
#include "tests/support/scratch_folder.h"

#include <benchmark/benchmark.h>
#include <map>
#include <memory>
#include <stdexcept>

// A check beside a long history: what a scan costs, and what the answer costs, in a club of 10 boats and 300
// items with 0, 50,000 and 1,500,000 sightings on record. It must not grow. Run by hand with TMPDIR=/dev/shm,
// so that the disk's own syncing does not count; the long history takes a minute or two to write.

namespace core {
namespace {

using namespace bench;

/// One club file for each length of history, made once.
struct BigClub {
    explicit BigClub(std::int64_t sightings) {
        writeRegister(folder / "csv");
        Club made = Club::create(folder / "club.tholepin", "Big club").value();
        if (!made.register_().importCsv(folder / "csv", now.today, false)->rejected.empty())
            throw std::runtime_error("the register was not taken");
        const auto check = made.checks().open("boat 0", Phase::Launch, now)->check;
        const auto answer = *made.checks().answer(check, now.today);
        writeHistory(folder / "club.tholepin", "check", answer, sightings);
        club = std::make_unique<Club>(Club::open(folder / "club.tholepin").value());
    }

    support::ScratchFolder folder;
    Moment now{*Instant::parse("2026-03-14T06:40:00Z"), *CalendarDay::parse("2026-03-14")};
    std::unique_ptr<Club> club;
};

BigClub& clubWith(std::int64_t sightings) {
    static std::map<std::int64_t, std::unique_ptr<BigClub>> clubs;
    auto& club = clubs[sightings];
    if (!club) club = std::make_unique<BigClub>(sightings);
    return *club;
}

/// The answer of a launch check with all its kit seen.
void answerOfCheck(benchmark::State& state) {
    BigClub& big = clubWith(state.range(0));
    const auto check = big.club->checks().open("boat 3", Phase::Launch, big.now)->check;
    for (int item = 0; item < itemsOfBoat; ++item)
        if (!big.club->checks().scan(
                check, ScannedText::typed(codes()[static_cast<std::size_t>(3 * itemsOfBoat + item)]),
                SeenBy::Camera, big.now))
            throw std::runtime_error("a scan failed");
    for (auto _ : state)
        benchmark::DoNotOptimize(big.club->checks().answer(check, big.now.today)->outcome);
}
BENCHMARK(answerOfCheck)->Arg(0)->Arg(50'000)->Arg(1'500'000)->Unit(benchmark::kMillisecond);

/// A new sighting recorded and the lists refreshed; then it is taken back, which does not count.
void scanAndAnswer(benchmark::State& state) {
    BigClub& big = clubWith(state.range(0));
    const auto check = big.club->checks().open("boat 4", Phase::Launch, big.now)->check;
    for (int item = 1; item < itemsOfBoat; ++item)
        if (!big.club->checks().scan(
                check, ScannedText::typed(codes()[static_cast<std::size_t>(4 * itemsOfBoat + item)]),
                SeenBy::Camera, big.now))
            throw std::runtime_error("a scan failed");
    const std::string& code = codes()[4 * itemsOfBoat];
    for (auto _ : state) {
        const auto seen = big.club->checks().scan(check, ScannedText::typed(code), SeenBy::Camera, big.now);
        benchmark::DoNotOptimize(big.club->checks().answer(check, big.now.today)->outcome);
        state.PauseTiming();
        if (seen->what != Scanned::What::NewItem || !big.club->checks().undoSightingOf(check, code, big.now))
            throw std::runtime_error("not a new sighting");
        state.ResumeTiming();
    }
}
BENCHMARK(scanAndAnswer)->Arg(0)->Arg(50'000)->Arg(1'500'000)->Unit(benchmark::kMillisecond)->Iterations(200);

/// The answer of a return check, which looks back at the launch.
void answerOfReturn(benchmark::State& state) {
    BigClub& big = clubWith(state.range(0));
    const auto launch = big.club->checks().open("boat 5", Phase::Launch, big.now)->check;
    const auto back = [&](const std::string& check) {
        for (int item = 0; item < itemsOfBoat; ++item)
            if (!big.club->checks().scan(
                    check, ScannedText::typed(codes()[static_cast<std::size_t>(5 * itemsOfBoat + item)]),
                    SeenBy::Camera, big.now))
                throw std::runtime_error("a scan failed");
    };
    back(launch);
    if (!big.club->checks().sign(launch, "Wren Sadler", "drill", big.now))
        throw std::runtime_error("not signed");
    const auto check = big.club->checks().open("boat 5", Phase::Return, big.now)->check;
    back(check);
    for (auto _ : state)
        benchmark::DoNotOptimize(big.club->checks().answer(check, big.now.today)->outcome);
}
BENCHMARK(answerOfReturn)->Arg(0)->Arg(50'000)->Arg(1'500'000)->Unit(benchmark::kMillisecond);

/// The shed board: all boats.
void boatConditions(benchmark::State& state) {
    BigClub& big = clubWith(state.range(0));
    for (auto _ : state)
        benchmark::DoNotOptimize(big.club->answers().boatConditions(big.now.today).size());
}
BENCHMARK(boatConditions)->Arg(0)->Arg(50'000)->Arg(1'500'000)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace core

BENCHMARK_MAIN();
