#include "core/club/club.h"
#include "core/club/club_checks.h"
#include "core/club/club_hub.h"
#include "core/club/club_register.h"
#include "core/club/district_hub.h"
#include "core/hub/board_text.h"
#include "core/store/database.h"
#include "core/store/ledger.h"
#include "tests/bench/club_history.h"
#include "tests/support/errors.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/test_cluster.h"
#include "tests/support/write_lock.h"

#include <algorithm>
#include <atomic>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <functional>
#include <memory>
#include <thread>
#include <vector>

// What a hub takes, against a server that is started for it, on this machine and without syncing: so the
// figures are of the programs and the server, not of a disk or a line.
//   cmake --build build/release --target hub_bench && build/release/tests/bench/hub_bench

namespace {

using core::Club;
namespace bench = core::bench;

constexpr int manyFacts = 100000;
const core::CalendarDay today = *core::CalendarDay::parse("2026-03-14");

/// A machine with its state folder and file.
struct Machine {
    void use() const { setenv("THOLEPIN_STATE", (folder / "state").c_str(), 1); }
    std::filesystem::path file() const { return folder / "club.tholepin"; }
    support::ScratchFolder folder;
};

template <class Value>
Value required(core::Result<Value> result) {
    if (!result) throw std::runtime_error(support::described(result.error()));
    return std::move(*result);
}

core::Exchanged exchange(Club& club, core::HubLink& link) {
    return required(club.hub().exchange(link, today, [](const auto&) { return std::string("not ready"); }));
}

/// As many sightings, each a fact, as a club makes in some seasons.
void addSightings(const std::filesystem::path& file, int count) {
    core::Database database(file, core::Database::Mode::ReadWrite);
    core::Ledger ledger(database);
    core::Transaction together(database);
    const core::Instant begun = core::Instant::now();
    for (int i = 0; i < count; ++i)
        ledger.append(
            core::TagSeen{.check = "0190f8a2-7c1e-7b3a-9f00-" + std::to_string(100000000000 + i / 40),
                          .code = "KGFB6J8WF9",
                          .at = begun,
                          .seenBy = "camera"},
            {});
    ledger.committing();
    together.commit();
    ledger.committed();
}

/// A hub with an empty club; made anew for each benchmark.
struct Hub {
    Hub() {
        static int number = 0;
        const std::string database = "bench_" + std::to_string(++number);
        support::testCluster().makeDatabase(database);
        support::testCluster().makeRole("sandbay");
        office = support::testCluster().url(database);
        club = support::testCluster().url(database, "sandbay");
        (void)required(core::districtHub::prepare(office));
        (void)required(core::districtHub::addClub(office, "Sandbay", "sandbay"));
    }
    std::string office, club;
};

/// A club that is joined to a hub and sent nothing yet.
struct Sender {
    Sender() {
        machine.use();
        club = std::make_unique<Club>(required(Club::create(machine.file(), "Sandbay")));
        (void)required(club->hub().join({hub.club, false}));
    }
    Hub hub;
    Machine machine;
    std::unique_ptr<Club> club;
};

/// What the server's processes and this one's threads took of the processor since it was made, a fact.
class Processor {
public:
    Processor()
        : m_server(support::testCluster().processorSeconds())
        , m_own(own()) {}
    void count(benchmark::State& state) const {
        constexpr double facts = manyFacts;
        state.counters["server_us"] = (support::testCluster().processorSeconds() - m_server) * 1e6 / facts;
        state.counters["here_us"] = (own() - m_own) * 1e6 / facts;
    }

private:
    static double own() {
        timespec used{};
        clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &used);
        return static_cast<double>(used.tv_sec) + static_cast<double>(used.tv_nsec) / 1e9;
    }
    double m_server, m_own;
};

void pushOfManyFacts(benchmark::State& state) {
    for (auto _ : state) {
        state.PauseTiming();
        Sender sender;
        addSightings(sender.machine.file(), manyFacts);
        core::HubLink link;
        const Processor processor;
        state.ResumeTiming();
        benchmark::DoNotOptimize(exchange(*sender.club, link));
        processor.count(state);
    }
    state.SetItemsProcessed(state.iterations() * manyFacts);
}
BENCHMARK(pushOfManyFacts)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(1);

/// A machine that has what another one had sent, which has sent more since.
struct Behind {
    /// `prepare`: what the other one has before.
    explicit Behind(int facts, const std::function<void(Sender&)>& prepare = {}) {
        if (prepare) prepare(sender);
        exchange(*sender.club, senders);
        machine.use();
        (void)required(core::districtHub::fetch({sender.hub.club, false}, "Sandbay", machine.file()));
        sender.machine.use();
        addSightings(sender.machine.file(), facts);
        exchange(*sender.club, senders);
        machine.use();
        club = std::make_unique<Club>(required(Club::open(machine.file())));
    }
    Sender sender;
    core::HubLink senders, link;
    Machine machine;
    std::unique_ptr<Club> club;
};

/// Into a machine that has the club's beginning only.
void pullOfManyFacts(benchmark::State& state) {
    for (auto _ : state) {
        state.PauseTiming();
        Behind behind(manyFacts);
        const Processor processor;
        state.ResumeTiming();
        benchmark::DoNotOptimize(exchange(*behind.club, behind.link));
        processor.count(state);
    }
    state.SetItemsProcessed(state.iterations() * manyFacts);
}
BENCHMARK(pullOfManyFacts)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(1);

