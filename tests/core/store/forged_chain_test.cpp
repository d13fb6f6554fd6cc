#include "tests/core/store/machine_chain.h"

#include "core/record/machine_key.h"
#include "core/store/ledger.h"

#include <gmock/gmock.h>
#include <sqlite3.h>

// What somebody who has only the file can write, and what shows it.

namespace {

namespace fs = std::filesystem;
using core::Database;
using core::Fact;
using support::MachineChain;
using support::StateFolder;

/// Changes that fact and makes all hashes anew, as whoever has only the file can.
void rewrite(Database& file, const std::string& machine, const std::function<void(Fact&)>& change) {
    file.script("DROP TRIGGER fact_is_never_changed");
    std::vector<Fact> facts;
    core::factTable::forEachInChain(file, [&](const Fact& fact) { facts.push_back(fact); });
    std::string before;
    for (Fact& fact : facts) {
        if (fact.machine != machine) continue;
        change(fact);
        fact.prevHash = before;
        before = fact.hash = core::hashOf(fact);
        file.prepare("UPDATE fact SET body = ?, prev_hash = ?, hash = ?, signature = ? WHERE id = ?")
            .with(fact.body)
            .with(fact.prevHash)
            .with(fact.hash)
            .with(fact.signature)
            .with(fact.id)
            .run();
    }
    file.script("CREATE TRIGGER fact_is_never_changed BEFORE UPDATE ON fact BEGIN\n"
                "    SELECT RAISE(ABORT, 'a fact is never changed');\nEND");
}

TEST_F(MachineChain, whoeverHasOnlyTheFileCannotRewriteAFact) {
    writeTo(m_file);
    const std::string machine = factsOf(m_file).front().machine;
    {
        Database file(m_file, Database::Mode::ReadWrite);
        rewrite(file, machine, [](Fact& fact) {
            if (fact.kind == "club-named") fact.body = R"({"name":"Forged"})";
        });
        core::rebuildTables(file, file);
    }
    const auto found = looked(m_file);
    EXPECT_FALSE(found.machines[0].isSigned);
    ASSERT_EQ(found.problems.size(), 3U) << "the fact and the two behind it";
    for (const core::Error& problem : found.problems)
        EXPECT_EQ(problem.code, core::ErrorCode::FactNotSigned);
}

TEST_F(MachineChain, anotherKeyCannotTakeAMachinesPlace) {
    writeTo(m_file);
    const std::string machine = factsOf(m_file).front().machine;
    const auto forger = core::MachineKey::fresh();
    {
        Database file(m_file, Database::Mode::ReadWrite);
        rewrite(file, machine, [&](Fact& fact) {
            if (fact.seq == 1) fact.body = core::textOf(core::MachineBegun{forger.publicKey(), "shed", ""});
        });
        file.script("DROP TRIGGER fact_is_never_changed");
        for (const Fact& fact : factsOf(m_file))
            put(file, fact.id, "signature", forger.signatureOf(fact));
    }
    const auto found = looked(m_file);
    EXPECT_FALSE(found.machines[0].isSigned);
    EXPECT_THAT(found.problems,
                testing::Contains(testing::Field(&core::Error::code, core::ErrorCode::MachineUnknown)));
}

std::vector<core::ErrorCode> codesOf(const core::Verification& found) {
    std::vector<core::ErrorCode> codes;
    for (const core::Error& problem : found.problems)
        codes.push_back(problem.code);
    return codes;
}

TEST_F(MachineChain, newestFactsThatWereCutOffShowWhereAnotherMachineWentOn) {
    writeTo(m_file);
    StateFolder::use(m_folder / "other");
    writeTo(m_file);
    EXPECT_TRUE(looked(m_file).problems.empty());
    const auto facts = factsOf(m_file);
    {
        Database file(m_file, Database::Mode::ReadWrite);
        sqlite3_db_config(file.handle(), SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
        file.prepare("DELETE FROM fact WHERE machine = ? AND seq = 4").with(facts.front().machine).run();
        core::rebuildTables(file, file);
    }
    EXPECT_THAT(codesOf(looked(m_file)), testing::ElementsAre(core::ErrorCode::FactsCutOff));
}

// Signed with a key of its own; its instant cannot be, and it goes on from nothing.
TEST_F(MachineChain, aWholeMachineThatWasForgedShows) {
    const auto forger = core::MachineKey::fresh();
    Fact fact{.id = core::newUuid7(core::Instant::now()), .machine = forger.machine(), .seq = 1};
    fact.kind = core::kindOf(core::MachineBegun{});
    const auto add = [&](const std::string& at, const std::string& continues) {
        fact.atUtc = at;
        fact.body = core::textOf(core::MachineBegun{forger.publicKey(), "vm", continues});
        fact.hash = core::hashOf(fact);
        fact.signature = forger.signatureOf(fact);
        const fs::path forged = copied(m_file, "forged.tholepin");
        Database file(forged, Database::Mode::ReadWrite);
        core::factTable::insert(file, fact);
        return codesOf(core::verifyStore(file));
    };
    const std::string now = core::Instant::now().iso();
    EXPECT_TRUE(add(now, factsOf(m_file).back().hash).empty()) << "as a machine that somebody merged in";
    EXPECT_THAT(add(now, ""), testing::ElementsAre(core::ErrorCode::FactsCutOff));
    EXPECT_THAT(add(now, std::string(64, 'f')), testing::ElementsAre(core::ErrorCode::FactsCutOff));
    for (const char* at : {"9999-12-31T23:59:59.999Z", "zz <b>", "2026-11-29 10:00:00"})
        EXPECT_THAT(add(at, factsOf(m_file).back().hash), testing::Contains(core::ErrorCode::FactImpossible))
            << at;
}

} // namespace
