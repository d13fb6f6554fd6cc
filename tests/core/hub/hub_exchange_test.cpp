#include "core/base/error_code.h"
#include "core/club/club_exchange.h"
#include "core/club/club_photos.h"
#include "core/hub/hub_facts.h"
#include "core/record/facts.h"
#include "core/store/ledger.h"
#include "tests/core/hub/hub_support.h"

#include <algorithm>
#include <chrono>
#include <future>
#include <gmock/gmock.h>
#include <thread>

namespace {

using core::ErrorCode;
using core::SheetId;
using support::HubMachine;

class HubExchange : public support::HubTest {
protected:
    void SetUp() override {
        founded(shed);
        ASSERT_TRUE(shed.join(url()));
    }
    std::string massOf(HubMachine& machine, const std::string& person) {
        return (*machine.club->register_().rowNamed(SheetId::People, person))[3];
    }
    HubMachine shed{folder / "shed"};
    HubMachine home{folder / "home"};
};

TEST_F(HubExchange, twoMachinesHoldTheSameAfterwardsAndTwiceIsNothingNew) {
    ASSERT_TRUE(shed.join(url(), true));
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    fetched(home, "Sandbay", "sandbay", true);
    EXPECT_EQ(home.facts(), shed.facts());
    shed.write("strap worn");
    home.write("keel scratched");
    expectExchanged(shed, 1, 0);
    expectExchanged(home, 2, 1); // a machine began
    expectExchanged(shed, 0, 2);
    expectExchanged(shed, 0, 0);
    expectExchanged(home, 0, 0);
    EXPECT_EQ(shed.dump(), home.dump());
    expectWhole(shed);
    expectWhole(home);
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.fact"), std::to_string(shed.facts()) + "\n");
}

TEST_F(HubExchange, whatCameInIsToldAsByAMerge) {
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    fetched(home);
    const auto write = [](HubMachine& machine, const std::string& name) {
        machine.in();
        return machine.club->register_().write({SheetId::Places, {{{}, {{"place", name}}, {}}}}, {},
                                               HubMachine::moment());
    };
    ASSERT_TRUE(write(shed, "Boat house"));
    ASSERT_TRUE(write(home, "Boat houses"));
    expectExchanged(shed, 1, 0);
    const auto in = home.exchange();
    ASSERT_TRUE(in) << support::described(in.error());
    EXPECT_EQ(in->cameIn.facts, 1);
    EXPECT_EQ(in->cameIn.machines, 1);
    EXPECT_EQ(in->cameIn.changes, 1);
    ASSERT_EQ(in->cameIn.lookAt.size(), 1U);
    EXPECT_EQ(in->cameIn.lookAt.front().kind, core::LookAt::Kind::LikeNames);
}

// Counted by the server itself: each statement is a line of its log.
TEST_F(HubExchange, withNothingNewItIsOneRoundTrip) {
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    const int before = shed.link->roundTrips();
    ask("ALTER ROLE sandbay SET log_statement = 'all'");
    fetched(home); // on a connection of its own
    home.write("strap worn");
    expectExchanged(home, 2, 0);
    const auto lines = [] {
        const std::string log = support::testCluster().log();
        int count = 0;
        for (auto at = log.find("sandbay LOG:  execute"); at != std::string::npos;
             at = log.find("sandbay LOG:  execute", at + 1))
            ++count;
        return count;
    };
    const int atServer = lines();
    expectExchanged(home, 0, 0);
    ask("ALTER ROLE sandbay RESET log_statement");
    EXPECT_EQ(lines() - atServer, 1);
    expectExchanged(shed, 0, 2);
    const int afterNews = shed.link->roundTrips();
    EXPECT_GT(afterNews - before, 1);
    expectExchanged(shed, 0, 0);
    EXPECT_EQ(shed.link->roundTrips() - afterNews, 1);
}

TEST_F(HubExchange, measuresStayHereUnlessTheClubSaysSo) {
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.private_cell"), "0\n");
    EXPECT_THAT(ask("SELECT string_agg(body, '') FROM tholepin.fact"),
                testing::Not(testing::HasSubstr("\"82\"")));
    fetched(home);
    EXPECT_EQ(massOf(home, "Bram Oke"), "");
    expectWhole(home);
    EXPECT_EQ(home.club->record().verify(false)->notHere, 1);
    EXPECT_EQ(home.club->record().verify(true)->problems.size(), 0U) << "made anew";

    ASSERT_TRUE(shed.join(url(), true));
    EXPECT_EQ(ask("SELECT value FROM tholepin.private_cell"), "82\n");
    ASSERT_TRUE(home.join(url(), true));
    shed.write("so that something comes in");
    expectExchanged(shed, 1, 0);
    expectExchanged(home, 0, 1);
    EXPECT_EQ(massOf(home, "Bram Oke"), "82");
    expectWhole(home);
    EXPECT_EQ(home.club->record().verify(false)->notHere, 0);
}

TEST_F(HubExchange, whatIsErasedIsErasedOnTheHubAndDoesNotComeBack) {
    ASSERT_TRUE(shed.join(url(), true));
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    fetched(home, "Sandbay", "sandbay", true);
    EXPECT_EQ(massOf(home, "Bram Oke"), "82");
    shed.in();
    ASSERT_TRUE(shed.club->record().eraseMeasures("Bram Oke", {}));
    expectExchanged(shed, 1, 0);
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.private_cell"), "0\n");
    ASSERT_TRUE(home.join(url(), true)); // it has the measures still, and sends them again
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.private_cell"), "0\n");
    expectExchanged(home, 0, 1);
    EXPECT_EQ(massOf(home, "Bram Oke"), "");
    expectWhole(home);
}

TEST_F(HubExchange, aStickBringsTheMeasuresThatTheHubDoesNotHave) {
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    fetched(home);
    const auto merged = home.in().club->exchange().merge({shed.file}, core::ClubExchange::Forks::Refused);
    ASSERT_TRUE(merged) << support::described(merged.error());
    EXPECT_EQ(merged->facts, 0);
    EXPECT_EQ(massOf(home, "Bram Oke"), "82");
    expectWhole(home);
}

TEST_F(HubExchange, photographsGoWithTheFactsThatTellOfThem) {
    const auto entry =
        shed.in().club->log().add("Petrel", "keel", core::Severity::Remark, "Bram Oke", HubMachine::moment());
    const std::string picture("\xFF\xD8\xFF keel \0\\ \xFF\xD9", 14);
    ASSERT_TRUE(shed.club->photos().addToEntry(entry->id, picture, "Bram Oke", HubMachine::moment()));
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.photo"), "1\n");
    fetched(home);
    expectWhole(home);
    EXPECT_EQ(home.club->record().verify(false)->photos, 1);
}

TEST_F(HubExchange, aRenamingAndWhatIsWrittenUnderTheOldNameComeTogether) {
    ASSERT_TRUE(shed.join(url(), true));
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    fetched(home, "Sandbay", "sandbay", true);
    shed.in();
    ASSERT_TRUE(shed.club->register_().rename(core::Named::Boat, "Petrel", "Dabchick", {}, "Bram Oke"));
    home.write("written of Petrel");
    expectExchanged(shed, 1, 0);
    expectExchanged(home, 2, 1);
    expectExchanged(shed, 0, 2);
    EXPECT_EQ(shed.dump(), home.dump());
    expectWhole(shed);
}

// Found out before it is sent: else nobody could ever exchange again.
TEST_F(HubExchange, twoThingsThatWereGivenOneNameAreNotSent) {
    shed.in();
    ASSERT_TRUE(shed.club->register_().write({SheetId::Boats,
                                              {{{}, {{"boat", "Bittern"}, {"boat_class", "inflatable"}}, {}},
                                               {{}, {{"boat", "Tern"}, {"boat_class", "inflatable"}}, {}}}},
                                             {}, HubMachine::moment()));
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    fetched(home);
    const auto rename = [](HubMachine& machine, const char* boat) {
        machine.in();
        ASSERT_TRUE(machine.club->register_().rename(core::Named::Boat, boat, "Zed", {}, {}));
    };
    rename(shed, "Bittern");
    rename(home, "Tern");
    expectExchanged(shed, 1, 0);
    const std::string before = home.dump();
    const auto refused = home.exchange();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::NamesFused);
    EXPECT_EQ(refused.error().where, url());
    EXPECT_EQ(home.dump(), before);
    shed.write("still at work");
    expectExchanged(shed, 1, 0);
}