/// What scanning takes in a window, a sighting recorded and the lists refreshed as in club_bench's
/// scanAndAnswer, while another thread exchanges as the window does, one after the other: from the first scan
/// to the last, in milliseconds. `incoming`: so many facts are on the hub when the check is opened; 0, to
/// compare.
void scanWhileFactsComeIn(benchmark::State& state) {
    Behind behind(static_cast<int>(state.range(0)), [](Sender& sender) {
        bench::writeRegister(sender.machine.folder / "csv");
        (void)required(sender.club->register_().importCsv(sender.machine.folder / "csv", today, false));
    });
    Club& club = *behind.club;
    std::atomic<bool> isOver = false, isIn = false;
    std::thread exchanger([&] {
        Club own = required(Club::open(behind.machine.file()));
        while (!isOver) {
            isIn = required(own.hub().exchange(
                                behind.link, today, [](const auto&) { return std::string("not ready"); },
                                core::TakingIn::GivesWay))
                       .waiting == 0;
            std::this_thread::sleep_for(std::chrono::milliseconds(100));
        }
    });
    while (!isIn &&
           !support::isBeingWritten(behind.machine.file())) // the worst moment: it has just begun to take in
        std::this_thread::sleep_for(std::chrono::milliseconds(1));
    std::this_thread::sleep_for(std::chrono::milliseconds(state.range(1)));
    std::vector<double> took;
    const auto timed = [&](auto act) {
        const auto begun = std::chrono::steady_clock::now();
        act();
        took.push_back(
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun).count());
    };
    const core::Moment now{core::Instant::now(), today};
    std::string check;
    const std::string& code = bench::codes()[4 * bench::itemsOfBoat];
    for (auto _ : state) {
        timed([&] { check = required(club.checks().open("boat 4", core::Phase::Launch, now)).check; });
        while (took.size() < 1000) {
            timed([&] {
                (void)required(
                    club.checks().scan(check, core::ScannedText::typed(code), core::SeenBy::Camera, now));
                benchmark::DoNotOptimize(club.checks().answer(check, now.today)->outcome);
            });
            if (!club.checks().undoSightingOf(check, code, now)) throw std::runtime_error("not taken back");
            std::this_thread::sleep_for(std::chrono::milliseconds(5)); // whoever scans takes a breath
        }
    }
    isOver = true;
    exchanger.join();
    state.counters["first_ms"] = took.front();
    std::sort(took.begin(), took.end());
    const auto at = [&](std::size_t percent) { return took[took.size() * percent / 100]; };
    state.counters["half_ms"] = at(50);
    state.counters["of_100_ms"] = at(99);
    state.counters["longest_ms"] = took.back();
    state.counters["is_in"] = isIn ? 1 : 0;
}
BENCHMARK(scanWhileFactsComeIn)
    ->ArgNames({"incoming", "begun_ms"})
    ->Args({0, 0})
    ->Args({1000, 0})
    ->Args({10000, 0})
    ->Args({manyFacts, 0})
    ->Args({manyFacts, 1000})
    ->Args({manyFacts, 5000})
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1)
    ->UseRealTime();

/// What taking in is measured by: rows of a register that are imported, each a fact.
void importOfManyRows(benchmark::State& state) {
    constexpr int rows = 20000;
    for (auto _ : state) {
        state.PauseTiming();
        Machine machine;
        machine.use();
        Club club = required(Club::create(machine.file(), "Sandbay"));
        std::filesystem::create_directory(machine.folder / "csv");
        std::ofstream(machine.folder / "csv" / "kit_types.csv") << "kit_type\npaddle\n";
        {
            std::ofstream items(machine.folder / "csv" / "items.csv");
            items << "code,kit_type\n";
            for (int i = 0; i < rows; ++i)
                items << ",paddle\n";
        }
        state.ResumeTiming();
        benchmark::DoNotOptimize(required(club.register_().importCsv(machine.folder / "csv", today, false)));
    }
    state.SetItemsProcessed(state.iterations() * rows);
}
BENCHMARK(importOfManyRows)->Unit(benchmark::kMillisecond)->UseRealTime();

void exchangeOfNothingNew(benchmark::State& state) {
    Sender sender;
    addSightings(sender.machine.file(), 1000);
    core::HubLink link;
    exchange(*sender.club, link);
    const int before = link.roundTrips();
    for (auto _ : state)
        benchmark::DoNotOptimize(exchange(*sender.club, link));
    state.counters["round_trips"] =
        static_cast<double>(link.roundTrips() - before) / static_cast<double>(state.iterations());
}
BENCHMARK(exchangeOfNothingNew)->Unit(benchmark::kMicrosecond)->UseRealTime();

void boardsOfAThousandClubs(benchmark::State& state) {
    const Hub hub;
    std::vector<core::PublishedBoat> boats;
    for (int i = 0; i < 20; ++i)
        boats.push_back(
            {.boat = "Boat " + std::to_string(i),
             .boatClass = "inflatable",
             .by = "Odalys Finch",
             .reasons = {"paddle is not there since 2026-03-01", "life jacket is due on 2026-03-20"}});
    const std::string database = hub.office.substr(hub.office.rfind('/') + 1);
    support::testCluster().ask(
        database, "INSERT INTO tholepin.club (name) SELECT 'Club ' || n FROM "
                  "generate_series(1, 999) AS n; "
                  "INSERT INTO tholepin.board SELECT number, gen_random_uuid(), now(), '" +
                      core::textOf(boats, today) + "' FROM tholepin.club, generate_series(1, 3)");
    for (auto _ : state) {
        const auto boards = required(core::districtHub::boards(hub.office));
        if (boards.size() != 1000 || boards.back().boats.size() != 20)
            state.SkipWithError("not all are there");
    }
}
BENCHMARK(boardsOfAThousandClubs)->Unit(benchmark::kMillisecond)->UseRealTime();

} // namespace

BENCHMARK_MAIN();
