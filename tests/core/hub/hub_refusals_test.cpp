#include "core/base/error_code.h"
#include "core/hub/hub_connection.h"
#include "core/hub/hub_facts.h"
#include "core/record/machine_key.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "tests/core/hub/hub_support.h"
#include "tests/support/kept_state.h"

#include <gmock/gmock.h>

// What a hub and its clients do not take: by the server's own check first, by the client's look-through where
// somebody with the club's password, or the database's, went past that.

namespace {

using core::ErrorCode;
using core::Fact;
using support::HubMachine;

class HubRefuses : public support::HubTest {
protected:
    void SetUp() override {
        founded(shed);
        ASSERT_TRUE(shed.join(url()));
        expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    }
    static std::string clubIn(HubMachine& machine) {
        core::Database database(machine.file, core::Database::Mode::ReadOnly);
        return core::clubOf(database);
    }
    static std::vector<Fact> factsIn(HubMachine& machine) {
        std::vector<Fact> facts;
        core::Database database(machine.file, core::Database::Mode::ReadOnly);
        core::factTable::forEachByStamp(database, [&](const Fact& fact) { facts.push_back(fact); });
        return facts;
    }
    /// A fact that follows that one, as a program would write it.
    static Fact following(const Fact& last) {
        Fact next = last;
        next.id = core::newUuid7(core::Instant::now());
        ++next.seq;
        next.prevHash = last.hash;
        next.kind = "club-named";
        next.body = R"({"name":"Sandbay"})";
        next.hash = core::hashOf(next);
        return next;
    }
    /// How a new machine's chain begins, signed.
    static Fact begun(const std::string& continues) {
        const core::MachineKey key = core::MachineKey::fresh();
        const core::MachineBegun body{key.publicKey(), "van", continues};
        Fact fact{.id = core::newUuid7(core::Instant::now()),
                  .machine = key.machine(),
                  .seq = 1,
                  .atUtc = core::Instant::now().iso(),
                  .kind = "machine-begun",
                  .body = core::textOf(core::FactBody(body))};
        fact.hash = core::hashOf(fact);
        fact.signature = key.signatureOf(fact);
        return fact;
    }
    /// What the hub says of these facts; nothing: it took them.
    std::optional<ErrorCode> pushed(const std::vector<Fact>& facts, std::optional<std::int64_t> known = {}) {
        core::HubConnection hub(core::hubUrlFrom(url()).value());
        const std::int64_t there = std::stoll(ask("SELECT count(*) FROM tholepin.fact"));
        try {
            const auto added = core::hubFacts::push(hub, clubIn(shed), known.value_or(there), facts);
            return added ? std::optional<ErrorCode>() : ErrorCode::HubAhead;
        } catch (const core::StoreFailure& failure) {
            return failure.error.code;
        }
    }
    /// Puts a fact there behind the back of the function that checks, as the database's owner can.
    void plant(const std::string& sql) {
        ask("ALTER TABLE tholepin.fact DISABLE TRIGGER USER; " + sql +
            "; ALTER TABLE tholepin.fact ENABLE TRIGGER USER");
    }
    std::string count() { return ask("SELECT count(*) FROM tholepin.fact"); }

    HubMachine shed{folder / "shed"};
    HubMachine home{folder / "home"};
};

TEST_F(HubRefuses, whatFollowsIsTakenAndTwiceIsNothingNew) {
    const Fact next = following(factsIn(shed).back());
    const std::string before = count();
    EXPECT_EQ(pushed({next}), std::nullopt);
    EXPECT_NE(count(), before);
    const std::string after = count();
    EXPECT_EQ(pushed({next}), std::nullopt);
    EXPECT_EQ(count(), after);
}

TEST_F(HubRefuses, aForgedFactByTheServer) {
    const Fact good = following(factsIn(shed).back());
    const std::string before = count();
    const auto with = [&](auto change) {
        Fact fact = good;
        change(fact);
        return pushed({fact});
    };
    // Each part of a fact is in its hash.
    EXPECT_EQ(with([](Fact& f) { f.body = R"({"name":"Sandbax"})"; }), ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { f.by = "Somebody"; }), ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { f.kind = "tag-seen"; }), ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { f.atUtc = "2026-01-01T00:00:00.000Z"; }), ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { f.id = core::newUuid7(core::Instant::now()); }), ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { f.hash.back() = f.hash.back() == '0' ? '1' : '0'; }),
              ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { f.signature.clear(); }), ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { // hashed well, but not what follows
                  f.prevHash = std::string(64, '0');
                  f.hash = core::hashOf(f);
              }),
              ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { // a number left out
                  ++f.seq;
                  f.hash = core::hashOf(f);
              }),
              ErrorCode::HubFactRefused);
    EXPECT_EQ(count(), before);
}

TEST_F(HubRefuses, aBatchIsTakenWholeOrNotAtAll) {
    const Fact good = following(factsIn(shed).back());
    Fact bad = following(good);
    bad.by = "Somebody";
    const std::string before = count();
    EXPECT_EQ(pushed({good, bad}), ErrorCode::HubFactRefused);
    EXPECT_EQ(count(), before);
    EXPECT_EQ(pushed({good, following(good)}), std::nullopt);
}

TEST_F(HubRefuses, whatIsSentWithoutKnowingTheOthers) {
    const Fact good = following(factsIn(shed).back());
    EXPECT_EQ(pushed({good}, 1), ErrorCode::HubAhead);
    EXPECT_EQ(pushed({good}), std::nullopt);
}