// One of the two came new with the renaming, and so is known by the hub's record alone.
TEST_F(HubExchange, aNewThingThatWasGivenATakenNameIsNotTakenIn) {
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    fetched(home);
    shed.in();
    ASSERT_TRUE(shed.club->register_().rename(core::Named::Boat, "Petrel", "Zed", {}, {}));
    home.in();
    ASSERT_TRUE(home.club->register_().write(
        {SheetId::Boats, {{{}, {{"boat", "Tern"}, {"boat_class", "inflatable"}}, {}}}}, {},
        HubMachine::moment()));
    ASSERT_TRUE(home.club->register_().rename(core::Named::Boat, "Tern", "Zed", {}, {}));
    expectExchanged(home, 3, 0);
    const auto refused = shed.exchange();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::NamesFused);
}

TEST_F(HubExchange, theBoardIsReadByTheDistrict) {
    const auto boards = [&](const std::string& role) { return core::districtHub::boards(url(role)).value(); };
    ASSERT_EQ(boards("district").size(), 2U);
    EXPECT_FALSE(boards("district")[1].at);
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    const auto seen = boards("district");
    EXPECT_EQ(seen[1].club, "Sandbay");
    ASSERT_TRUE(seen[1].at);
    EXPECT_EQ(seen[1].today, "2026-03-14");
    ASSERT_EQ(seen[1].boats.size(), 1U);
    EXPECT_EQ(seen[1].boats[0].boat, "Petrel");
    EXPECT_EQ(seen[1].boats[0].kind, core::BoatCondition::Kind::NotReady);
    EXPECT_EQ(seen[1].boats[0].reasons, std::vector<std::string>{"not ready"});
    EXPECT_EQ(boards("sandbay").size(), 1U) << "its own";
    ASSERT_EQ(boards("harbour").size(), 1U);
    EXPECT_EQ(boards("harbour")[0].club, "Harbour");
}

