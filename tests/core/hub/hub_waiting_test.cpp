#include "core/club/club_checks.h"
#include "tests/core/hub/hub_support.h"
#include "tests/support/write_lock.h"

#include <atomic>
#include <thread>

// Whoever checks a boat does not wait for what comes in from a hub.

namespace {

using core::TakingIn;
using support::HubMachine;

class HubWaiting : public support::HubTest {
protected:
    void SetUp() override {
        founded(shed);
        ASSERT_TRUE(shed.join(url()));
        expectExchanged(shed, static_cast<int>(shed.facts()), 0);
        fetched(home);
    }
    /// As many sightings as a club makes in some seasons.
    void sendFromShed(int facts) {
        shed.see("0190f8a2-7c1e-7b3a-9f00-100000000000", facts);
        const auto done = shed.exchange();
        ASSERT_TRUE(done) << support::described(done.error());
        EXPECT_EQ(done->sent, facts);
    }
    core::Result<core::Exchanged> exchangeInTheBackground() {
        return home.club->hub().exchange(
            *home.link, home.today, [](const auto&) { return std::string("not ready"); }, TakingIn::GivesWay);
    }
    /// With a Club of its own on the same file, as the window has it.
    core::Result<core::OpenCheck> openCheck(core::Club& window) {
        return window.checks().open("Petrel", core::Phase::Launch, HubMachine::moment());
    }
    core::Club window() { return core::Club::open(home.in().file).value(); }

    HubMachine shed{folder / "shed"}, home{folder / "home"};
};

TEST_F(HubWaiting, muchWaitsForAsLongAsACheckIsBeingDone) {
    sendFromShed(20);
    core::Club crew = window();
    ASSERT_TRUE(openCheck(crew));
    const auto few = exchangeInTheBackground();
    ASSERT_TRUE(few) << support::described(few.error());
    EXPECT_EQ(few->cameIn.facts, 20) << "few are a moment's work";
    EXPECT_EQ(few->waiting, 0);
    EXPECT_EQ(few->sent, 2) << "the machine's beginning and the check";
    const auto exchangedBefore = home.club->hub().lastExchanged();

    sendFromShed(1001);
    home.in();
    const std::string before = home.dump();
    const auto many = exchangeInTheBackground();
    ASSERT_TRUE(many) << support::described(many.error());
    EXPECT_EQ(many->waiting, 1001);
    EXPECT_EQ(many->cameIn.facts, 0);
    EXPECT_EQ(home.dump(), before);
    EXPECT_EQ(home.club->hub().lastExchanged(), exchangedBefore);
    expectExchanged(home, 0, 1001); // who asks for it gets it
}

TEST_F(HubWaiting, muchComesInWhenTheCheckIsDone) {
    sendFromShed(1001);
    core::Club crew = window();
    const auto check = openCheck(crew);
    ASSERT_TRUE(check) << support::described(check.error());
    ASSERT_EQ(exchangeInTheBackground()->waiting, 1001);
    ASSERT_TRUE(crew.checks().discard(check->check, "let go", HubMachine::moment()));
    const auto done = exchangeInTheBackground();
    ASSERT_TRUE(done) << support::described(done.error());
    EXPECT_EQ(done->waiting, 0);
    EXPECT_EQ(done->cameIn.facts, 1001);
    EXPECT_EQ(done->sent, 3) << "what waited with it";
    expectWhole(home);
}

TEST_F(HubWaiting, whatHasBegunToComeInGivesWay) {
    constexpr int facts = 5000;
    sendFromShed(facts);
    const std::int64_t before = home.facts();
    core::Club crew = window();
    std::atomic<bool> isOver = false;
    std::optional<core::Result<core::Exchanged>> exchanged;
    std::thread background([&] {
        exchanged.emplace(exchangeInTheBackground());
        isOver = true;
    });
    while (!isOver && !support::isBeingWritten(home.file))
        std::this_thread::yield();
    const auto check = openCheck(crew);
    background.join();
    ASSERT_TRUE(check) << support::described(check.error());
    ASSERT_TRUE(*exchanged) << support::described(exchanged->error());
    EXPECT_EQ((*exchanged)->waiting, facts);
    EXPECT_EQ(home.facts(), before + 2) << "the machine's beginning and the check, and nothing of what came";
    expectExchanged(home, 2, facts);
    expectWhole(home);
}

} // namespace
