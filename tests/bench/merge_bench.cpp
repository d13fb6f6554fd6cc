#include "core/club/club.h"
#include "core/club/club_checks.h"
#include "core/club/club_copy.h"
#include "core/club/club_exchange.h"
#include "core/club/club_log.h"
#include "core/club/club_register.h"
#include "tests/bench/club_history.h"
#include "tests/support/scratch_folder.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>
#include <fstream>
#include <optional>
#include <stdexcept>

// What another machine recorded is taken in: 1,000, 10,000 and 100,000 new facts, in checks or in rows of the
// register, into a club that has few facts or 100,000; and beside it an import of as many rows, which signs
// what a merge looks through. items_per_second is facts a second; it must not fall with their number. Run by
// hand with TMPDIR=/dev/shm, so that the disk's own syncing does not count.

namespace core {
namespace {

using namespace bench;

const Moment now{*Instant::parse("2026-03-14T06:40:00Z"), *CalendarDay::parse("2026-03-14")};

void require(bool isDone) {
    if (!isDone) throw std::runtime_error("the bench's club was not made");
}

/// Two files of one club: what the other one holds is to come in. One machine goes on with the first.
class TwoFiles {
public:
    explicit TwoFiles(std::int64_t sightings) {
        writeRegister(m_folder / "csv");
        Club club = Club::create(file(), "Big club").value();
        require(club.register_().importCsv(m_folder / "csv", now.today, false)->rejected.empty());
        const auto check = club.checks().open("boat 0", Phase::Launch, now)->check;
        m_answer = *club.checks().answer(check, now.today);
        if (sightings > 0) writeHistory(file(), "own", *m_answer, sightings);
        require(bool(copyClub(file(), other(), false)));
        require(bool(club.log().add("boat 0", "oar worn", Severity::Remark, {}, now)));
    }
    std::filesystem::path file() const { return m_folder / "club.tholepin"; }
    std::filesystem::path other() const { return m_folder / "other.tholepin"; }
    std::filesystem::path folder() const { return m_folder.path(); }
    const CheckAnswer& answer() const { return *m_answer; }

private:
    support::ScratchFolder m_folder;
    std::optional<CheckAnswer> m_answer;
};

void writeItems(const std::filesystem::path& folder, std::int64_t count) {
    std::filesystem::create_directories(folder);
    std::ofstream items(folder / "items.csv");
    items << "kit_type,boat,made,serial\n";
    for (std::int64_t i = 0; i < count; ++i)
        items << fmt::format("type {},boat {},2022-05,S{}\n", i % 15, i % boats, i);
}

void measureMerge(benchmark::State& state, const TwoFiles& files) {
    std::int64_t facts = 0;
    for (auto _ : state) {
        state.PauseTiming();
        const auto fresh = files.folder() / "fresh.tholepin";
        std::filesystem::remove(fresh);
        require(bool(copyClub(files.file(), fresh, false)));
        auto club = std::make_unique<Club>(Club::open(fresh).value());
        state.ResumeTiming();
        facts += club->exchange().merge({files.other()}, ClubExchange::Forks::Refused)->facts;
        state.PauseTiming();
        club.reset();
        state.ResumeTiming();
    }
    state.SetItemsProcessed(facts);
}

void mergeChecks(benchmark::State& state) {
    const TwoFiles files(state.range(1));
    writeHistory(files.other(), "new", files.answer(), state.range(0));
    measureMerge(state, files);
}
BENCHMARK(mergeChecks)
    ->ArgsProduct({{1'000, 10'000, 100'000}, {0, 100'000}})
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1);

void mergeItems(benchmark::State& state) {
    const TwoFiles files(state.range(1));
    writeItems(files.folder() / "more", state.range(0));
    require(Club::open(files.other())
                ->register_()
                .importCsv(files.folder() / "more", now.today, false)
                ->rejected.empty());
    measureMerge(state, files);
}
BENCHMARK(mergeItems)
    ->ArgsProduct({{1'000, 10'000, 100'000}, {0, 100'000}})
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1);

void importItems(benchmark::State& state) {
    const TwoFiles files(0);
    writeItems(files.folder() / "more", state.range(0));
    Club club = Club::open(files.file()).value();
    for (auto _ : state)
        require(club.register_().importCsv(files.folder() / "more", now.today, false)->rejected.empty());
    state.SetItemsProcessed(state.range(0));
}
BENCHMARK(importItems)->Arg(1'000)->Arg(10'000)->Arg(100'000)->Unit(benchmark::kMillisecond)->Iterations(1);

} // namespace
} // namespace core

BENCHMARK_MAIN();