TEST_F(HubExchange, aMachineHearsOfNewsAndCanBeStopped) {
    using namespace std::chrono_literals;
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    fetched(home);
    expectExchanged(home, 0, 0);
    EXPECT_EQ(home.link->wait(20s), core::HubLink::Waited::News)
        << "it may have been sent before it listened";
    expectExchanged(home, 0, 0);
    shed.write("strap worn");
    expectExchanged(shed, 1, 0);
    EXPECT_EQ(home.link->wait(20s), core::HubLink::Waited::News);
    expectExchanged(home, 0, 1);
    EXPECT_EQ(home.link->wait(1ms), core::HubLink::Waited::TimeUp);
    home.link->stop();
    EXPECT_EQ(home.link->wait(20s), core::HubLink::Waited::Stopped);
}

TEST_F(HubExchange, aServerThatIsNotReachedLeavesAllAsItWas) {
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    const auto last = shed.club->hub().lastExchanged();
    ASSERT_TRUE(last);
    shed.write("written alone");
    const std::string before = shed.dump();
    support::testCluster().kill();
    EXPECT_EQ(shed.link->wait(std::chrono::seconds(20)), core::HubLink::Waited::News) << "the line was cut";
    const auto failed = shed.exchange();
    support::testCluster().start();
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().code, ErrorCode::HubNotReached);
    EXPECT_EQ(failed.error().where, url());
    EXPECT_EQ(shed.dump(), before);
    EXPECT_EQ(shed.club->hub().lastExchanged(), last);
    expectExchanged(shed, 1, 0);
}

TEST_F(HubExchange, aLineThatWasCutIsMadeAnew) {
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    ask("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE usename = 'sandbay'");
    shed.write("after the cut");
    expectExchanged(shed, 1, 0);
}

TEST_F(HubExchange, fetchMakesTheWholeFileOrNone) {
    home.in();
    const auto empty = core::districtHub::fetch({url(), false}, "Sandbay", home.file);
    ASSERT_FALSE(empty);
    EXPECT_EQ(empty.error().code, ErrorCode::HubClubEmpty);
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    home.in();
    const auto other = core::districtHub::fetch({url(), false}, "Harbour", home.file);
    ASSERT_FALSE(other);
    EXPECT_EQ(other.error().code, ErrorCode::HubNoSuchClub);
    EXPECT_EQ(other.error().arguments, (std::vector<std::string>{"Harbour", "Sandbay"}));
    EXPECT_FALSE(std::filesystem::exists(home.file));
    fetched(home, "sandbay"); // without regard to case
    const auto again = core::districtHub::fetch({url(), false}, "Sandbay", home.file);
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().code, ErrorCode::FileExists);
    EXPECT_EQ(home.club->hub().place()->url, url());
    HubMachine office(folder / "office");
    fetched(office, "Sandbay", "district");
    expectWhole(office);
}