TEST_F(HubRefuses, namesAndBodiesOfAllSorts) {
    Fact fact = following(factsIn(shed).back());
    fact.by = "O'Brien \"Bo\" \\ {,} \t\x01\x7f ü 船";
    fact.body = R"({"name":"x'); DROP TABLE tholepin.fact; --"})";
    fact.hash = core::hashOf(fact);
    ASSERT_EQ(pushed({fact}), std::nullopt) << "PostgreSQL's to_json and ours write the same";
    core::HubConnection hub(core::hubUrlFrom(url()).value());
    const auto club = core::hubFacts::clubs(hub).front().club;
    const auto back = core::hubFacts::inChain(hub, club, fact.machine, fact.seq);
    ASSERT_TRUE(back);
    EXPECT_EQ(back->by, fact.by);
    EXPECT_EQ(back->body, fact.body);
    EXPECT_EQ(back->hash, fact.hash);
}

// What is there already is known by its hash; what is said beside that hash is not believed.
TEST_F(HubRefuses, toEraseWithoutAFact) {
    ASSERT_TRUE(shed.join(url(), true));
    Fact known = factsIn(shed).back();
    known.kind = "private-erased";
    std::string cells = ask("SELECT fact FROM tholepin.private_cell");
    cells.pop_back();
    known.body = R"({"facts":[")" + cells + R"("]})";
    const std::string before = count();
    EXPECT_EQ(pushed({known}), std::nullopt) << "nothing new";
    EXPECT_EQ(count(), before);
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.erased"), "0\n");
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.private_cell"), "1\n");
    Fact erasing = following(factsIn(shed).back());
    erasing.kind = known.kind;
    erasing.body = known.body;
    erasing.hash = core::hashOf(erasing);
    EXPECT_EQ(pushed({erasing}), std::nullopt);
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.private_cell"), "0\n");
}

TEST_F(HubRefuses, aForkByTheServer) {
    Fact other = factsIn(shed).back();
    other.by = "Somebody";
    other.hash = core::hashOf(other);
    const std::string before = count();
    EXPECT_EQ(pushed({other}), ErrorCode::HubForked);
    EXPECT_EQ(count(), before);
}

// A machine's key in two hands: the same chain goes on in two files.
TEST_F(HubRefuses, aForkByTheClientWhichNamesBothFacts) {
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

TEST_F(HubRefuses, anotherClubsFileByTheServer) {
    founded(home, "Sandbay"); // of that name, and begun by another machine
    const auto refused = home.join(url());
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::HubOtherClub);
    EXPECT_FALSE(home.club->hub().place());
}

TEST_F(HubRefuses, theFirstFactsOfAClubOfAnotherName) {
    founded(home, "Quillmere");
    const auto refused = home.join(url("harbour"));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::HubOtherName);
    EXPECT_EQ(refused.error().arguments, (std::vector<std::string>{"Harbour", "Quillmere"}));
}

// A machine that goes on from a fact which this club does not have is of another one.
TEST_F(HubRefuses, aForeignMachine) {
    EXPECT_EQ(pushed({begun(std::string(64, 'a'))}), ErrorCode::HubFactRefused);
    EXPECT_EQ(pushed({begun("")}), ErrorCode::HubFactRefused) << "a club has one beginning";
    Fact wrong = begun(factsIn(shed).back().hash);
    wrong.machine = std::string(32, 'b');
    wrong.hash = core::hashOf(wrong);
    EXPECT_EQ(pushed({wrong}), ErrorCode::HubFactRefused) << "the id is made of the key";
    EXPECT_EQ(pushed({begun(factsIn(shed).back().hash)}), std::nullopt);
}

// Put there by the database's owner: each client finds that it is none of this club's.
TEST_F(HubRefuses, aForeignClubsBeginningByTheClient) {
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

TEST_F(HubRefuses, factsThatAreNotSignedByTheClient) {
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
TEST_F(HubRefuses, toSendAHistoryThatWasWrittenAnew) {
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

TEST_F(HubRefuses, aFactThatTheDatabasesOwnerChangedByTheClient) {
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

TEST_F(HubRefuses, whatAnotherClubWouldReadOrWrite) {
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
    EXPECT_EQ(refusal([&] { core::hubFacts::push(hub, founder, 0, {factsIn(shed).front()}); }),
              ErrorCode::EndOfCodes)
        << "an empty club takes the beginning of one";
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.fact", "harbour"), "1\n");
    EXPECT_EQ(ask("SELECT count(DISTINCT club) FROM tholepin.fact"), "2\n");
    core::HubConnection district(core::hubUrlFrom(url("district")).value());
    EXPECT_EQ(refusal([&] { core::hubFacts::push(district, founder, 0, {}); }), ErrorCode::HubNotAllowed);
}

TEST_F(HubRefuses, whatIsNoBoard) {
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
TEST_F(HubRefuses, toLetAnotherClubWait) {
    for (const char* role : {"sandbay", "harbour", "district"}) {
        EXPECT_THROW(ask("SELECT FROM tholepin.club FOR KEY SHARE", role), std::runtime_error) << role;
        EXPECT_THROW(ask("SELECT tholepin.lock_club()", role), std::runtime_error) << role;
    }
    core::HubConnection other(core::hubUrlFrom(url("harbour")).value());
    other.script("SELECT pg_advisory_lock(1414024012, n) FROM generate_series(0, 9) AS n");
    EXPECT_EQ(pushed({following(factsIn(shed).back())}), std::nullopt);
}

TEST_F(HubRefuses, everyChangeByWhoeverIsConnected) {
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
