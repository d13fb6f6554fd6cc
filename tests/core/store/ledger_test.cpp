#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_manifests.h"
#include "core/club/club_record.h"
#include "core/record/fact.h"
#include "core/register/manifest_record.h"
#include "core/store/club_file.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "tests/core/club/small_club.h"
#include "tests/support/errors.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <random>
#include <regex>

namespace {

using core::Database;
using core::Fact;
using support::SmallClub;

// FIPS 180-4 example "abc" and the CAVS short messages (NIST).
TEST(Sha256, publishedVectors) {
    EXPECT_EQ(core::sha256Hex(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    EXPECT_EQ(core::sha256Hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(core::sha256Hex(std::string(1000000, 'a')),
              "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    EXPECT_EQ(core::sha256Hex(std::string(56, '\0')),
              "d4817aa5497628e7c77e6b606107042bbba3130888c5f47a375e6179be789fbb");
}

// RFC 9562, section 5.7: 48 bits of Unix milliseconds, version 7, variant 10. Its appendix A.6 uses
// 017F22E2-79B0.
TEST(Uuid7, hasTheLayoutOfTheRfc) {
    const auto when = core::Instant::fromMillis(0x017F22E279B0);
    const std::string id = core::newUuid7(when);
    EXPECT_TRUE(std::regex_match(id, std::regex("017f22e2-79b0-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}")))
        << id;
    EXPECT_NE(id, core::newUuid7(when));
}

TEST(Fact, hashIsOverTheCanonicalArray) {
    Fact fact;
    fact.id = "f";
    fact.machine = "d";
    fact.seq = 1;
    fact.atUtc = "2026-03-14T06:40:00.000Z";
    fact.kind = "club-named";
    fact.body = R"({"name":"x"})";
    EXPECT_EQ(core::hashOf(fact),
              core::sha256Hex(R"(["f","","d",1,"2026-03-14T06:40:00.000Z","","club-named",{"name":"x"}])"));
}

/// The problem that a table holds something else than the facts say.
auto differs(const std::string& table) {
    return testing::AllOf(testing::Field(&core::Error::code, core::ErrorCode::TableDiffers),
                          testing::Field(&core::Error::arguments, testing::ElementsAre(table, testing::_)));
}

/// The club of small_club.h with a launch and a return in its record, opened as a bare database.
class TamperedFile : public testing::Test {
protected:
    void SetUp() override {
        const auto check = small.open();
        small.scanAll(check, "KGFB6J8WF9");
        ASSERT_TRUE(small.club.checks().sign(check, "Odalys Finch", "drill", small.now));
        const auto back = small.open(core::Phase::Return);
        small.scanAll(back, "K80NSC1FX4");
        ASSERT_TRUE(small.club.checks().sign(back, "Odalys Finch", "", small.now));
    }
    std::vector<core::Error> problemsAfter(const std::string& sql) {
        {
            Database database(small.file(), Database::Mode::ReadWrite);
            database.script(sql);
        }
        return small.club.record().verify(false)->problems;
    }
    SmallClub small;
    const std::string noTriggers = "DROP TRIGGER fact_is_never_changed; DROP TRIGGER fact_is_never_deleted;";
};

TEST_F(TamperedFile, untouchedIsWithoutProblems) {
    EXPECT_THAT(problemsAfter("SELECT 1"), testing::IsEmpty());
    EXPECT_EQ(small.club.record().verify(false)->machines.size(), 1U);
}

TEST_F(TamperedFile, factsCannotBeChangedOrDeletedByPlainSql) {
    Database database(small.file(), Database::Mode::ReadWrite);
    EXPECT_THROW(database.script("UPDATE fact SET by = 'x' WHERE seq = 3"), core::StoreFailure);
    EXPECT_THROW(database.script("DELETE FROM fact WHERE seq = 3"), core::StoreFailure);
    EXPECT_NO_THROW(database.script("UPDATE club SET name = name"));
}

TEST_F(TamperedFile, aChangedFactShows) {
    EXPECT_FALSE(
        problemsAfter(noTriggers + "UPDATE fact SET by = 'Bram Oke' WHERE kind = 'check-signed'").empty());
}

TEST_F(TamperedFile, aChangedBodyShows) {
    EXPECT_FALSE(
        problemsAfter(noTriggers +
                      "UPDATE fact SET body = replace(body, 'drill', 'thrill') WHERE kind = 'check-signed'")
            .empty());
}

/// Nested a hundred thousand deep: to read it would exhaust the stack.
TEST_F(TamperedFile, aBodyDeeperThanAnyProgramWritesShows) {
    const std::string deep(100'000, '[');
    EXPECT_FALSE(
        problemsAfter(noTriggers + "UPDATE fact SET body = '" + deep + "' WHERE kind = 'check-signed'")
            .empty());
}

TEST(Fact, bodyIsAtMostSixtyFourDeepAndAMebibyteLong) {
    const auto nested = [](std::size_t depth) { return std::string(depth, '[') + std::string(depth, ']'); };
    EXPECT_TRUE(core::isCanonical(nested(64)));
    EXPECT_FALSE(core::isCanonical(nested(65)));
    const auto asLong = [](std::size_t bytes) { return '"' + std::string(bytes - 2, 'a') + '"'; };
    EXPECT_TRUE(core::isCanonical(asLong(1 << 20)));
    EXPECT_FALSE(core::isCanonical(asLong((1 << 20) + 1)));
    EXPECT_TRUE(core::isCanonical('"' + std::string(1000, '[') + "\\\"[\""))
        << "what stands in a text is no depth";
}

TEST_F(TamperedFile, aRemovedFactShows) {
    EXPECT_FALSE(
        problemsAfter(noTriggers +
                      "DELETE FROM fact WHERE kind = 'tag-seen' AND seq = (SELECT min(seq) FROM fact WHERE "
                      "kind = 'tag-seen')")
            .empty());
}

TEST_F(TamperedFile, swappedFactsShow) {
    EXPECT_FALSE(problemsAfter(
                     noTriggers +
                     "UPDATE fact SET seq = -seq WHERE seq = 99999; UPDATE fact SET body = (SELECT body FROM "
                     "fact f WHERE f.seq = 21) WHERE seq = 20")
                     .empty());
}

/// Or each fact after it would carry what cannot be read, too.
TEST_F(TamperedFile, nothingIsWrittenAfterAFactWhoseInstantIsDamaged) {
    const auto write = [&] { return small.club.kit().writeOff("KGFB6J8WF9", "lost", "Bram Oke", small.now); };
    problemsAfter(noTriggers + "UPDATE fact SET at_utc = 'zz' || at_utc "
                               "WHERE seq = (SELECT max(seq) FROM fact)");
    const auto refused = write();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind(), core::ErrorKind::FileDamaged);
    problemsAfter("UPDATE fact SET at_utc = substr(at_utc, 3) WHERE seq = (SELECT max(seq) FROM fact)");
    EXPECT_TRUE(write());
}

TEST_F(TamperedFile, aChangedTableShowsAndRebuildingPutsItRight) {
    EXPECT_THAT(problemsAfter("UPDATE item SET kit_type = 'radio' WHERE code = 'K80NSC1FX4'"),
                testing::ElementsAre(differs("item")));
    ASSERT_TRUE(small.club.record().verify(true)->problems.empty());
    EXPECT_EQ(small.club.kit().item("K80NSC1FX4")->kitType, "paddle");
}

TEST_F(TamperedFile, everyTableIsCompared) {
    for (const char* table :
         {"sighting", "check_run", "sign_off", "item_state", "point_value", "boat", "kit_type"}) {
        Database database(small.file(), Database::Mode::ReadWrite);
        if (database.number(std::string("SELECT count(*) FROM ") + table) == 0) continue;
        EXPECT_THAT(problemsAfter(std::string("DELETE FROM ") + table), testing::Contains(differs(table)));
        ASSERT_TRUE(small.club.record().verify(true)->problems.empty()) << table;
    }
}

/// All rows of all tables, as one text.
std::string dump(Database& database) {
    std::string text;
    for (const char* table :
         {"club", "item", "item_state", "boat", "kit_type", "manifest_line", "sighting", "taken_back",
          "check_run", "check_names", "point_value", "check_closed", "log_entry", "sign_off"}) {
        auto query = database.prepare(std::string("SELECT * FROM ") + table + " ORDER BY 1, 2");
        while (query.step())
            text += std::string(table) + " " + query.text(0) + " " + query.text(1) + " " + query.text(3) +
                    " " + query.text(4) + "\n";
    }
    return text;
}

// Two machines write the same rows; whatever the order in which their facts arrive, the tables are the same.
TEST_F(TamperedFile, factsAppliedInAnyOrderGiveTheSameTables) {
    small.import("items.csv", "code,note\nK80NSC1FX4,blade chipped\n");
    small.import("items.csv", "code,note,serial\nK80NSC1FX4,-,S1\n");
    // A boat's own lines come and go, one for good.
    const core::ManifestOwner tern{core::ManifestOwner::Kind::Boat, "Tern"};
    for (const char* kitType : {"radio", "knife"}) {
        const core::ManifestLine own{.kitType = kitType, .quantity = 3, .note = "kept aft"};
        ASSERT_TRUE(small.club.manifests().changeLine(tern, own, {}, small.now));
        ASSERT_TRUE(small.club.manifests().dropOwnLine(tern, own, {}, small.now));
    }
    ASSERT_TRUE(small.club.manifests().changeLine(tern, {.kitType = "knife", .quantity = 2}, {}, small.now));
    const auto check = small.open();
    small.scan(check, "KGFB6J8WF9");
    ASSERT_TRUE(small.club.checks().giveNames(check, {"Bram Oke"}, small.now));
    ASSERT_TRUE(small.club.checks().withdraw(check, "KGFB6J8WF9", "loose grip", small.now));
    ASSERT_TRUE(small.club.checks().undo(check, "taken back", small.now)); // the damage
    ASSERT_TRUE(small.club.checks().withdraw(check, "K80NSC1FX4", "blade split", small.now));
    ASSERT_TRUE(small.club.checks().discard(check, "nobody goes", small.now));
    ASSERT_TRUE(small.club.kit().writeOff("KBDWAF2K6T", "lost", "Bram Oke", small.now));
    ASSERT_TRUE(small.club.kit().reinstate("KBDWAF2K6T", "in the van", "Bram Oke", small.now));
    Database kept(small.file(), Database::Mode::ReadWrite);
    std::vector<Fact> facts;
    core::factTable::forEachInChain(kept, [&](const Fact& fact) { facts.push_back(fact); });
    // Pretend that a third came from another machine, and each in a millisecond of its own, for of two in the
    // same one the machine's name decides which is the newer.
    const std::int64_t begun = core::Instant::parse(facts.front().atUtc)->millis();
    for (std::size_t i = 0; i < facts.size(); ++i) {
        facts[i].atUtc = core::Instant::fromMillis(begun + static_cast<std::int64_t>(i)).iso();
        if (i % 3 == 0) facts[i].machine = "0000000000000000";
        // The clock of the machine that takes back may be behind that of the one where it was done.
        if (facts[i].kind == "act-taken-back") facts[i].atUtc = core::Instant::fromMillis(begun - 1).iso();
    }
    const auto tablesOf = [&] {
        Database memory({}, Database::Mode::Memory);
        core::migrate(memory, core::migrations());
        for (const Fact& fact : facts) {
            core::factTable::insert(memory, fact);
            core::apply(memory, fact);
        }
        return dump(memory);
    };
    const std::string first = tablesOf();
    ASSERT_THAT(first, testing::HasSubstr("K80NSC1FX4"));
    ASSERT_THAT(first, testing::HasSubstr("manifest_line \x1Ftern\x1Fknife"));
    ASSERT_THAT(first, testing::Not(testing::HasSubstr("tern\x1Fradio")));
    ASSERT_THAT(first, testing::HasSubstr("taken_back "));
    ASSERT_THAT(first, testing::HasSubstr("check_closed "));
    ASSERT_THAT(first, testing::Not(testing::ContainsRegex("item \x1FKBDWAF2K6T.*written off")));
    {
        Database rebuilt({}, Database::Mode::Memory);
        core::migrate(rebuilt, core::migrations());
        for (const Fact& fact : facts)
            core::factTable::insert(rebuilt, fact);
        core::rebuildTables(rebuilt, rebuilt);
        EXPECT_EQ(dump(rebuilt), first) << "made anew from all facts, newest last";
    }
    std::mt19937 random(7);
    for (int round = 0; round < 20; ++round) {
        std::shuffle(facts.begin(), facts.end(), random);
        EXPECT_EQ(tablesOf(), first) << "round " << round;
    }
}

} // namespace
