#include "core/club/club_record.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "tests/core/club/small_club.h"

#include <fstream>
#include <gmock/gmock.h>
#include <sstream>

namespace {

using core::Database;
using core::ErrorCode;

class PrivateCellsOfAClub : public testing::Test {
protected:
    void SetUp() override {
        small.import("people.csv", "person,role,mass_kg,chest_cm\nOdalys Finch,driver,70.25,95\n");
        small.import("people.csv", "person,mass_kg\nOdalys Finch,71.25\n");
    }
    std::optional<double> mass() {
        for (const core::Person& person : small.club.register_().people())
            if (person.name == "Odalys Finch") return person.massKg;
        return std::nullopt;
    }
    core::Verification looked() { return *small.club.record().verify(false); }
    std::vector<ErrorCode> problemsAfter(const std::string& sql) {
        Database(small.file(), Database::Mode::ReadWrite).script(sql);
        std::vector<ErrorCode> codes;
        for (const core::Error& problem : looked().problems)
            codes.push_back(problem.code);
        return codes;
    }
    support::SmallClub small;
};

TEST_F(PrivateCellsOfAClub, standInTheRegisterAndInNoFact) {
    EXPECT_EQ(mass(), 71.25);
    Database file(small.file(), Database::Mode::ReadOnly);
    EXPECT_EQ(file.number("SELECT count(*) FROM private_cell"), 3);
    EXPECT_EQ(file.number("SELECT count(*) FROM fact WHERE body LIKE '%71.25%' OR body LIKE '%70.25%'"), 0);
    EXPECT_TRUE(looked().problems.empty());
    ASSERT_TRUE(small.club.record().verify(true)->problems.empty());
    EXPECT_EQ(mass(), 71.25) << "made anew from the record";
}

TEST_F(PrivateCellsOfAClub, changedRemovedOrAddedTheyShow) {
    using testing::Contains;
    EXPECT_TRUE(problemsAfter("SELECT 1").empty());
    EXPECT_THAT(problemsAfter("UPDATE private_cell SET value = '99' WHERE value = '71.25'"),
                Contains(ErrorCode::PrivateCellChanged));
    EXPECT_THAT(problemsAfter("UPDATE private_cell SET value = '71.25', salt = '00' WHERE value = '99'"),
                Contains(ErrorCode::PrivateCellChanged));
    EXPECT_THAT(problemsAfter("DELETE FROM private_cell WHERE salt = '00'"),
                Contains(ErrorCode::PrivateCellMissing));
    EXPECT_THAT(problemsAfter("INSERT INTO private_cell VALUES ('nowhere', 'mass_kg', '', '5')"),
                Contains(ErrorCode::PrivateCellStray));
    EXPECT_THAT(problemsAfter("UPDATE private_cell SET field = 'role' WHERE field = 'chest_cm'"),
                Contains(ErrorCode::PrivateCellStray));
}

// The file alone says nothing of where a salt ends and a measure begins.
TEST_F(PrivateCellsOfAClub, noDigitMovesBetweenSaltAndMeasure) {
    EXPECT_THAT(
        problemsAfter("UPDATE private_cell SET salt = substr(salt, 1, 31), value = substr(salt, 32) || "
                      "value WHERE value = '71.25'"),
        testing::Contains(ErrorCode::PrivateCellChanged));
}

TEST_F(PrivateCellsOfAClub, aColumnThatNoFactTellsOfShowsHoweverItIsSpelled) {
    for (const char* field : {"\"mass_kg\"", ".", "..", "[#", "", "note"})
        EXPECT_THAT(problemsAfter("UPDATE private_cell SET field = '" + std::string(field) +
                                  "' WHERE rowid = (SELECT min(rowid) FROM private_cell)"),
                    testing::Contains(ErrorCode::PrivateCellStray))
            << field;
}

TEST_F(PrivateCellsOfAClub, whatWasErasedAndIsPutBackShows) {
    Database file(small.file(), Database::Mode::ReadWrite);
    file.script("CREATE TEMP TABLE before AS SELECT * FROM private_cell");
    ASSERT_EQ(*small.club.record().eraseMeasures("Odalys Finch", ""), 3);
    ASSERT_TRUE(looked().problems.empty());
    file.script("INSERT INTO private_cell SELECT * FROM before");
    std::vector<ErrorCode> codes;
    for (const core::Error& problem : looked().problems)
        codes.push_back(problem.code);
    EXPECT_THAT(codes, testing::Contains(ErrorCode::PrivateCellStray));
}

TEST_F(PrivateCellsOfAClub, whileAnotherProgramReadsTheErasingIsNotToldAsDone) {
    Database reader(small.file(), Database::Mode::ReadOnly);
    {
        const core::ReadSnapshot snapshot(reader);
        EXPECT_EQ(reader.number("SELECT count(*) FROM private_cell"), 3);
        const auto erased = small.club.record().eraseMeasures("Odalys Finch", "");
        ASSERT_FALSE(erased);
        EXPECT_EQ(erased.error().code, ErrorCode::ErasedNotYetInLog);
    }
    EXPECT_EQ(*small.club.record().eraseMeasures("Odalys Finch", ""), 0);
    EXPECT_FALSE(mass());
}

std::string bytesOf(const std::filesystem::path& file) {
    std::ostringstream bytes;
    bytes << std::ifstream(file, std::ios::binary).rdbuf();
    return bytes.str();
}

TEST_F(PrivateCellsOfAClub, erasedTheyAreNowhereInTheFileAndTheRecordIsWhole) {
    const auto isAnywhere = [&](const char* text) {
        return bytesOf(small.file()).find(text) != std::string::npos ||
               bytesOf(small.file().string() + "-wal").find(text) != std::string::npos;
    };
    ASSERT_TRUE(isAnywhere("71.25"));
    ASSERT_EQ(*small.club.record().eraseMeasures("odalys finch", "Bram Oke"), 3);
    EXPECT_FALSE(mass());
    EXPECT_FALSE(isAnywhere("71.25"));
    EXPECT_FALSE(isAnywhere("70.25"));
    EXPECT_TRUE(looked().problems.empty());
    EXPECT_EQ(looked().erased, 3);
    ASSERT_TRUE(small.club.record().verify(true)->problems.empty());
    EXPECT_FALSE(mass());

    EXPECT_EQ(*small.club.record().eraseMeasures("Odalys Finch", ""), 0) << "nothing is there any more";
    small.import("people.csv", "person,mass_kg\nOdalys Finch,72\n");
    EXPECT_EQ(mass(), 72.0) << "told anew, it is known anew";
    EXPECT_TRUE(looked().problems.empty());
    EXPECT_EQ(small.club.record().eraseMeasures("Nobody", "").error().code, ErrorCode::NoSuchPerson);
}

// The fact that erases may come in before the one that it is about.
TEST_F(PrivateCellsOfAClub, erasedTheyStayErasedInAnyOrder) {
    ASSERT_TRUE(small.club.record().eraseMeasures("Odalys Finch", ""));
    Database kept(small.file(), Database::Mode::ReadOnly);
    std::vector<core::Fact> facts;
    core::factTable::forEachByStamp(kept, [&](const core::Fact& fact) { facts.push_back(fact); });
    Database memory({}, Database::Mode::Memory);
    core::migrate(memory, core::migrations());
    for (auto fact = facts.rbegin(); fact != facts.rend(); ++fact) {
        core::factTable::insert(memory, *fact);
        core::apply(memory, *fact);
    }
    EXPECT_EQ(memory.value("SELECT mass_kg || role FROM person WHERE person = 'Odalys Finch'"), "driver");
    EXPECT_EQ(memory.number("SELECT count(*) FROM erased"), 2);
}

} // namespace
