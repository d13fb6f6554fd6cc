#include "tests/core/hub/hub_refusals.h"

#include <gtest/gtest.h>

// What a hub does not let anybody do, whoever is connected.

namespace {

using core::ErrorCode;
using core::Fact;
using support::batchOf;

class HubRefusesAccess : public support::HubRefuses {};

TEST_F(HubRefusesAccess, anotherClubsFileByTheServer) {
    founded(home, "Sandbay"); // of that name, and begun by another machine
    const auto refused = home.join(url());
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::HubOtherClub);
    EXPECT_FALSE(home.club->hub().place());
}

TEST_F(HubRefusesAccess, theFirstFactsOfAClubOfAnotherName) {
    founded(home, "Quillmere");
    const auto refused = home.join(url("harbour"));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::HubOtherName);
    EXPECT_EQ(refused.error().arguments, (std::vector<std::string>{"Harbour", "Quillmere"}));
}

TEST_F(HubRefusesAccess, whatAnotherClubWouldReadOrWrite) {
    for (const char* table : {"fact", "machine", "founder", "board", "photo", "private_cell"})
        EXPECT_EQ(ask("SELECT count(*) FROM tholepin." + std::string(table), "harbour"), "0\n") << table;
    EXPECT_EQ(ask("SELECT name FROM tholepin.club", "harbour"), "Harbour\n");
    EXPECT_NE(ask("SELECT count(*) FROM tholepin.fact", "sandbay"), "0\n");
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.fact", "district"), count());
    EXPECT_THROW(ask("SELECT * FROM tholepin.private_cell", "district"), std::runtime_error);
    EXPECT_THROW(ask("SELECT * FROM tholepin.member", "sandbay"), std::runtime_error);
    EXPECT_THROW(ask("SELECT * FROM tholepin.fact_0", "harbour"), std::runtime_error) << "past the policy";

    const std::string founder = clubIn(shed);
    core::HubConnection hub(core::hubUrlFrom(url("harbour")).value());
    const auto refusal = [&](auto call) {
        try {
            call();
            return ErrorCode::EndOfCodes;
        } catch (const core::StoreFailure& failure) {
            return failure.error.code;
        }
    };
    // For whichever club it says it writes, it is its own.
    EXPECT_EQ(refusal([&] { core::hubFacts::push(hub, founder, 0, batchOf({factsIn(shed).front()})); }),
              ErrorCode::EndOfCodes)
        << "an empty club takes the beginning of one";
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.fact", "harbour"), "1\n");
    EXPECT_EQ(ask("SELECT count(DISTINCT club) FROM tholepin.fact"), "2\n");
    core::HubConnection district(core::hubUrlFrom(url("district")).value());
    EXPECT_EQ(refusal([&] { core::hubFacts::push(district, founder, 0, {}); }), ErrorCode::HubNotAllowed);
}

TEST_F(HubRefusesAccess, whatIsNoBoard) {
    const std::string own = factsIn(shed).back().machine;
    const auto publish = [&](const std::string& board) {
        return "SELECT tholepin.publish('" + clubIn(shed) + "', '" + own + "', " + board + ")";
    };
    const std::string before = ask("SELECT board FROM tholepin.board");
    for (const char* board : {"'hello'", "'[]'", "'{}'", R"('{"boats": 3}')",
                              R"('{"boats": [], "more": "' || repeat('x', 1000000) || '"}')"})
        EXPECT_THROW(ask(publish(board), "sandbay"), std::runtime_error) << board;
    EXPECT_EQ(ask("SELECT board FROM tholepin.board"), before);
    EXPECT_NO_THROW(ask(publish(R"('{"boats": [], "more": "' || repeat('x', 900000) || '"}')"), "sandbay"));
}

// What one club's exchanges wait for, no other role can hold.
TEST_F(HubRefusesAccess, toLetAnotherClubWait) {
    for (const char* role : {"sandbay", "harbour", "district"}) {
        EXPECT_THROW(ask("SELECT FROM tholepin.club FOR KEY SHARE", role), std::runtime_error) << role;
        EXPECT_THROW(ask("SELECT tholepin.lock_club()", role), std::runtime_error) << role;
    }
    core::HubConnection other(core::hubUrlFrom(url("harbour")).value());
    other.script("SELECT pg_advisory_lock(1414024012, n) FROM generate_series(0, 9) AS n");
    EXPECT_EQ(pushed({following(factsIn(shed).back())}), std::nullopt);
}

TEST_F(HubRefusesAccess, everyChangeByWhoeverIsConnected) {
    for (const char* role : {"sandbay", "harbour", "district"})
        for (const char* statement :
             {"UPDATE tholepin.fact SET body = ''", "DELETE FROM tholepin.fact", "TRUNCATE tholepin.fact",
              "INSERT INTO tholepin.machine VALUES (1, gen_random_uuid())",
              "INSERT INTO tholepin.fact SELECT * FROM tholepin.fact", "UPDATE tholepin.board SET board = ''",
              "DELETE FROM tholepin.private_cell", "UPDATE tholepin.club SET name = 'x'",
              "INSERT INTO tholepin.member VALUES ('x', 1)", "CREATE TABLE tholepin.mine (a int)",
              "ALTER TABLE tholepin.fact DISABLE TRIGGER ALL", "SET ROLE office",
              "SELECT tholepin.begin_machine(1, gen_random_uuid(), gen_random_uuid(), '', '')"})
            EXPECT_THROW(ask(statement, role), std::runtime_error) << role << ": " << statement;
    // Nor by its owner, by mistake.
    for (const char* table : {"fact", "machine", "founder"}) {
        EXPECT_THROW(ask("DELETE FROM tholepin." + std::string(table)), std::runtime_error) << table;
        EXPECT_THROW(ask("TRUNCATE tholepin." + std::string(table) + " CASCADE"), std::runtime_error)
            << table;
    }
    EXPECT_THROW(ask("UPDATE tholepin.fact SET body = ''"), std::runtime_error);
    const std::string before = count();
    std::string part = ask("SELECT DISTINCT tableoid::regclass FROM tholepin.fact");
    part.pop_back();
    for (const char* statement : {"DELETE FROM ", "TRUNCATE "})
        EXPECT_THROW(ask(statement + part), std::runtime_error) << statement << part;
    EXPECT_EQ(count(), before);
}

} // namespace
