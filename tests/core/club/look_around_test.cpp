#include "core/store/ledger.h"
#include "core/store/private_table.h"
#include "tests/core/club/merge_clubs.h"
#include "tests/core/club/pin_club.h"

#include <gmock/gmock.h>

#include <tuple>

namespace {

using core::Club;
using core::LookAt;
using core::SheetId;
using support::dumpOf;
using support::Merge;

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

// Who goes on with a copied file has read what stands in it.
TEST_F(LookAround, aCellThatWasChangedByWhoKnewTheOtherValueIsNone) {
    write(full.club, SheetId::Boats, {{"boat", "Tern"}}, {{"note", "green"}}, full.now);
    Club laptop = copy("laptop");
    write(laptop, SheetId::Boats, {{"boat", "Tern"}}, {{"note", "red"}}, full.now);
    const auto in = merged(full.club, path("laptop"));
    EXPECT_EQ(in.changes, 1);
    EXPECT_TRUE(in.lookAt.empty());
}

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

TEST_F(LookAround, oneThingRenamedOnTwoMachines) {
    const auto rename = [](Club& club, const char* from, const char* to) {
        ASSERT_TRUE(club.register_().rename(core::Named::Boat, from, to, {}, {}));
    };
    rename(full.club, "Petrel", "Coot");
    rename(van, "Petrel", "Teal");
    const std::vector<LookAt> found = merged(full.club, path("van")).lookAt;
    ASSERT_THAT(found, testing::SizeIs(1));
    EXPECT_EQ(
        found.front(),
        (LookAt{.kind = LookAt::Kind::RenamedTwice, .sheet = "boats", .name = "Teal", .otherName = "Coot"}));
    EXPECT_THAT(kinds(), testing::IsEmpty()) << "told once";
    merged(van, full.file());
    rename(van, "Teal", "Wigeon");
    EXPECT_THAT(kinds(), testing::IsEmpty()) << "renamed once more by who knew of both";
}

// A size is known by its kit type, which may go by another name on the machine that renames it.
TEST_F(LookAround, oneSizeRenamedOnTwoMachinesWhenItsKitTypeWasRenamedFirst) {
    const auto rename = [](Club& club, core::Named named, const char* from, const char* to, const char* of) {
        ASSERT_TRUE(club.register_().rename(named, from, to, of, {}));
    };
    write(van, SheetId::KitTypes, {}, {{"kit_type", "drysuit"}}, full.now);
    for (const char* size : {"M", "L"})
        write(van, SheetId::Sizes, {}, {{"kit_type", "drysuit"}, {"size", size}}, full.now);
    write(van, SheetId::Sizes, {}, {{"kit_type", "life jacket"}, {"size", "L"}}, full.now);
    EXPECT_THAT(kinds(), testing::IsEmpty());
    Club laptop = copy("laptop"); // begins before the names part
    rename(van, core::Named::KitType, "life jacket", "vest", "");
    rename(van, core::Named::Size, "M", "Medium", "vest");
    rename(laptop, core::Named::Size, "M", "Middle", "life jacket");
    rename(laptop, core::Named::Size, "L", "Large", "drysuit"); // the van's own L is of another kit type
    rename(van, core::Named::Size, "L", "Long", "vest");
    const LookAt twice{
        .kind = LookAt::Kind::RenamedTwice, .sheet = "sizes", .name = "Middle", .otherName = "Medium"};
    Club third = copy("third");
    for (const auto& [into, first, second] :
         {std::tuple(&full.club, "van", "laptop"), std::tuple(&third, "laptop", "van")}) {
        EXPECT_THAT(merged(*into, path(first)).lookAt, testing::IsEmpty());
        EXPECT_THAT(merged(*into, path(second)).lookAt, testing::ElementsAre(twice)) << first;
        expectWhole(*into);
    }
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
    void inVan(const std::function<void(core::Database&, core::Ledger&)>& work) { in(path("van"), work); }
    static void in(const std::filesystem::path& file,
                   const std::function<void(core::Database&, core::Ledger&)>& work) {
        core::Database database(file, core::Database::Mode::ReadWrite);
        core::Transaction transaction(database);
        core::Ledger ledger(database);
        work(database, ledger);
        ledger.committing();
        transaction.commit();
        ledger.committed();
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

// Whichever of them comes in: nobody can try at home what no PIN is any more.
TEST_F(LookAroundPins, whatIsKeptOfAPinGoesWhenAnotherMachineSetANewerOne) {
    const auto kept = [](const std::filesystem::path& file) {
        return core::Database(file, core::Database::Mode::ReadOnly)
            .number("SELECT count(*) FROM private_cell JOIN pin_change ON id = fact WHERE person = 'Odalys "
                    "Finch'");
    };
    const auto set = [](core::Database&, core::Ledger& ledger) {
        ledger.append(core::PinSet{"Odalys Finch", support::sealed4711}, {});
    };
    in(full.file(), set);
    in(path("van"), set);
    ASSERT_EQ(kept(full.file()), 1);
    ASSERT_EQ(kept(path("van")), 1);
    merged(full.club, path("van"));
    merged(van, full.file());
    EXPECT_EQ(kept(full.file()), 1);
    EXPECT_EQ(kept(path("van")), 1);
    EXPECT_EQ(dumpOf(full.file()), dumpOf(path("van")));
    expectWhole(full.club);
    expectWhole(van);
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
