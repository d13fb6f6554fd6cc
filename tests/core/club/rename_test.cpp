#include "core/answers/board.h"
#include "core/answers/evidence.h"
#include "core/answers/history.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_record.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "core/store/migrations.h"
#include "tests/core/store/full_club.h"
#include "tests/core/store/table_dump.h"

#include <gmock/gmock.h>
#include <random>

namespace {

using core::Database;
using core::ErrorCode;
using core::Fact;
using core::Named;
using support::dump;
using support::FullClub;

class Rename : public testing::Test {
protected:
    void rename(Named named, const char* from, const char* to, const char* of = "") {
        const auto done = full.club.register_().rename(named, from, to, of, "Bram Oke");
        ASSERT_TRUE(done) << support::described(done.error());
    }
    ErrorCode refused(Named named, const char* from, const char* to) {
        const auto done = full.club.register_().rename(named, from, to, {}, {});
        return done ? ErrorCode::NoSuchItem : done.error().code;
    }
    void expectWhole() {
        const auto found = full.club.record().verify(false);
        EXPECT_TRUE(found->problems.empty()) << support::described(found->problems.front());
        EXPECT_TRUE(full.club.record().verify(true)->problems.empty());
    }
    FullClub full;
};

TEST_F(Rename, aBoatGoesOnUnderItsNewName) {
    const auto before = full.club.answers().history("Petrel")->size();
    rename(Named::Boat, "petrel", "Heron");
    expectWhole();
    EXPECT_EQ(full.club.kit().item("KGFB6J8WF9")->boat, "Heron");
    EXPECT_EQ(full.club.register_().boat("heron")->name, "Heron");
    EXPECT_EQ(full.club.register_().boat("Petrel").error().code, ErrorCode::NoSuchBoat);
    EXPECT_EQ(full.club.answers().history("Heron")->size(), before + 1);
    const auto evidence = full.club.answers().evidence("Heron", full.now.at);
    ASSERT_TRUE(evidence);
    EXPECT_EQ(evidence->machine.empty(), false) << "its launches are found";
    const auto entries = full.club.log().entries("Heron");
    EXPECT_FALSE(entries->empty());
    EXPECT_TRUE(full.club.checks().open("Heron", core::Phase::Launch, full.now));
}

TEST_F(Rename, everyKindOfNameIsChangedWhereverItStands) {
    rename(Named::Person, "Odalys Finch", "Odalys Reed");
    rename(Named::KitType, "life jacket", "buoyancy jacket");
    rename(Named::Size, "M", "Medium", "buoyancy jacket");
    rename(Named::Place, "Store", "Loft");
    rename(Named::BoatClass, "inflatable", "RIB");
    expectWhole();
    const auto jacket = full.club.kit().item(full.jacket);
    EXPECT_EQ(jacket->kitType, "buoyancy jacket");
    EXPECT_EQ(jacket->size, "Medium");
    EXPECT_EQ(jacket->place, "Loft");
    EXPECT_EQ(full.club.register_().boat("Petrel")->boatClass, "RIB");
    EXPECT_FALSE(full.club.register_().pointsOf("Petrel", core::Phase::Launch)->empty());
    Database file(full.file(), Database::Mode::ReadOnly);
    EXPECT_EQ(file.number("SELECT count(*) FROM sign_off WHERE by = 'Odalys Reed'"), 2);
    EXPECT_EQ(file.number("SELECT count(*) FROM sign_off WHERE by = 'Odalys Finch'"), 0);
    EXPECT_EQ(file.number("SELECT count(*) FROM manifest_line WHERE kit_type = 'buoyancy jacket'"), 1);
    EXPECT_EQ(file.number("SELECT count(*) FROM life_rule WHERE kit_type = 'buoyancy jacket'"), 3);
    EXPECT_EQ(file.number("SELECT count(*) FROM check_run WHERE boat = 'Loft'"), 1);
    EXPECT_EQ(file.number("SELECT count(*) FROM person WHERE mass_kg = '70'"), 1) << "measures go with it";
}

TEST_F(Rename, aNameThatSomethingHasOrHadIsRefused) {
    EXPECT_EQ(refused(Named::Boat, "Petrel", "tern"), ErrorCode::NameTaken);
    EXPECT_EQ(refused(Named::Boat, "Moon", "Sun"), ErrorCode::NothingSoNamed);
    EXPECT_EQ(refused(Named::Boat, "Petrel", " "), ErrorCode::NameMissing);
    EXPECT_EQ(refused(Named::Boat, "Petrel", "He\x1b[31mron"), ErrorCode::TextUnseen);
    rename(Named::Boat, "Petrel", "Heron");
    EXPECT_EQ(refused(Named::Boat, "Tern", "Petrel"), ErrorCode::NameOfOld);
    rename(Named::Boat, "Heron", "Petrel"); // back again
    rename(Named::Boat, "Petrel", "PETREL");
    EXPECT_EQ(full.club.register_().boat("petrel")->name, "PETREL");
    expectWhole();
}

TEST_F(Rename, anImportTakesNoRowOfAnOldName) {
    rename(Named::Boat, "Petrel", "Heron");
    const auto folder = full.folder / "old";
    std::filesystem::create_directories(folder);
    support::writeFile(folder / "boats.csv", "boat,boat_class\nPetrel,inflatable\n");
    const auto plan = full.club.register_().importCsv(folder, full.now.today, false);
    ASSERT_TRUE(plan);
    ASSERT_EQ(plan->rejected.size(), 1U);
    EXPECT_EQ(plan->rejected.front().reason.code, ErrorCode::NameOfOld);
    support::writeFile(folder / "boats.csv", "boat,boat_class,note\nHeron,inflatable,red\n");
    EXPECT_TRUE(full.club.register_().importCsv(folder, full.now.today, false)->rejected.empty());
    EXPECT_EQ(full.club.register_().boats().size(), 2U);
}

// "Bravo" was said to mean Petrel, "Mittel" the size M (FullClub).
TEST_F(Rename, aWordOfASpreadsheetGoesOnUnderTheNewName) {
    rename(Named::Boat, "Petrel", "Egret");
    rename(Named::Size, "M", "Medium", "life jacket");
    const core::WordMeanings now{{{"boat", "Bravo"}, "Egret"}, {{"size", "Mittel"}, "Medium"}};
    EXPECT_EQ(full.club.register_().toldWords(core::SheetId::Items), now);
    const auto book =
        core::readWorkbook("Kit,Size,Boat\nlife jacket,Mittel,bravo\nlife jacket,Medium,BRAVO\n", "us.csv");
    const auto plan = full.club.register_().importClubSheet(*book, {}, full.now.today, false);
    ASSERT_TRUE(plan && plan->plan.rejected.empty());
    const auto kit = full.club.kit().all();
    EXPECT_EQ(
        std::count_if(kit.begin(), kit.end(),
                      [](const core::Item& item) { return item.boat == "Egret" && item.size == "Medium"; }),
        2);
    ASSERT_EQ(plan->words.size(), 2U);
    EXPECT_EQ(plan->words[0].means, "Egret");
    EXPECT_EQ(plan->words[0].rows, 2);
    EXPECT_EQ(plan->words[1].rows, 1);
    expectWhole();
}

// Two kit types have that size, and one of them calls it otherwise by now.
TEST_F(Rename, aWordOfASizeGoesByTheNamesThatItsKitTypesHave) {
    const auto means = [&] {
        for (const core::ToldWord& each : full.club.register_().toldWords())
            if (each.word == "Mittel") return each.means;
        return std::string("not told");
    };
    EXPECT_EQ(means(), "M");
    const auto drysuit = [&](core::SheetId sheet, const core::CellTexts& cells) {
        ASSERT_TRUE(full.club.register_().write({sheet, {{{}, cells, {}}}}, {}, full.now));
    };
    drysuit(core::SheetId::KitTypes, {{"kit_type", "drysuit"}});
    drysuit(core::SheetId::Sizes, {{"kit_type", "drysuit"}, {"size", "M"}});
    rename(Named::KitType, "life jacket", "vest");
    EXPECT_EQ(means(), "M");
    rename(Named::Size, "M", "Medium", "vest");
    EXPECT_EQ(means(), "M, Medium");
    const auto book =
        core::readWorkbook("Kit,Size,Boat\nvest,Mittel,Petrel\ndrysuit,Mittel,Petrel\n", "us.csv");
    const auto plan = full.club.register_().importClubSheet(*book, {}, full.now.today, false);
    ASSERT_TRUE(plan && plan->plan.rejected.empty());
    std::vector<std::string> sizes;
    for (const core::Item& item : full.club.kit().all())
        if (item.boat == "Petrel" && !item.size.empty()) sizes.push_back(item.kitType + ' ' + item.size);
    EXPECT_THAT(sizes, testing::IsSupersetOf({"vest Medium", "drysuit M"}));
    rename(Named::Size, "M", "Mid", "drysuit");
    EXPECT_EQ(means(), "Mid, Medium");
    expectWhole();
}

TEST_F(Rename, aWordThatIsForgottenIsAskedAgain) {
    const auto book = core::readWorkbook("Name,Role\nNia Marsh,bow hand\n", "us.csv");
    const core::ClubSheetChoices people{.sheet = core::SheetId::People};
    const auto isRefused = [&] {
        const auto plan = full.club.register_().importClubSheet(*book, people, full.now.today, true);
        return !plan || !plan->plan.rejected.empty();
    };
    EXPECT_FALSE(isRefused());
    EXPECT_EQ(full.club.register_().forgetWords({{"bow hand"}, {"boy"}}, {}).error().code,
              ErrorCode::WordNotTold);
    EXPECT_EQ(full.club.register_().forgetWords({{"bow hand", "state"}}, {}).error().code,
              ErrorCode::WordNotTold);
    EXPECT_FALSE(isRefused()) << "all or none is forgotten";
    const auto forgotten = full.club.register_().forgetWords({{"Bow-Hand", "role"}}, "Bram Oke");
    ASSERT_TRUE(forgotten);
    EXPECT_EQ(forgotten->size(), 1U);
    EXPECT_TRUE(isRefused());
    EXPECT_EQ(full.club.register_().toldWords().size(), 2U);
    expectWhole();
    core::ClubSheetChoices anew = people;
    anew.words = {{{"role", "BOW HAND"}, "driver"}};
    ASSERT_TRUE(full.club.register_().importClubSheet(*book, anew, full.now.today, false));
    EXPECT_FALSE(isRefused());
    expectWhole();
}

// Facts of the old name, from this or another machine, whenever they arrive, land on the renamed row:
// whatever is renamed and in whatever order the facts come in, the tables are the same, and those of a
// rebuild.
TEST_F(Rename, inAnyOrderOfArrivalTheTablesAreTheSame) {
    std::vector<Fact> kept;
    {
        Database file(full.file(), Database::Mode::ReadOnly);
        core::factTable::forEachByStamp(file, [&](const Fact& fact) { kept.push_back(fact); });
    }
    const std::vector<core::Renamed> renamings{
        {Named::Boat, "", "Petrel", "Heron"},        {Named::Boat, "", "Heron", "Osprey"},
        {Named::Boat, "", "Tern", "Skua"},           {Named::KitType, "", "life jacket", "jacket"},
        {Named::Size, "life jacket", "M", "Medium"}, {Named::Person, "", "Bram Oke", "Bram Oak"},
        {Named::Place, "", "Store", "Loft"},         {Named::BoatClass, "", "inflatable", "RIB"},
        {Named::Boat, "", "Osprey", "Petrel"}};
    const char* asked = std::getenv("THOLEPIN_HISTORIES");
    const int histories = asked == nullptr ? 25 : std::atoi(asked);
    std::mt19937 random(5);
    for (int history = 0; history < histories; ++history) {
        std::vector<Fact> facts = kept;
        for (std::size_t i = 0; i < renamings.size(); ++i) {
            if (random() % 3 == 0) continue;
            const auto after = core::Instant::parse(kept[random() % kept.size()].atUtc)->millis();
            Fact fact{.id = "r" + std::to_string(i), .machine = "0123456789abcdef"};
            fact.seq = static_cast<std::int64_t>(i + 1);
            fact.atUtc = core::Instant::fromMillis(after).iso();
            fact.kind = core::kindOf(renamings[i]);
            fact.body = core::textOf(renamings[i]);
            facts.push_back(std::move(fact));
        }
        std::string first;
        for (int order = 0; order < 3; ++order) {
            Database memory({}, Database::Mode::Memory);
            core::migrate(memory, core::migrations());
            for (const Fact& fact : facts) {
                core::factTable::insert(memory, fact);
                core::apply(memory, fact);
            }
            const std::string tables = dump(memory);
            if (order == 0) first = tables;
            ASSERT_EQ(tables, first) << "history " << history << ", order " << order;
            core::rebuildTables(memory, memory);
            ASSERT_EQ(dump(memory), first) << "made anew, history " << history;
            std::shuffle(facts.begin(), facts.end(), random);
        }
    }
}

} // namespace
