#include "core/base/error_code.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "core/store/private_table.h"
#include "tests/core/club/merge_clubs.h"
#include "tests/core/club/pin_club.h"
#include "tests/support/kept_state.h"

#include <gmock/gmock.h>

namespace {

using core::CellTexts;
using core::Club;
using core::ClubExchange;
using core::ErrorCode;
using core::LookAt;
using core::SheetId;
using support::FullClub;

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

// What somebody has to look at.
class LookAround : public Merge {
protected:
    LookAround()
        : van(copy("van")) {
        write(van, SheetId::Places, {}, {{"place", "Van"}}, full.now);
        merged(full.club, path("van"));
    }
    std::vector<LookAt::Kind> kinds() {
        std::vector<LookAt::Kind> found;
        for (const LookAt& each : merged(full.club, path("van")).lookAt)
            found.push_back(each.kind);
        return found;
    }
    Club van;
};

TEST_F(LookAround, oneCellOfTwoMachinesWithinAnHour) {
    write(van, SheetId::Boats, {{"boat", "Tern"}}, {{"note", "red"}}, full.now);
    write(full.club, SheetId::Boats, {{"boat", "Tern"}}, {{"note", "green"}}, full.now);
    EXPECT_THAT(kinds(), testing::ElementsAre(LookAt::Kind::CellChangedTwice));
    write(van, SheetId::Boats, {{"boat", "Petrel"}}, {{"note", "red"}}, full.now);
    write(full.club, SheetId::Boats, {{"boat", "Petrel"}}, {{"priority", "4"}}, full.now);
    EXPECT_THAT(kinds(), testing::IsEmpty()) << "another cell";
}

TEST_F(LookAround, oneSerialOfTwoThings) {
    write(van, SheetId::Items, {}, {{"kit_type", "radio"}, {"serial", "R7"}, {"boat", "Tern"}}, full.now);
    write(full.club, SheetId::Items, {}, {{"kit_type", "radio"}, {"serial", "R7"}, {"boat", "Tern"}},
          full.now);
    EXPECT_THAT(kinds(), testing::ElementsAre(LookAt::Kind::SerialTwice));
    write(van, SheetId::Items, {}, {{"kit_type", "knife"}, {"serial", "R7"}, {"boat", "Tern"}}, full.now);
    EXPECT_THAT(kinds(), testing::IsEmpty()) << "a knife is no radio";
}

TEST_F(LookAround, twoNamesForOneThing) {
    write(van, SheetId::People, {}, {{"person", "Bram Okee"}}, full.now);
    EXPECT_THAT(kinds(), testing::ElementsAre(LookAt::Kind::LikeNames));
    write(van, SheetId::People, {}, {{"person", "Nia Marsh"}}, full.now);
    write(van, SheetId::People, {{"person", "Bram Okee"}}, {{"role", "crew"}}, full.now);
    EXPECT_THAT(kinds(), testing::IsEmpty()) << "told once";
}

TEST_F(LookAround, oneThingOnTwoBoatsAndABoatOutTwice) {
    const auto goOut = [&](Club& club, const char* boat, const std::string& code, core::Moment at) {
        const auto check = club.checks().open(boat, core::Phase::Launch, at)->check;
        ASSERT_TRUE(club.checks().giveNames(check, {"Bram Oke"}, at));
        (void)club.checks().scan(check, core::ScannedText::typed(code), core::SeenBy::Typed, at);
        ASSERT_TRUE(club.checks().sign(check, "Bram Oke", "needed at once", at));
    };
    const core::Moment later = full.at("2026-03-15T08:00:00Z");
    goOut(full.club, "Petrel", "KGFB6J8WF9", later);
    goOut(van, "Tern", "KGFB6J8WF9", later);
    EXPECT_THAT(kinds(), testing::ElementsAre(LookAt::Kind::SeenOnTwoBoats));
    goOut(van, "Petrel", "K80NSC1FX4", full.at("2026-03-15T09:00:00Z"));
    EXPECT_THAT(kinds(), testing::ElementsAre(LookAt::Kind::OutTwice));
    goOut(van, "Petrel", "KGFB6J8WF9", full.at("2026-03-17T09:00:00Z"));
    EXPECT_THAT(kinds(), testing::Not(testing::Contains(LookAt::Kind::SeenOnTwoBoats))) << "two days later";
}

TEST_F(LookAround, aCheckThatTwoSigned) {
    const auto check = full.stillOpen;
    ASSERT_TRUE(full.club.checks().giveNames(check, {"Bram Oke"}, full.now));
    ASSERT_TRUE(full.club.checks().sign(check, "Bram Oke", "needed at once", full.now));
    ASSERT_TRUE(van.checks().giveNames(check, {"Odalys Finch"}, full.now));
    ASSERT_TRUE(van.checks().sign(check, "Odalys Finch", "needed at once", full.now));
    EXPECT_THAT(kinds(), testing::Contains(LookAt::Kind::SignedTwice));
    merged(van, full.file());
    EXPECT_EQ(dumpOf(full.file()), dumpOf(path("van"))) << "the first signature holds in both";
}

/// What is written into the other file past its own right, as on a machine where nobody asks for a PIN.
class LookAroundPins : public LookAround {
protected:
    void inVan(const std::function<void(core::Database&, core::Ledger&)>& work) {
        core::Database database(path("van"), core::Database::Mode::ReadWrite);
        core::Transaction transaction(database);
        core::Ledger ledger(database);
        work(database, ledger);
        transaction.commit();
    }
    static void giveRole(core::Ledger& ledger, const std::string& person, const std::string& role) {
        ledger.append(core::rowWritten(SheetId::People, {{"person", person}}, {{"role", role}}), {});
    }
    std::string newestPin() {
        core::Database database(path("van"), core::Database::Mode::ReadOnly);
        core::Statement query =
            database.prepare("SELECT id FROM pin_change WHERE change = 'set' ORDER BY stamp DESC LIMIT 1");
        return query.step() ? query.text(0) : std::string();
    }
    std::vector<LookAt> pinsChanged() {
        std::vector<LookAt> found = merged(full.club, path("van")).lookAt;
        std::erase_if(found, [](const LookAt& each) { return each.kind != LookAt::Kind::PinsChanged; });
        return found;
    }
    static LookAt odalys(bool isPinSet, bool isOpen) {
        return {.kind = LookAt::Kind::PinsChanged,
                .sheet = "people",
                .name = "Odalys Finch",
                .isPinSet = isPinSet,
                .isOpen = isOpen};
    }
    void makeOfficer() {
        inVan(
            [](core::Database&, core::Ledger& ledger) { giveRole(ledger, "Odalys Finch", "gear officer"); });
        EXPECT_THAT(pinsChanged(), testing::ElementsAre(odalys(true, false))) << "had a PIN before the role";
        ASSERT_TRUE(full.club.pins().unlock("Odalys Finch", support::pin("4711")));
    }
};

TEST_F(LookAroundPins, aPinThatCameWithoutWhatIsKeptOfItLeavesEverythingOpen) {
    makeOfficer();
    const std::string before = newestPin();
    inVan([&](core::Database&, core::Ledger& ledger) {
        ledger.append(core::PrivateErased{{before}}, {});
        ledger.append(core::PinSet{"Odalys Finch", support::sealed4711}, {});
    });
    // As a file holds it that a server without people's measures and PINs gave.
    inVan([&](core::Database& database, core::Ledger&) {
        database.prepare("DELETE FROM private_cell WHERE fact = ?").with(newestPin()).run();
        core::privateTable::noteNotHere(database, newestPin());
    });
    EXPECT_THAT(pinsChanged(), testing::ElementsAre(odalys(false, true)));
    EXPECT_FALSE(full.club.pins().anySet());
}

TEST_F(LookAroundPins, whoIsNoGearOfficerAnyMoreAndWhatChangesNothing) {
    makeOfficer();
    inVan([](core::Database&, core::Ledger& ledger) {
        ledger.append(core::PinSet{"Bram Oke", support::sealed4711}, {}); // who is none
        ledger.append(core::rowWritten(SheetId::People, {{"person", "Odalys Finch"}}, {{"mass_kg", "70"}}),
                      {});
    });
    EXPECT_THAT(pinsChanged(), testing::IsEmpty());
    inVan([](core::Database&, core::Ledger& ledger) {
        giveRole(ledger, "Bram Oke", "gear officer");
        giveRole(ledger, "Odalys Finch", "crew");
    });
    LookAt bram = odalys(true, false);
    bram.name = "Bram Oke";
    EXPECT_THAT(pinsChanged(), testing::ElementsAre(bram, odalys(false, false)));
}

} // namespace
