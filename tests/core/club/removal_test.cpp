#include "core/base/error_code.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/register/new_kit.h"
#include "tests/core/club/merge_clubs.h"

#include <gmock/gmock.h>

// Rows of the register that were made in error, and the club's name: docs/rules.md, "Taken out of the
// register".

namespace {

using core::CellTexts;
using core::Club;
using core::ErrorCode;
using core::LookAt;
using core::SheetId;

class Removal : public support::Merge {
protected:
    void SetUp() override {
        put(SheetId::KitTypes, {{"kit_type", "throw bag"}, {"price", "40"}, {"pack", "6"}});
        put(SheetId::Sizes, {{"kit_type", "throw bag"}, {"size", "L"}, {"wanted", "2"}});
    }
    void put(SheetId sheet, const CellTexts& cells) { write(full.club, sheet, {}, cells, full.now); }
    std::string putBag(Club& club, const CellTexts& more = {}) {
        CellTexts cells{{"kit_type", "throw bag"}};
        cells.insert(cells.end(), more.begin(), more.end());
        const auto plan = club.register_().write({SheetId::Items, {{{}, cells, {}}}}, {}, full.now);
        return plan->changes.front().keyCells.front();
    }
    core::Outcome remove(Club& club, SheetId sheet, const std::string& name) {
        const auto row = club.register_().rowNamed(sheet, name);
        return row ? club.register_().remove(sheet, *row, "Bram Oke", full.now) : core::Outcome(row.error());
    }
    core::Outcome remove(SheetId sheet, const std::string& name) { return remove(full.club, sheet, name); }
    ErrorCode refused(SheetId sheet, const std::string& name) {
        const auto done = remove(sheet, name);
        EXPECT_FALSE(done) << name;
        return done ? ErrorCode::NothingSoNamed : done.error().code;
    }
    static std::string cell(Club& club, SheetId sheet, const std::string& name, const char* column) {
        const auto row = club.register_().rowNamed(sheet, name);
        return row ? (*row)[static_cast<std::size_t>(core::sheet(sheet).indexOf(column))] : "no row";
    }
    std::string bag(const char* column) { return cell(full.club, SheetId::KitTypes, "throw bag", column); }
    void expectWholeAnew(Club& club) {
        expectWhole(club);
        EXPECT_TRUE(club.record().verify(true)->problems.empty());
    }
    /// Both ways, so that whatever came first elsewhere comes last here.
    core::CameIn mergeBothWays(Club& van) {
        const auto in = merged(full.club, path("van"));
        merged(van, full.file());
        EXPECT_EQ(support::dumpOf(full.file()), support::dumpOf(path("van")));
        expectWholeAnew(full.club);
        expectWholeAnew(van);
        return in;
    }
};

TEST_F(Removal, aKitTypeAndItsSizeGoAndAnImportOfTheRowBringsThemBack) {
    EXPECT_EQ(refused(SheetId::KitTypes, "throw bag"), ErrorCode::KitTypeHasRows);
    ASSERT_TRUE(remove(SheetId::Sizes, "throw bag/L"));
    ASSERT_TRUE(remove(SheetId::KitTypes, "Throw Bag"));
    EXPECT_EQ(bag("price"), "no row");
    expectWholeAnew(full.club);
    EXPECT_EQ(refused(SheetId::KitTypes, "throw bag"), ErrorCode::NoSuchRow);
    full.import("kit_types.csv", "kit_type,price\nthrow bag,55\n");
    EXPECT_EQ(bag("price"), "55");
    EXPECT_EQ(bag("pack"), "") << "nothing of the one before";
    EXPECT_EQ(cell(full.club, SheetId::Sizes, "throw bag/L", "wanted"), "no row");
    expectWholeAnew(full.club);
}

TEST_F(Removal, whatStandsByAKitTypeIsNamed) {
    const std::string code = putBag(full.club, {{"size", "L"}});
    EXPECT_EQ(refused(SheetId::Sizes, "throw bag/L"), ErrorCode::RowHasItems);
    ASSERT_TRUE(full.club.kit().writeOff(code, "mistake", {}, full.now));
    EXPECT_EQ(refused(SheetId::Sizes, "throw bag/L"), ErrorCode::RowHasItems) << "also what is written off";
    EXPECT_EQ(refused(SheetId::KitTypes, "throw bag"), ErrorCode::RowHasItems);
    write(full.club, SheetId::Items, {{"code", code}}, {{"kit_type", "knife"}, {"size", ""}}, full.now);
    ASSERT_TRUE(remove(SheetId::Sizes, "throw bag/L"));
    put(SheetId::LifeRules,
        {{"kit_type", "throw bag"}, {"rule", "look"}, {"kind", "inspect_every"}, {"n", "1"}});
    EXPECT_EQ(remove(SheetId::KitTypes, "throw bag").error().arguments.back(), "throw bag/look");
    ASSERT_TRUE(remove(SheetId::LifeRules, "throw bag/look"));
    put(SheetId::ManifestLines, {{"boat", "Tern"}, {"kit_type", "throw bag"}});
    EXPECT_EQ(refused(SheetId::KitTypes, "throw bag"), ErrorCode::KitTypeInManifests);
    ASSERT_TRUE(remove(SheetId::ManifestLines, "boat/Tern/throw bag"));
    write(full.club, SheetId::ManifestLines,
          {{"boat_class", "inflatable"}, {"boat", ""}, {"kit_type", "tow line"}},
          {{"substitutes", "throw bag"}}, full.now);
    EXPECT_EQ(remove(SheetId::KitTypes, "throw bag").error().arguments.back(), "class/inflatable/tow line");
    write(full.club, SheetId::ManifestLines,
          {{"boat_class", "inflatable"}, {"boat", ""}, {"kit_type", "tow line"}}, {{"substitutes", ""}},
          full.now);
    EXPECT_TRUE(remove(SheetId::KitTypes, "throw bag"));
    expectWholeAnew(full.club);
}

// A line of a class that the window takes away stays in the file with quantity 0, where nobody sees it.
TEST_F(Removal, aLineThatAsksForNoneDoesNotKeepAKitType) {
    ASSERT_TRUE(remove(SheetId::Sizes, "throw bag/L"));
    const core::CellTexts towLine{{"boat", "Tern"}, {"boat_class", ""}, {"kit_type", "tow line"}};
    put(SheetId::ManifestLines, {{"boat", "Tern"}, {"kit_type", "throw bag"}, {"quantity", "0"}});
    put(SheetId::ManifestLines,
        {{"boat", "Tern"}, {"kit_type", "tow line"}, {"quantity", "0"}, {"substitutes", "throw bag"}});
    ASSERT_TRUE(remove(SheetId::KitTypes, "throw bag"));
    EXPECT_EQ(bag("price"), "no row");
    EXPECT_EQ(cell(full.club, SheetId::ManifestLines, "boat/Tern/throw bag", "quantity"), "no row");
    EXPECT_EQ(cell(full.club, SheetId::ManifestLines, "boat/Tern/tow line", "substitutes"), "");
    EXPECT_TRUE(full.club.register_().exportCsv(full.folder / "out", {}));
    expectWholeAnew(full.club);
}

TEST_F(Removal, aWordOfSpreadsheetsKeepsAKitType) {
    ASSERT_TRUE(remove(SheetId::Sizes, "throw bag/L"));
    {
        core::Database database(full.file(), core::Database::Mode::ReadWrite);
        core::Transaction transaction(database);
        core::Ledger(database).append(core::WordTold{"items", "kit_type", "TB", "throw bag"}, {});
        transaction.commit();
    }
    EXPECT_EQ(refused(SheetId::KitTypes, "throw bag"), ErrorCode::KitTypeMeant);
    ASSERT_TRUE(full.club.register_().forgetWords({{.word = "TB"}}, {}));
    EXPECT_TRUE(remove(SheetId::KitTypes, "throw bag"));
}

TEST_F(Removal, linesAndPointsGoAndBoatsDoNot) {
    put(SheetId::Points, {{"boat", "Tern"}, {"phase", "launch"}, {"point", "seet"}, {"kind", "look"}});
    EXPECT_TRUE(remove(SheetId::Points, "boat/Tern/launch/seet"));
    EXPECT_EQ(cell(full.club, SheetId::Points, "boat/Tern/launch/seet", "kind"), "no row");
    const core::ManifestOwner inflatable{core::ManifestOwner::Kind::BoatClass, "inflatable"};
    const auto lines = [&] { return full.club.manifests().read()->now(inflatable).lines.size(); };
    const auto before = lines();
    EXPECT_TRUE(remove(SheetId::ManifestLines, "class/inflatable/radio"));
    EXPECT_EQ(lines(), before - 1);
    EXPECT_EQ(refused(SheetId::Boats, "Tern"), ErrorCode::NoSuchRow);
    EXPECT_NE(cell(full.club, SheetId::Boats, "Tern", "boat"), "no row");
    expectWholeAnew(full.club);
}

TEST_F(Removal, whatAnotherMachineUsesComesBackWholeAndIsLookedAt) {
    Club van = copy("van");
    ASSERT_TRUE(remove(SheetId::Sizes, "throw bag/L"));
    ASSERT_TRUE(remove(SheetId::KitTypes, "throw bag"));
    const std::string code = putBag(van, {{"size", "L"}});
    const auto in = mergeBothWays(van);
    EXPECT_EQ(bag("price"), "40");
    EXPECT_EQ(bag("pack"), "6");
    EXPECT_EQ(cell(full.club, SheetId::Sizes, "throw bag/L", "wanted"), "2");
    EXPECT_THAT(in.lookAt,
                testing::UnorderedElementsAre(
                    LookAt{.kind = LookAt::Kind::CameBack, .sheet = "kit_types", .name = "throw bag"},
                    LookAt{.kind = LookAt::Kind::CameBack, .sheet = "sizes", .name = "throw bag/L"}));
    // Once nothing is of it any more it is gone, as somebody wanted.
    write(van, SheetId::Items, {{"code", code}}, {{"kit_type", "knife"}, {"size", ""}}, full.now);
    mergeBothWays(van);
    EXPECT_EQ(bag("price"), "no row");
    EXPECT_EQ(cell(full.club, SheetId::Sizes, "throw bag/L", "wanted"), "no row");
}

// It was used before it was taken away, by a machine of which the other did not know.
TEST_F(Removal, whatWasUsedEarlierComesBackWholeToo) {
    Club van = copy("van");
    write(van, SheetId::ManifestLines, {},
          {{"boat", "Tern"}, {"kit_type", "tow line"}, {"substitutes", "throw bag"}}, full.now);
    ASSERT_TRUE(remove(SheetId::Sizes, "throw bag/L"));
    ASSERT_TRUE(remove(SheetId::KitTypes, "throw bag"));
    EXPECT_EQ(mergeBothWays(van).lookAt.size(), 1U);
    EXPECT_EQ(bag("price"), "40");
    EXPECT_EQ(cell(full.club, SheetId::Sizes, "throw bag/L", "wanted"), "no row");
}

TEST_F(Removal, whatNobodyUsesStaysGone) {
    Club van = copy("van");
    ASSERT_TRUE(remove(SheetId::Sizes, "throw bag/L"));
    ASSERT_TRUE(remove(SheetId::KitTypes, "throw bag"));
    write(van, SheetId::Boats, {{"boat", "Tern"}}, {{"note", "red"}}, full.now);
    EXPECT_TRUE(mergeBothWays(van).lookAt.empty());
    EXPECT_EQ(bag("price"), "no row");
}

TEST_F(Removal, aCellChangedElsewhereLaterBringsTheRowBackWhole) {
    Club van = copy("van");
    ASSERT_TRUE(remove(SheetId::Sizes, "throw bag/L"));
    ASSERT_TRUE(remove(SheetId::KitTypes, "throw bag"));
    write(van, SheetId::KitTypes, {{"kit_type", "throw bag"}}, {{"price", "45"}}, full.now);
    mergeBothWays(van);
    EXPECT_EQ(bag("price"), "45");
    EXPECT_EQ(bag("pack"), "6");
}

// What had that name is gone, with a rule that had the name of one that stands.
TEST_F(Removal, aNameThatIsFreeAgainIsGivenAndNothingIsLost) {
    const CellTexts look{{"rule", "look"}, {"kind", "inspect_every"}};
    const auto rule = [&](const char* kitType, const char* months) {
        CellTexts cells = look;
        cells.insert(cells.end(), {{"kit_type", kitType}, {"n", months}});
        put(SheetId::LifeRules, cells);
    };
    put(SheetId::KitTypes, {{"kit_type", "throwbag"}, {"spares", "1"}});
    rule("throwbag", "3");
    put(SheetId::Sizes, {{"kit_type", "throwbag"}, {"size", "L"}});
    rule("throw bag", "1");
    ASSERT_TRUE(remove(SheetId::LifeRules, "throw bag/look"));
    ASSERT_TRUE(remove(SheetId::Sizes, "throw bag/L"));
    ASSERT_TRUE(remove(SheetId::KitTypes, "throw bag"));
    ASSERT_TRUE(full.club.register_().rename(core::Named::KitType, "throwbag", "throw bag", {}, {}));
    EXPECT_EQ(bag("spares"), "1");
    EXPECT_EQ(bag("price"), "") << "of the one before";
    EXPECT_EQ(cell(full.club, SheetId::LifeRules, "throw bag/look", "n"), "3");
    EXPECT_EQ(cell(full.club, SheetId::Sizes, "throw bag/L", "wanted"), "");
    expectWholeAnew(full.club);
}

TEST_F(Removal, theClubsNameIsMendedAndTheNewestHolds) {
    Club van = copy("van");
    ASSERT_TRUE(full.club.register_().nameClub(" Quilmere Lake Rescue ", "Bram Oke"));
    ASSERT_TRUE(van.register_().nameClub("Quillmere Lake Rescue", {}));
    EXPECT_EQ(full.club.name(), "Quilmere Lake Rescue");
    mergeBothWays(van);
    EXPECT_EQ(full.club.name(), "Quillmere Lake Rescue");
    const auto facts = full.club.record().verify(false)->facts;
    EXPECT_TRUE(full.club.register_().nameClub("Quillmere Lake Rescue", {}));
    EXPECT_EQ(full.club.record().verify(false)->facts, facts) << "it stands so already";
    EXPECT_EQ(full.club.register_().nameClub(" ", {}).error().code, ErrorCode::NameMissing);
    for (const std::string& name : {std::string(201, 'a'), std::string("Quill\nmere")})
        EXPECT_FALSE(full.club.register_().nameClub(name, {}));
    EXPECT_EQ(full.club.name(), "Quillmere Lake Rescue");
}

// A thing that was registered twice is no loss, and never was in service: docs/rules.md, "Registered by
// mistake".
TEST_F(Removal, whatWasRegisteredByMistakeIsUndoneLikeOthersAndItsSerialIsFree) {
    const core::NewKit kit{.kitType = "knife", .serials = {"S77"}};
    const auto twice = full.club.kit().registerKit(kit, {}, full.now).value();
    EXPECT_EQ(full.club.kit().registerKit(kit, {}, full.now).error().code, ErrorCode::SerialRegistered);
    ASSERT_TRUE(full.club.kit().writeOff(twice.front().id, "mistake", {}, full.now));
    EXPECT_TRUE(full.club.kit().item(twice.front().id)->isByMistake());
    EXPECT_EQ(full.club.kit().writeOff("KGFB6J8WF9", "error", {}, full.now).error().code,
              ErrorCode::NotAReason);
    EXPECT_TRUE(full.club.kit().registerKit(kit, {}, full.now));
    ASSERT_TRUE(full.club.kit().reinstate(twice.front().id, "it is there", {}, full.now));
    EXPECT_EQ(full.club.kit().item(twice.front().id)->state, core::ItemState::Serviceable);
    expectWholeAnew(full.club);
}

} // namespace
