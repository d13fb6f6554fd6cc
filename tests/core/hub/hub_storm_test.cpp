#include "core/base/error_code.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "tests/core/hub/hub_support.h"

#include <chrono>
#include <csignal>
#include <functional>
#include <gmock/gmock.h>
#include <memory>
#include <random>
#include <set>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

// Machines are processes of their own, with a state folder each, and are killed as by a power switch.

namespace {

using namespace std::chrono_literals;
using core::ErrorCode;
using support::HubMachine;

class HubStorm : public support::HubTest {
protected:
    void SetUp() override {
        founded(first());
        ASSERT_TRUE(first().join(url(), true));
        expectExchanged(first(), static_cast<int>(first().facts()), 0);
    }
    HubMachine& first() { return machine(0); }
    HubMachine& machine(std::size_t number) {
        while (m_machines.size() <= number)
            m_machines.push_back(
                std::make_unique<HubMachine>(folder / ("machine-" + std::to_string(m_machines.size()))));
        return *m_machines[number];
    }
    /// Machines that exchange, but have no club open in this process: a child opens it.
    void makeMachines(std::size_t count) {
        for (std::size_t i = 1; i < count; ++i)
            fetched(machine(i), "Sandbay", "sandbay", true).club.reset();
        first().club.reset();
    }
    /// Writes and exchanges in a process of its own; `rounds` times, whether an exchange fails or not.
    static pid_t start(HubMachine& machine, int rounds, unsigned seed) {
        const pid_t child = ::fork();
        if (child != 0) return child;
        int unreached = 0;
        try {
            std::minstd_rand random(seed);
            (void)machine.link.release(); // the parent's
            machine.link = std::make_unique<core::HubLink>();
            machine.open();
            for (int round = 0; round < rounds; ++round) {
                for (auto facts = random() % 4; facts > 0; --facts)
                    machine.write("seen in round " + std::to_string(round) + " of " + std::to_string(seed));
                const auto done = machine.exchange();
                if (!done && done.error().code != ErrorCode::HubNotReached) {
                    std::fprintf(stderr, "%s\n", support::described(done.error()).c_str());
                    ::_exit(1);
                }
                unreached += done ? 0 : 1;
            }
        } catch (const std::exception& thrown) {
            std::fprintf(stderr, "machine: %s\n", thrown.what());
            ::_exit(1);
        }
        ::_exit(unreached > 0 ? 3 : 0);
    }
    static int ended(pid_t child) {
        int status = 0;
        ::waitpid(child, &status, 0);
        return WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status);
    }
    /// Until nobody has anything new; then all hold the same, and the hub holds it, too.
    void expectAllAlike(std::size_t count) {
        for (int round = 0; round < 2; ++round)
            for (std::size_t i = 0; i < count; ++i) {
                if (!machine(i).club) machine(i).open();
                const auto done = machine(i).exchange();
                ASSERT_TRUE(done) << support::described(done.error());
            }
        const std::string dump = first().dump();
        for (std::size_t i = 0; i < count; ++i) {
            EXPECT_EQ(machine(i).dump() == dump, true) << "machine " << i;
            expectWhole(machine(i));
        }
        EXPECT_EQ(ask("SELECT count(*) FROM tholepin.fact"), std::to_string(first().facts()) + "\n");
    }

private:
    std::vector<std::unique_ptr<HubMachine>> m_machines;
};

TEST_F(HubStorm, eightMachinesAtOnceHoldTheSameInTheEnd) {
    constexpr std::size_t count = 8;
    makeMachines(count);
    const std::int64_t before = first().facts();
    std::vector<pid_t> children;
    for (std::size_t i = 0; i < count; ++i)
        children.push_back(start(machine(i), 6, static_cast<unsigned>(i + 1)));
    for (const pid_t child : children)
        EXPECT_EQ(ended(child), 0);
    expectAllAlike(count);
    std::set<std::string> ids;
    core::Database database(first().file, core::Database::Mode::ReadOnly);
    core::factTable::forEachInChain(database, [&](const core::Fact& fact) { ids.insert(fact.id); });
    EXPECT_EQ(static_cast<std::int64_t>(ids.size()), first().facts()) << "nothing twice";
    EXPECT_GT(first().facts(), before + 50) << "they wrote";
}

TEST_F(HubStorm, aClientThatIsKilledAtAnyMoment) {
    makeMachines(3);
    std::mt19937 random(7);
    for (int kills = 0; kills < 12; ++kills) {
        std::vector<pid_t> children;
        for (std::size_t i = 0; i < 3; ++i)
            children.push_back(
                start(machine(i), 3, static_cast<unsigned>(100 + kills * 3 + static_cast<int>(i))));
        std::this_thread::sleep_for(std::chrono::milliseconds(random() % 150)); // the moment of it
        ::kill(children[kills % 3], SIGKILL);
        for (std::size_t i = 0; i < 3; ++i) {
            const int exit = ended(children[i]);
            EXPECT_TRUE(exit == 0 || (exit == -SIGKILL && i == static_cast<std::size_t>(kills % 3))) << exit;
        }
    }
    expectAllAlike(3);
}

TEST_F(HubStorm, aServerThatIsKilledAtAnyMoment) {
    makeMachines(3);
    std::mt19937 random(11);
    for (int kills = 0; kills < 4; ++kills) {
        std::vector<pid_t> children;
        for (std::size_t i = 0; i < 3; ++i)
            children.push_back(
                start(machine(i), 6, static_cast<unsigned>(200 + kills * 3 + static_cast<int>(i))));
        std::this_thread::sleep_for(std::chrono::milliseconds(random() % 200)); // the moment of it
        support::testCluster().kill();
        support::testCluster().start();
        for (const pid_t child : children) {
            const int exit = ended(child);
            EXPECT_TRUE(exit == 0 || exit == 3) << exit;
        }
    }
    expectAllAlike(3);
}

TEST_F(HubStorm, aMachineASeasonBehindCatchesUp) {
    makeMachines(2);
    machine(1).open();
    machine(1).write("before the winter");
    first().open();
    {
        // In one transaction, for 6,000 of their own would take the disk a while.
        core::Database database(first().file, core::Database::Mode::ReadWrite);
        first().in();
        core::Ledger ledger(database);
        core::Transaction season(database);
        for (int i = 0; i < 6000; ++i)
            ledger.append(core::TagSeen{.check = "season", .code = "KGFB6J8WF9", .at = core::Instant::now()},
                          {});
        ledger.committing();
        season.commit();
        ledger.committed();
    }
    const auto sent = first().exchange();
    ASSERT_TRUE(sent) << support::described(sent.error());
    EXPECT_EQ(sent->sent, 6000);
    expectExchanged(machine(1), 2, 6000);
    expectAllAlike(2);
}

// A server that is stopped, or a dead line, holds nobody for ever: the call is ended by the client.
TEST_F(HubStorm, aServerThatDoesNotAnswerIsNotWaitedForWhenConnecting) {
    support::testCluster().stopAnswering();
    const auto begun = std::chrono::steady_clock::now();
    const auto boards = core::districtHub::boards(url() + "?connect_timeout=2");
    support::testCluster().answerAgain();
    ASSERT_FALSE(boards);
    EXPECT_EQ(boards.error().code, ErrorCode::HubNotReached);
    EXPECT_LT(std::chrono::steady_clock::now() - begun, 60s);
}

} // namespace