TEST_F(HubExchange, aHubIsPreparedByManyAtOnce) {
    std::vector<std::future<core::Outcome>> all;
    for (int each = 0; each < 4; ++each)
        all.push_back(
            std::async(std::launch::async, [&] { return core::districtHub::prepare(url("office")); }));
    for (auto& each : all) {
        const auto done = each.get();
        EXPECT_TRUE(done) << support::described(done.error());
    }
}

// Where a club exchanges holds for all of this user's files of it, and is a gear officer's act.
TEST_F(HubExchange, fetchLeavesAJoinAsItIs) {
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    const auto fetch = [&](HubMachine& machine, const std::string& file, const core::HubPlace& from) {
        return core::districtHub::fetch(from, "Sandbay", machine.in().state.parent_path() / file).value();
    };
    const auto again = fetch(shed, "again", {url() + "?sslmode=disable", true});
    EXPECT_TRUE(again.wasJoined);
    EXPECT_EQ(again.place->url, url());
    EXPECT_EQ(shed.club->hub().place()->url, url());
    EXPECT_FALSE(shed.club->hub().place()->sendsPrivate);

    const auto office = fetch(home, "office", {url("district"), false});
    EXPECT_FALSE(office.place) << "it may not send";
    const auto first = fetch(home, "first", {url(), true});
    EXPECT_FALSE(first.wasJoined);
    EXPECT_EQ(first.place->url, url());
    auto opened = core::Club::open(home.file.parent_path() / "office");
    ASSERT_TRUE(opened);
    EXPECT_TRUE(opened->hub().place()->sendsPrivate) << "joined by the first that may";
}

TEST_F(HubExchange, aFileThatLeavesExchangesNoMore) {
    EXPECT_TRUE(shed.club->hub().leave());
    EXPECT_EQ(shed.exchange().error().code, ErrorCode::HubNotJoined);
    EXPECT_TRUE(shed.join(url()));
    EXPECT_TRUE(shed.exchange());
}

// As with joining: whoever fetches a file does not undo what an officer did.
TEST_F(HubExchange, whoLeftDoesNotJoinAgainByFetching) {
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    ASSERT_TRUE(shed.club->hub().leave());
    const auto fetched =
        core::districtHub::fetch({url(), false}, "Sandbay", shed.state.parent_path() / "again");
    ASSERT_TRUE(fetched);
    EXPECT_TRUE(fetched->wasLeft);
    EXPECT_FALSE(fetched->place);
    EXPECT_FALSE(shed.club->hub().place());
    ASSERT_TRUE(shed.join(url()));
    EXPECT_TRUE(
        core::districtHub::fetch({url(), false}, "Sandbay", shed.state.parent_path() / "more")->wasJoined);
}

// Somebody renames in the window while it exchanges: whichever comes first, no two boats become one.
TEST_F(HubExchange, aRenamingWhileMuchComesInFusesNothing) {
    expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    fetched(home);
    shed.in();
    ASSERT_TRUE(shed.club->register_().write(
        {SheetId::Boats, {{{}, {{"boat", "Zed"}, {"boat_class", "inflatable"}}, {}}}}, {},
        HubMachine::moment()));
    shed.see("0190f8a2-7c1e-7b3a-9f00-000000000001", 2000);
    expectExchanged(shed, 2001, 0);
    home.in();
    auto opened = core::Club::open(home.file);
    ASSERT_TRUE(opened);
    core::Club& window = *opened;
    auto exchanging = std::async(std::launch::async, [&] { return home.exchange(); });
    std::this_thread::sleep_for(std::chrono::milliseconds(60)); // met, and now it is looked through
    const auto renamed = window.register_().rename(core::Named::Boat, "Petrel", "Zed", {}, {});
    const auto exchanged = exchanging.get();
    EXPECT_NE(static_cast<bool>(renamed), static_cast<bool>(exchanged));
    EXPECT_EQ(renamed ? ErrorCode::NameTaken : renamed.error().code, ErrorCode::NameTaken);
    EXPECT_EQ(exchanged ? ErrorCode::NamesFused : exchanged.error().code, ErrorCode::NamesFused);
    EXPECT_EQ(window.register_().boats().size(), exchanged ? 2U : 1U);
    expectWhole(home);
}

} // namespace
