#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_register.h"
#include "core/store/club_file.h"
#include "core/store/ledger.h"
#include "tests/support/scratch_folder.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>
#include <fstream>
#include <map>
#include <memory>
#include <stdexcept>

// A check beside a long history: what a scan costs, and what the answer costs, in a club of 10 boats and 300
// items with 0, 50,000 and 1,500,000 sightings on record. It must not grow. Run by hand with TMPDIR=/dev/shm,
// so that the disk's own syncing does not count; the long history takes a minute or two to write.

namespace core {
namespace {

constexpr int boats = 10, itemsOfBoat = 30, typesOfBoat = 15;

const std::vector<std::string>& codes() {
    static const std::vector<std::string> minted = [] {
        std::uint64_t next = 1;
        std::vector<std::string> all;
        for (int i = 0; i < boats * itemsOfBoat; ++i)
            all.push_back(
                TagCode::mint(TagClass::Kit, [&] { return next = next * 6364136223846793005u + 1; }).text());
        return all;
    }();
    return minted;
}

void writeRegister(const std::filesystem::path& folder) {
    std::filesystem::create_directories(folder);
    std::ofstream types(folder / "kit_types.csv"), rules(folder / "life_rules.csv"),
        lines(folder / "manifest_lines.csv"), items(folder / "items.csv"), boatFile(folder / "boats.csv"),
        people(folder / "people.csv");
    types << "kit_type\n";
    rules << "kit_type,rule,kind,n\n";
    lines << "boat_class,kit_type,quantity\n";
    for (int type = 0; type < typesOfBoat; ++type) {
        types << "type " << type << '\n';
        rules << "type " << type << ",yearly look,inspect_every,12\ntype " << type
              << ",retire,from_made,120\n";
        lines << "inflatable,type " << type << ",2\n";
    }
    boatFile << "boat,boat_class\n";
    items << "code,kit_type,boat,made\n";
    for (int boat = 0; boat < boats; ++boat) {
        boatFile << "boat " << boat << ",inflatable\n";
        for (int item = 0; item < itemsOfBoat; ++item)
            items << codes()[static_cast<std::size_t>(boat * itemsOfBoat + item)] << ",type "
                  << item % typesOfBoat << ",boat " << boat << ",2022-05-01\n";
    }
    people << "person\nWren Sadler\n";
}

/// Signed launch and return checks in turn, boat after boat, until so many sightings are on record.
void writeHistory(const std::filesystem::path& file, const CheckAnswer& answer, std::int64_t sightings) {
    const auto database = clubFile::open(file, false);
    Ledger ledger(*database);
    std::int64_t written = 0;
    for (int trip = 0; written < sightings; ++trip) {
        Transaction transaction(*database);
        for (const Phase phase : {Phase::Launch, Phase::Return})
            for (int boat = 0; boat < boats && written < sightings; ++boat) {
                const Instant at = Instant::parse(fmt::format("2025-{:02}-{:02}T08:00:00.000Z",
                                                              1 + trip / 28 % 12, 1 + trip % 28))
                                       .value();
                const std::string check = fmt::format("check-{}-{}-{}", trip, nameOf(phase), boat),
                                  name = fmt::format("boat {}", boat);
                ledger.append(CheckOpened{check, name, phase, at}, {});
                for (int item = 0; item < itemsOfBoat; ++item, ++written)
                    ledger.append(TagSeen{check, codes()[static_cast<std::size_t>(boat * itemsOfBoat + item)],
                                          at, "camera"},
                                  {});
                ledger.append(CheckSigned{check, name, phase, at, {"Wren Sadler"}, {}, answer},
                              "Wren Sadler");
            }
        transaction.commit();
    }
}

/// One club file for each length of history, made once.
struct BigClub {
    explicit BigClub(std::int64_t sightings) {
        writeRegister(folder / "csv");
        Club made = Club::create(folder / "club.tholepin", "Big club").value();
        if (!made.register_().importCsv(folder / "csv", now.today, false)->rejected.empty())
            throw std::runtime_error("the register was not taken");
        const auto check = made.checks().open("boat 0", Phase::Launch, now)->check;
        const auto answer = *made.checks().answer(check, now.today);
        writeHistory(folder / "club.tholepin", answer, sightings);
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
