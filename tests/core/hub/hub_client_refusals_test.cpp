#include "tests/core/hub/hub_refusals.h"
#include "tests/support/kept_state.h"

#include <gtest/gtest.h>

// What a client does not take from a hub, by its look-through, where somebody with the club's password, or
// the database's, went past the server's check; nor sends there.

namespace {

using core::ErrorCode;
using core::Fact;
using support::HubMachine;

class HubClientRefuses : public support::HubRefuses {};

// A machine's key in two hands: the same chain goes on in two files.
TEST_F(HubClientRefuses, aForkByTheClientWhichNamesBothFacts) {
    shed.in();
    shed.club.reset();
    const support::KeptState key;
    std::filesystem::copy_file(shed.file, folder / "twin");
    shed.open();
    shed.write("on the one side");
    expectExchanged(shed, 1, 0);
    const Fact there = factsIn(shed).back();
    shed.club.reset();
    key.putBack();
    std::filesystem::copy_file(folder / "twin", shed.file, std::filesystem::copy_options::overwrite_existing);
    shed.open();
    shed.write("on the other");
    shed.write("and more");
    const auto here = factsIn(shed);
    const auto refused = shed.exchange();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::HubForked);
    EXPECT_EQ(refused.error().arguments, (std::vector<std::string>{there.machine, std::to_string(there.seq),
                                                                   here[here.size() - 2].id, there.id}));
}

// Put there by the database's owner: each client finds that it is none of this club's.
TEST_F(HubClientRefuses, aForeignClubsBeginningByTheClient) {
    fetched(home);
    const Fact other = begun("");
    ask("INSERT INTO tholepin.machine SELECT number, '" + other.machine +
        "' FROM tholepin.club WHERE name = 'Sandbay'; INSERT INTO tholepin.fact SELECT number, '" +
        other.machine + "', 1, '" + other.id + "', '" + other.atUtc + "', '', 'machine-begun', '" +
        other.body + "', decode('" + other.hash + "', 'hex'), decode('" + other.signature +
        "', 'hex') FROM tholepin.club WHERE name = 'Sandbay'");
    const std::string before = home.dump();
    const auto refused = home.exchange();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::HubRecordDamaged);
    EXPECT_EQ(refused.error().cause.at(0).code, ErrorCode::FactsCutOff);
    EXPECT_EQ(home.dump(), before);
    HubMachine third(folder / "third");
    third.in();
    EXPECT_EQ(core::districtHub::fetch({url(), false}, "Sandbay", third.file).error().code,
              ErrorCode::HubRecordDamaged);
}

TEST_F(HubClientRefuses, factsThatAreNotSignedByTheClient) {
    fetched(home);
    ASSERT_EQ(pushed({following(factsIn(shed).back())}), std::nullopt) << "the server knows no signatures";
    const std::string before = home.dump();
    const auto refused = home.exchange();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::HubRecordDamaged);
    EXPECT_EQ(refused.error().cause.at(0).code, ErrorCode::FactNotSigned);
    EXPECT_EQ(home.dump(), before);
    home.in();
    HubMachine third(folder / "third");
    third.in();
    const auto fetch = core::districtHub::fetch({url(), false}, "Sandbay", third.file);
    ASSERT_FALSE(fetch);
    EXPECT_EQ(fetch.error().code, ErrorCode::HubRecordDamaged);
    EXPECT_FALSE(std::filesystem::exists(third.file));
}

// Whoever has the file and no key can write it anew with hashes that follow: it does not get to the others.
TEST_F(HubClientRefuses, toSendAHistoryThatWasWrittenAnew) {
    shed.write("strap worn");
    Fact rewritten = factsIn(shed).back();
    {
        core::Database database(shed.file, core::Database::Mode::ReadWrite);
        rewritten.by = "Odalys Finch";
        rewritten.hash = core::hashOf(rewritten);
        database.script("DROP TRIGGER fact_is_never_changed");
        database.prepare("UPDATE fact SET by = ?, hash = ? WHERE id = ?")
            .with(rewritten.by)
            .with(rewritten.hash)
            .with(rewritten.id)
            .run();
    }
    const std::string before = count();
    const auto refused = shed.exchange();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::RecordDamaged);
    EXPECT_EQ(refused.error().cause.at(0).code, ErrorCode::FactNotSigned);
    EXPECT_EQ(count(), before);
}

TEST_F(HubClientRefuses, aFactThatTheDatabasesOwnerChangedByTheClient) {
    fetched(home);
    shed.write("strap worn");
    expectExchanged(shed, 1, 0);
    plant("UPDATE tholepin.fact SET body = replace(body, 'strap', 'strop')");
    const std::string before = home.dump();
    const auto refused = home.exchange();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::HubRecordDamaged);
    EXPECT_EQ(refused.error().cause.at(0).code, ErrorCode::FactChanged);
    EXPECT_EQ(home.dump(), before);
    plant("UPDATE tholepin.fact SET body = replace(body, 'strop', 'strap')");
    expectExchanged(home, 0, 1);
}

} // namespace
