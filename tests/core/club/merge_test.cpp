#include "core/base/error_code.h"
#include "core/club/club_photos.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "core/store/private_table.h"
#include "tests/core/club/merge_clubs.h"
#include "tests/support/kept_state.h"

#include <gmock/gmock.h>

namespace {

using core::Club;
using core::ClubExchange;
using core::ErrorCode;
using core::SheetId;
using support::dumpOf;
using support::Merge;

TEST_F(Merge, bothHoldTheSameAfterwardsAndTwiceIsNothingNew) {
    Club van = copy("van");
    // Who writes first goes on with the key; the other copy begins as a machine of its own.
    write(full.club, SheetId::Boats, {{"boat", "Tern"}}, {{"note", "red"}}, full.now);
    write(van, SheetId::People, {}, {{"person", "Nia Marsh"}, {"mass_kg", "61"}}, full.now);
    van.log().add("Petrel", "strap worn", core::Severity::Remark, "Nia Marsh", full.now).value();
    const auto in = merged(full.club, path("van"));
    EXPECT_EQ(in.facts, 3) << "a machine began, a person, a log entry";
    EXPECT_EQ(in.machines, 1);
    EXPECT_EQ(in.changes, 2);
    EXPECT_TRUE(in.lookAt.empty());
    EXPECT_EQ(merged(full.club, path("van")).facts, 0);
    EXPECT_EQ(merged(van, full.file()).facts, 1);
    EXPECT_EQ(dumpOf(full.file()), dumpOf(path("van")));
    EXPECT_EQ(full.club.register_().people().size(), 3U);
    EXPECT_EQ((*full.club.register_().rowNamed(SheetId::People, "Nia Marsh"))[3], "61");
    expectWhole(full.club);
    expectWhole(van);
}

TEST_F(Merge, whatIsPlannedIsNotDone) {
    Club van = copy("van");
    write(full.club, SheetId::Boats, {{"boat", "Tern"}}, {{"note", "red"}}, full.now);
    write(van, SheetId::Places, {}, {{"place", "Van"}}, full.now);
    const std::string before = dumpOf(full.file());
    EXPECT_EQ(full.club.exchange().planMerge({path("van")}, ClubExchange::Forks::Refused)->facts, 2);
    EXPECT_EQ(dumpOf(full.file()), before);
    EXPECT_EQ(merged(full.club, path("van")).facts, 2);
}

TEST_F(Merge, givingIsTheOtherWay) {
    { Club van = copy("van"); }
    write(full.club, SheetId::Places, {}, {{"place", "Quay"}}, full.now);
    EXPECT_EQ(full.club.exchange().newsFor(path("van")).value(), 1);
    EXPECT_EQ(full.club.exchange().give(path("van"))->facts, 1);
    EXPECT_EQ(full.club.exchange().newsFor(path("van")).value(), 0);
    EXPECT_EQ(dumpOf(full.file()), dumpOf(path("van")));
    Club other = Club::create(path("other"), "Other").value();
    const std::string before = dumpOf(path("other"));
    EXPECT_EQ(full.club.exchange().newsFor(path("other")).error().code, ErrorCode::OtherClub);
    EXPECT_EQ(full.club.exchange().give(path("other")).error().code, ErrorCode::OtherClub);
    EXPECT_EQ(dumpOf(path("other")), before);
}

TEST_F(Merge, aPictureOrMeasureThatWasChangedIsRefused) {
    const auto refusal = [&](const std::string& name, const std::string& sql) {
        Club van = copy(name);
        EXPECT_TRUE(van.photos().addToItem(full.jacket, "\xFF\xD8\xFF van \xFF\xD9", "Bram Oke", full.now));
        { const Club closed = std::move(van); }
        core::Database(path(name), core::Database::Mode::ReadWrite).script(sql);
        const auto done = full.club.exchange().planMerge({path(name)}, ClubExchange::Forks::Refused);
        return done ? ErrorCode::EndOfCodes : done.error().code;
    };
    EXPECT_EQ(refusal("picture", "UPDATE photo SET bytes = CAST('other' AS BLOB)"),
              ErrorCode::OtherRecordDamaged);
    EXPECT_EQ(refusal("no picture", "DELETE FROM photo"), ErrorCode::OtherRecordDamaged);
    EXPECT_EQ(refusal("measure", "INSERT INTO private_cell SELECT fact, 'mass_kg', '', '70' FROM "
                                 "private_not_here; DELETE FROM private_not_here"),
              ErrorCode::OtherRecordDamaged);
    EXPECT_EQ(refusal("van", "SELECT 1"), ErrorCode::EndOfCodes);
}

/// A word of a spreadsheet that one machine was told is known to the other, the newest meaning of its newest
/// spelling.
TEST_F(Merge, whatAWordMeansIsKnownToAll) {
    Club van = copy("van");
    const auto imported = [&](Club& club, const char* word, const char* role, bool isTold) {
        const auto book = core::readWorkbook("Name,Role\nNia Marsh," + std::string(word) + '\n', "us.csv");
        core::ClubSheetChoices choices{.sheet = SheetId::People};
        if (isTold) choices.words = {{{"role", word}, role}};
        const auto done = club.register_().importClubSheet(*book, choices, full.now.today, false);
        return done && done->plan.rejected.empty() &&
               (*club.register_().rowNamed(SheetId::People, "Nia Marsh"))[2] == role;
    };
    ASSERT_TRUE(imported(full.club, "old salt", "driver", true));
    EXPECT_FALSE(imported(van, "old salt", "driver", false));
    merged(van, full.file());
    EXPECT_TRUE(imported(van, "Old-Salt", "driver", false));
    ASSERT_TRUE(imported(van, "OLD SALT", "crew", true));
    merged(full.club, path("van"));
    EXPECT_TRUE(imported(full.club, "old salt", "crew", false));
    const core::WordMeanings now{{{"role", "OLD SALT"}, "crew"}, {{"role", "bow hand"}, "crew"}};
    EXPECT_EQ(full.club.register_().toldWords(SheetId::People), now);
    EXPECT_EQ(van.register_().toldWords(SheetId::People), now);
    EXPECT_TRUE(full.club.register_().toldWords(SheetId::Boats).empty());
}

TEST_F(Merge, erasedMeasuresDoNotComeBack) {
    Club van = copy("van");
    write(van, SheetId::Places, {}, {{"place", "Van"}}, full.now);
    EXPECT_GT(full.club.record().eraseMeasures("Odalys Finch", {}).value(), 0);
    merged(full.club, path("van"));
    EXPECT_EQ((*full.club.register_().rowNamed(SheetId::People, "Odalys Finch"))[3], "");
    EXPECT_NE((*van.register_().rowNamed(SheetId::People, "Odalys Finch"))[3], "");
    merged(van, full.file());
    EXPECT_EQ((*van.register_().rowNamed(SheetId::People, "Odalys Finch"))[3], "");
    expectWhole(van);
    expectWhole(full.club);
}

TEST_F(Merge, anotherClubIsRefused) {
    Club other = Club::create(path("other"), "Other").value();
    const std::string before = dumpOf(full.file());
    EXPECT_EQ(full.club.exchange().merge({path("other")}, ClubExchange::Forks::Refused).error().code,
              ErrorCode::OtherClub);
    EXPECT_EQ(dumpOf(full.file()), before);
}

/// Changes the newest fact of a file behind the programs' back.
void rewriteNewest(const std::filesystem::path& file, const std::string& set) {
    core::Database database(file, core::Database::Mode::ReadWrite);
    database.script("DROP TRIGGER fact_is_never_changed");
    database.script(
        "UPDATE fact SET " + set +
        " WHERE at_utc = (SELECT max(at_utc) FROM fact) AND seq = (SELECT max(seq) FROM fact AS o WHERE "
        "o.machine = fact.machine)");
    database.script("CREATE TRIGGER fact_is_never_changed BEFORE UPDATE ON fact BEGIN\n"
                    "    SELECT RAISE(ABORT, 'a fact is never changed');\nEND");
}

TEST_F(Merge, aForgedFactIsRefusedAndSaidWhere) {
    Club van = copy("van");
    write(van, SheetId::Places, {}, {{"place", "Van"}}, full.now);
    rewriteNewest(path("van"), "by = 'Somebody'");
    const std::string before = dumpOf(full.file());
    const auto refused = full.club.exchange().merge({path("van")}, ClubExchange::Forks::Refused);
    EXPECT_EQ(refused.error().code, ErrorCode::OtherRecordDamaged);
    EXPECT_EQ(refused.error().cause.front().code, ErrorCode::FactChanged);
    EXPECT_EQ(dumpOf(full.file()), before);
}

/// The same machine goes on in two files: what a key in two hands does, or a history written anew.
class ForkedMerge : public Merge {
protected:
    ForkedMerge()
        : forked(path("forked")) {
        EXPECT_TRUE(core::copyClub(full.file(), forked, false));
        core::Database database(forked, core::Database::Mode::ReadWrite);
        const auto newest = *core::factTable::newest(database);
        machine = newest.machine;
        {
            // What this file's own key would have written next.
            write(full.club, SheetId::Places, {}, {{"place", "Quay"}}, full.now);
        }
        core::Database own(full.file(), core::Database::Mode::ReadOnly);
        mine = *core::factTable::newest(own);
        EXPECT_EQ(mine.machine, machine);
        core::Fact theirs = mine;
        theirs.id.back() = theirs.id.back() == '0' ? '1' : '0';
        theirs.hash = core::hashOf(theirs);
        core::Transaction transaction(database);
        core::factTable::insert(database, theirs); // not signed with the key, as nobody but its owner can
        core::apply(database, theirs);
        transaction.commit();
    }
    std::filesystem::path forked;
    std::string machine;
    core::Fact mine;
};

TEST_F(ForkedMerge, nothingIsMergedAndItIsSaidWhere) {
    const std::string before = dumpOf(full.file());
    const auto refused = full.club.exchange().merge({forked}, ClubExchange::Forks::Refused);
    EXPECT_EQ(refused.error().code, ErrorCode::RecordForked);
    EXPECT_EQ(refused.error().arguments[0], machine);
    EXPECT_EQ(refused.error().arguments[1], std::to_string(mine.seq));
    EXPECT_EQ(refused.error().arguments[2], mine.id);
    EXPECT_EQ(dumpOf(full.file()), before);
}

TEST_F(ForkedMerge, aForgedBranchIsNoMachineOfItsOwnEither) {
    EXPECT_EQ(full.club.exchange().merge({forked}, ClubExchange::Forks::AsNewMachine).error().code,
              ErrorCode::OtherRecordDamaged);
}

TEST_F(Merge, aForkByOneKeyIsTakenInAsAMachineOfItsOwn) {
    // The key's owner goes on in an old copy, of which the key does not know that it is old.
    Club van = copy("van");
    write(van, SheetId::Places, {}, {{"place", "Van"}}, full.now);
    ASSERT_TRUE(core::copyClub(path("van"), path("again"), false));
    const support::KeptState before; // as the key was when "again" was copied
    write(van, SheetId::Places, {}, {{"place", "Quay"}}, full.now);
    before.putBack();
    Club again = Club::open(path("again")).value();
    write(again, SheetId::Places, {}, {{"place", "Slip"}}, full.now);
    ASSERT_EQ(van.exchange().merge({path("again")}, ClubExchange::Forks::Refused).error().code,
              ErrorCode::RecordForked);
    const auto in = van.exchange().merge({path("again")}, ClubExchange::Forks::AsNewMachine);
    ASSERT_TRUE(in) << support::described(in.error());
    EXPECT_EQ(in->facts, 2) << "the place, and the machine that it is of now";
    EXPECT_TRUE(van.register_().rowNamed(SheetId::Places, "Slip"));
    EXPECT_TRUE(van.register_().rowNamed(SheetId::Places, "Quay"));
    expectWhole(van);
    // The other file is done with: all of it is here.
    for (const auto forks : {ClubExchange::Forks::Refused, ClubExchange::Forks::AsNewMachine})
        EXPECT_EQ(again.exchange().merge({path("van")}, forks).error().code,
                  forks == ClubExchange::Forks::Refused ? ErrorCode::RecordForked : ErrorCode::ForkTakenIn);
}

// Two machines that give one name to two things: nothing could part them again, and a boat that is out would
// be off the board by the return of another.
TEST_F(Merge, oneNameForTwoThingsIsRefused) {
    Club van = copy("van");
    ASSERT_TRUE(full.club.register_().rename(core::Named::Boat, "Petrel", "Zed", {}, {}));
    ASSERT_TRUE(van.register_().rename(core::Named::Boat, "Tern", "Zed", {}, {}));
    const std::string before = dumpOf(full.file());
    const auto refused = full.club.exchange().merge({path("van")}, ClubExchange::Forks::Refused);
    EXPECT_EQ(refused.error().code, ErrorCode::NamesFused);
    EXPECT_EQ(dumpOf(full.file()), before);
    EXPECT_EQ(van.exchange().merge({full.file()}, ClubExchange::Forks::Refused).error().code,
              ErrorCode::NamesFused);
}

TEST_F(Merge, aNewThingOfANameThatAnotherTookIsRefused) {
    Club van = copy("van");
    ASSERT_TRUE(full.club.register_().rename(core::Named::Place, "Store", "Attic", {}, {}));
    write(van, SheetId::Places, {}, {{"place", "Attic"}}, full.now);
    EXPECT_EQ(full.club.exchange().merge({path("van")}, ClubExchange::Forks::Refused).error().code,
              ErrorCode::NamesFused);
}

TEST_F(Merge, oneThingOfTwoNewNamesStaysOne) {
    Club van = copy("van");
    ASSERT_TRUE(full.club.register_().rename(core::Named::Boat, "Petrel", "Zed", {}, {}));
    ASSERT_TRUE(van.register_().rename(core::Named::Boat, "Petrel", "Heron", {}, {}));
    merged(full.club, path("van"));
    merged(van, full.file());
    EXPECT_EQ(full.club.register_().boats().size(), 2U);
    EXPECT_EQ(dumpOf(full.file()), dumpOf(path("van")));
}

} // namespace
