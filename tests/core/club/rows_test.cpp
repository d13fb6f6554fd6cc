#include "core/answers/outlook.h"
#include "core/base/error_code.h"
#include "core/club/club_answers.h"
#include "core/club/club_copy.h"
#include "core/club/club_exchange.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "tests/core/store/full_club.h"

#include <gmock/gmock.h>

namespace {

using core::CellTexts;
using core::ErrorCode;
using core::RegisterEdit;
using core::SheetId;
using support::FullClub;

class Rows : public testing::Test {
protected:
    core::ClubRegister rows() { return full.club.register_(); }
    core::Result<core::EditPlan> write(SheetId sheet, const CellTexts& key, const CellTexts& cells) {
        return rows().write({sheet, {{key, cells, {}}}}, "Bram Oke", full.now);
    }
    core::Result<core::EditPlan> plan(SheetId sheet, const CellTexts& key, const CellTexts& cells) {
        return rows().plan({sheet, {{key, cells, {}}}}, full.now);
    }
    std::string cell(SheetId sheet, const std::string& name, const char* column) {
        const auto row = rows().rowNamed(sheet, name);
        EXPECT_TRUE(row) << support::described(row.error());
        return row ? (*row)[static_cast<std::size_t>(core::sheet(sheet).indexOf(column))] : "no row";
    }
    std::size_t facts() { return full.club.record().verify(false)->facts; }
    void expectWhole() {
        const auto found = full.club.record().verify(false);
        EXPECT_TRUE(found->problems.empty()) << support::described(found->problems.front());
    }
    FullClub full;
};

TEST_F(Rows, aNewRowIsWrittenAndASecondIsRefused) {
    ASSERT_TRUE(write(SheetId::People, {}, {{"person", "Nia Marsh"}, {"role", "crew"}, {"mass_kg", "61.5"}}));
    EXPECT_EQ(cell(SheetId::People, "nia marsh", "mass_kg"), "61.5");
    const auto before = facts();
    const auto again = write(SheetId::People, {}, {{"person", " NIA Marsh"}, {"role", "driver"}});
    EXPECT_EQ(again.error().code, ErrorCode::RowThere);
    EXPECT_EQ(facts(), before);
    expectWhole();
}

// A rule that was written for the wrong kit type, or that a club does not have.
TEST_F(Rows, aLifeRuleIsTakenAwayAndMayComeBack) {
    const auto writeRule = [&] {
        return write(
            SheetId::LifeRules, {},
            {{"kit_type", "life jacket"}, {"rule", "monthly look"}, {"kind", "inspect_every"}, {"n", "1"}});
    };
    ASSERT_TRUE(writeRule());
    const auto rule = *rows().rowNamed(SheetId::LifeRules, "life jacket/monthly look");
    const std::size_t before = rows().rows(SheetId::LifeRules).size();
    const auto daysOf = [&] {
        std::size_t days = 0;
        for (const core::DueRow& row : full.club.answers().dueList(full.now.today, core::howeverLate))
            days += row.due.rule.name == "monthly look" ? 1 : 0;
        return days;
    };
    EXPECT_GT(daysOf(), 0U);
    auto another = rule;
    another.back() = "another source";
    EXPECT_EQ(rows().remove(SheetId::LifeRules, another, "Bram Oke", full.now).error().code,
              ErrorCode::RowChanged);
    ASSERT_TRUE(rows().remove(SheetId::LifeRules, rule, "Bram Oke", full.now));
    EXPECT_EQ(rows().rows(SheetId::LifeRules).size(), before - 1);
    EXPECT_EQ(daysOf(), 0U);
    EXPECT_EQ(rows().remove(SheetId::LifeRules, rule, "Bram Oke", full.now).error().code,
              ErrorCode::NoSuchRow);
    EXPECT_TRUE(full.club.record().verify(true)->problems.empty());
    ASSERT_TRUE(writeRule());
    EXPECT_GT(daysOf(), 0U);
    EXPECT_TRUE(full.club.record().verify(true)->problems.empty());
}

TEST_F(Rows, aLifeRuleWithRecordsStays) {
    const auto rule = *rows().rowNamed(SheetId::LifeRules, "life jacket/yearly look");
    EXPECT_EQ(rows().remove(SheetId::LifeRules, rule, "Bram Oke", full.now).error().code,
              ErrorCode::RuleWithRecords);
    EXPECT_TRUE(rows().rowNamed(SheetId::LifeRules, "life jacket/yearly look"));
}

// On another machine, which did not know that it is gone, a cell of it was changed.
TEST_F(Rows, aLifeRuleThatIsGoneStaysGoneWhenACellOfItComesIn) {
    ASSERT_TRUE(write(
        SheetId::LifeRules, {},
        {{"kit_type", "life jacket"}, {"rule", "monthly look"}, {"kind", "inspect_every"}, {"n", "1"}}));
    const auto van = full.folder / "van.tholepin";
    ASSERT_TRUE(core::copyClub(full.file(), van, false));
    auto other = core::Club::open(van);
    const auto rule = *rows().rowNamed(SheetId::LifeRules, "life jacket/monthly look");
    ASSERT_TRUE(rows().remove(SheetId::LifeRules, rule, "Bram Oke", full.now));
    ASSERT_TRUE(other->register_().write(
        {SheetId::LifeRules,
         {{{{"kit_type", "life jacket"}, {"part", ""}, {"rule", "monthly look"}}, {{"n", "2"}}, {}}}},
        {}, full.now));
    ASSERT_TRUE(full.club.exchange().merge({van}, core::ClubExchange::Forks::Refused));
    EXPECT_FALSE(rows().rowNamed(SheetId::LifeRules, "life jacket/monthly look"));
    EXPECT_FALSE(full.club.answers().dueList(full.now.today, core::howeverLate).empty());
    EXPECT_TRUE(full.club.record().verify(true)->problems.empty());
}

TEST_F(Rows, anItemWithoutACodeGetsOne) {
    const auto plan = write(SheetId::Items, {}, {{"kit_type", "knife"}, {"boat", "Tern"}});
    ASSERT_TRUE(plan && plan->rejected.empty());
    const auto item = full.club.kit().item(plan->changes.front().keyCells.front());
    ASSERT_TRUE(item);
    EXPECT_EQ(item->boat, "Tern");
    EXPECT_TRUE(item->registered);
}

TEST_F(Rows, aRowIsChangedAndClearedAndNothingElseOfIt) {
    ASSERT_TRUE(write(SheetId::Boats, {{"boat", "petrel"}}, {{"note", ""}, {"priority", "3"}}));
    EXPECT_EQ(cell(SheetId::Boats, "Petrel", "note"), "");
    EXPECT_EQ(cell(SheetId::Boats, "Petrel", "priority"), "3");
    EXPECT_EQ(cell(SheetId::Boats, "Petrel", "place"), "Store");
    const auto before = facts();
    const auto same = write(SheetId::Boats, {{"boat", "Petrel"}}, {{"priority", "3"}});
    ASSERT_TRUE(same);
    EXPECT_TRUE(same->changes.empty());
    EXPECT_EQ(facts(), before);
}

TEST_F(Rows, aNewRowHoldsSomething) {
    for (const char* column : {"person", "note"})
        EXPECT_EQ(write(SheetId::People, {}, {{column, " "}}).error().code, ErrorCode::RowEmpty);
    EXPECT_FALSE(write(SheetId::People, {}, {{"note", "nobody"}})->rejected.empty());
}

// docs/rules.md section 10.
TEST_F(Rows, nothingGetsAHomeThatIsNoLongerThere) {
    ASSERT_TRUE(write(SheetId::Places, {}, {{"place", "Loft"}, {"until", "2026-03-13"}})->rejected.empty());
    ASSERT_TRUE(write(SheetId::Places, {}, {{"place", "Quay"}, {"until", "2026-03-14"}})->rejected.empty());
    const auto gone = write(SheetId::Items, {{"code", "KGFB6J8WF9"}}, {{"boat", ""}, {"place", "loft"}});
    ASSERT_EQ(gone->rejected.size(), 1U);
    EXPECT_EQ(gone->rejected.front().column, "place");
    EXPECT_EQ(gone->rejected.front().reason.code, ErrorCode::NoLongerHere);
    EXPECT_EQ(cell(SheetId::Items, "KGFB6J8WF9", "boat"), "Petrel");
    EXPECT_FALSE(write(SheetId::Boats, {{"boat", "Tern"}}, {{"place", "Loft"}})->rejected.empty());
    EXPECT_TRUE(
        write(SheetId::Items, {{"code", "KGFB6J8WF9"}}, {{"boat", ""}, {"place", "Quay"}})->rejected.empty())
        << "its last day";
}

TEST_F(Rows, whatHappenedIsOfNoDayToCome) {
    const auto refused = [&](SheetId sheet, const CellTexts& key, const CellTexts& cells) {
        const auto plan = write(sheet, key, cells);
        return plan && plan->rejected.size() == 1 ? plan->rejected.front().reason.code
                                                  : ErrorCode::EndOfCodes;
    };
    const CellTexts item{{"code", full.jacket}};
    EXPECT_EQ(refused(SheetId::Services, {},
                      {{"code", full.jacket}, {"rule", "yearly look"}, {"day", "2027-01-01"}}),
              ErrorCode::ServiceInFuture);
    EXPECT_EQ(
        refused(SheetId::Happenings, {}, {{"code", full.jacket}, {"event", "blow"}, {"day", "2026-03-15"}}),
        ErrorCode::HappeningInFuture);
    EXPECT_EQ(refused(SheetId::Items, item, {{"made", "2027"}}), ErrorCode::MadeInFuture);
    EXPECT_EQ(refused(SheetId::Items, item, {{"first_use", "2026-03-15"}}), ErrorCode::FirstUseInFuture);
    EXPECT_TRUE(
        write(SheetId::Items, item, {{"made", "2026"}, {"first_use", "2026-03-14"}})->rejected.empty());
}

// A row that a person writes is an import of one row, and warns alike.
TEST_F(Rows, aRowWarnsOfWhatAnImportOfItWarnsOf) {
    const auto asImported = [&](SheetId sheet, const CellTexts& cells) {
        const auto csv = full.folder / "one row";
        std::filesystem::create_directories(csv);
        support::writeFile(csv / core::sheet(sheet).file, core::sheetOfRows(core::sheet(sheet), {cells}));
        const auto imported = rows().importCsv(csv, full.now.today, true);
        std::filesystem::remove_all(csv);
        EXPECT_TRUE(imported && imported->rejected.empty());
        return imported->warnings;
    };
    struct Case {
        SheetId sheet;
        CellTexts cells;
        std::vector<ErrorCode> warned;
    };
    for (const Case& each : std::vector<Case>{
             {SheetId::Boats,
              {{"boat", "Heron"}, {"boat_class", "inflatible"}},
              {ErrorCode::BoatWithoutManifest, ErrorCode::ClassLikeAnother}},
             {SheetId::Boats, {{"boat", "Heron"}, {"boat_class", "Inflatable"}}, {}},
             {SheetId::KitTypes, {{"kit_type", "radoi"}}, {ErrorCode::KitTypeLikeAnother}},
             {SheetId::KitTypes, {{"kit_type", "rettungsweste"}}, {ErrorCode::JacketNotWorn}},
             {SheetId::KitTypes, {{"kit_type", "rettungsweste"}, {"worn", "yes"}}, {}},
             {SheetId::ManifestLines,
              {{"boat_class", "canoe"}, {"kit_type", "radio"}},
              {ErrorCode::ClassWithoutBoat}},
             {SheetId::LifeRules,
              {{"kit_type", "radio"}, {"rule", "look"}, {"kind", "inspect_every"}, {"n", "6"}},
              {ErrorCode::RuleWithoutSource}},
             {SheetId::Parts,
              {{"code", full.jacket}, {"part", "light"}, {"made", "2024"}, {"first_use", "2023"}},
              {ErrorCode::UsedBeforeMade}}}) {
        const auto imported = asImported(each.sheet, each.cells);
        const auto planned = plan(each.sheet, {}, each.cells);
        ASSERT_TRUE(planned && planned->rejected.empty());
        std::vector<ErrorCode> codes;
        for (const core::RejectedRow& warning : planned->warnings) {
            codes.push_back(warning.reason.code);
            EXPECT_EQ(warning.row, 1);
        }
        EXPECT_EQ(codes, each.warned) << each.cells.front().second;
        ASSERT_EQ(planned->warnings.size(), imported.size());
        for (std::size_t i = 0; i < imported.size(); ++i)
            EXPECT_EQ(planned->warnings[i].reason, imported[i].reason);
    }
}

TEST_F(Rows, aRowWarnsOfItselfAndNotOfOthers) {
    ASSERT_TRUE(write(SheetId::Boats, {}, {{"boat", "Heron"}, {"boat_class", "inflatible"}}));
    const auto other = write(SheetId::Boats, {{"boat", "Tern"}}, {{"note", "green"}});
    EXPECT_TRUE(other->warnings.empty()) << "the other spelling is the rarer one";
    EXPECT_EQ(write(SheetId::Boats, {{"boat", "Heron"}}, {{"note", "red"}})->warnings.size(), 2U);
    const auto refused = plan(SheetId::Boats, {{"boat", "Heron"}}, {{"priority", "high"}});
    EXPECT_FALSE(refused->rejected.empty());
    EXPECT_TRUE(refused->warnings.empty());
    EXPECT_TRUE(write(SheetId::Boats, {{"boat", "Heron"}}, {{"boat_class", "inflatable"}})->warnings.empty());
}

TEST_F(Rows, aNewNameWarnsWhereItIsAlmostAnother) {
    const auto codes = [&](core::Named named, const char* from, const char* to) {
        std::vector<ErrorCode> codes;
        for (const core::Error& warning : rows().warningsOfName(named, from, to))
            codes.push_back(warning.code);
        return codes;
    };
    using testing::ElementsAre;
    using testing::IsEmpty;
    ASSERT_TRUE(write(SheetId::Boats, {}, {{"boat", "Heron"}, {"boat_class", "canoe"}}));
    EXPECT_THAT(codes(core::Named::BoatClass, "canoe", "inflatible"),
                ElementsAre(ErrorCode::ClassLikeAnother));
    EXPECT_THAT(codes(core::Named::BoatClass, "inflatable", "inflatible"), IsEmpty()) << "itself";
    EXPECT_THAT(codes(core::Named::KitType, "knife", " Radoi"), ElementsAre(ErrorCode::KitTypeLikeAnother));
    EXPECT_THAT(codes(core::Named::KitType, "knife", "lifejacket, old"),
                ElementsAre(ErrorCode::JacketNotWorn));
    EXPECT_THAT(codes(core::Named::KitType, "life jacket", "lifejacket"), IsEmpty()) << "it is worn";
    EXPECT_THAT(codes(core::Named::Boat, "Heron", "Terns"), IsEmpty()) << "an import does not compare them";
}

TEST_F(Rows, aKeyOfManyPartsIsNoRow) {
    std::string name = "a";
    for (int i = 0; i < 500; ++i)
        name += "/a";
    for (const SheetId sheet : {SheetId::LifeRules, SheetId::Points, SheetId::Services, SheetId::Log})
        EXPECT_EQ(rows().rowNamed(sheet, name).error().code, ErrorCode::NoSuchRow);
}

TEST_F(Rows, severalRowsAreAllWrittenOrNone) {
    RegisterEdit edit{SheetId::Items,
                      {{{{"code", "KGFB6J8WF9"}}, {{"boat", ""}, {"place", "Store"}}, {}},
                       {{{"code", "K80NSC1FX4"}}, {{"boat", ""}, {"place", "Nowhere"}}, {}}}};
    const auto refused = rows().write(edit, {}, full.now);
    ASSERT_TRUE(refused);
    ASSERT_EQ(refused->rejected.size(), 1U);
    EXPECT_EQ(refused->rejected.front().row, 2);
    EXPECT_EQ(refused->rejected.front().column, "place");
    EXPECT_EQ(cell(SheetId::Items, "KGFB6J8WF9", "boat"), "Petrel");
    edit.rows[1].cells[1].second = "Store";
    ASSERT_TRUE(rows().write(edit, {}, full.now)->rejected.empty());
    EXPECT_EQ(cell(SheetId::Items, "KGFB6J8WF9", "place"), "Store");
    EXPECT_EQ(cell(SheetId::Items, "K80NSC1FX4", "place"), "Store");
}

TEST_F(Rows, whatSomebodyChangedMeanwhileIsNotWrittenOver) {
    const auto seen = rows().rowNamed(SheetId::Boats, "Petrel").value();
    const RegisterEdit mine{SheetId::Boats, {{{{"boat", "Petrel"}}, {{"note", "green"}}, seen}}};
    ASSERT_TRUE(write(SheetId::Boats, {{"boat", "Petrel"}}, {{"priority", "5"}}));
    EXPECT_EQ(rows().write(mine, {}, full.now).error().code, ErrorCode::RowChanged);
    RegisterEdit again = mine;
    again.rows[0].seen = rows().rowNamed(SheetId::Boats, "Petrel").value();
    EXPECT_TRUE(rows().write(again, {}, full.now));
    EXPECT_EQ(cell(SheetId::Boats, "Petrel", "note"), "green");
}

TEST_F(Rows, whatNamesARowIsNoCellToChange) {
    EXPECT_EQ(write(SheetId::Boats, {{"boat", "Petrel"}}, {{"boat", "Heron"}}).error().code,
              ErrorCode::KeyCellFixed);
    EXPECT_EQ(write(SheetId::Boats, {{"boat", "Petrel"}}, {{"colour", "red"}}).error().code,
              ErrorCode::ColumnUnknown);
    EXPECT_EQ(write(SheetId::Boats, {{"boat", "Heron"}}, {{"note", "red"}}).error().code,
              ErrorCode::NoSuchRow);
    EXPECT_TRUE(write(SheetId::Boats, {{"boat", "Petrel"}}, {{"boat", "Petrel"}, {"note", "red"}}));
}

TEST_F(Rows, aPlanSaysWhatItDoesAndWritesNothing) {
    const auto before = facts();
    const auto planned = plan(SheetId::Items, {{"code", "KGFB6J8WF9"}}, {{"boat", ""}, {"place", "Store"}});
    ASSERT_TRUE(planned) << support::described(planned.error());
    ASSERT_EQ(planned->effects.kit.size(), 1U);
    EXPECT_EQ(planned->effects.kit[0].boat, "Petrel");
    EXPECT_EQ(planned->effects.kit[0].kitType, "knife");
    EXPECT_EQ(planned->effects.kit[0].before->there, 1);
    EXPECT_EQ(planned->effects.kit[0].after->there, 0);
    EXPECT_EQ(facts(), before);
    EXPECT_EQ(cell(SheetId::Items, "KGFB6J8WF9", "boat"), "Petrel");
    expectWhole();
}

TEST_F(Rows, aPlanSaysWhichDaysItMoves) {
    const auto planned = plan(SheetId::LifeRules, {{"kit_type", "life jacket"}, {"rule", "yearly look"}},
                              {{"n", "6"}, {"steps", ""}});
    ASSERT_TRUE(planned && planned->rejected.empty());
    ASSERT_EQ(planned->effects.due.size(), 1U);
    const core::DueChange& due = planned->effects.due.front();
    EXPECT_EQ(due.item.id, full.jacket);
    // The look of 14 March 2026: a year later, and half a year later.
    EXPECT_EQ(due.before->due->iso(), "2027-03-14");
    EXPECT_EQ(due.after->due->iso(), "2026-09-14");
    EXPECT_TRUE(plan(SheetId::Boats, {{"boat", "Petrel"}}, {{"note", "red"}})->effects.isEmpty());
}

TEST_F(Rows, namesOfRowsAreFoundAsTheyAreGiven) {
    int rowsSeen = 0;
    for (const core::Sheet& sheet : core::allSheets())
        for (const core::Cells& row : rows().rows(sheet.id)) {
            const std::string name = rows().nameOfRow(sheet.id, row);
            const auto found = rows().rowNamed(sheet.id, name);
            ASSERT_TRUE(found) << sheet.file << " " << name << ": " << support::described(found.error());
            EXPECT_EQ(*found, row);
            ++rowsSeen;
        }
    EXPECT_GT(rowsSeen, 40);
}

TEST_F(Rows, aNameThatMayBeTwoRowsIsAsked) {
    full.import("boats.csv", "boat,boat_class\ninflatable,rowing\n");
    full.import("manifest_lines.csv", "boat,kit_type,quantity\ninflatable,knife,2\n");
    EXPECT_EQ(rows().rowNamed(SheetId::ManifestLines, "inflatable/knife").error().code,
              ErrorCode::RowAmbiguous);
    EXPECT_EQ((*rows().rowNamed(SheetId::ManifestLines, "boat/inflatable/knife"))[3], "2");
    EXPECT_EQ((*rows().rowNamed(SheetId::ManifestLines, "class/inflatable/knife"))[3], "1");
    EXPECT_EQ((*rows().rowNamed(SheetId::ManifestLines, "inflatable/radio"))[3], "1");
    EXPECT_EQ(rows().rowNamed(SheetId::People, "Bram Oka").error().code, ErrorCode::RowLikeOthers);
    EXPECT_EQ(rows().rowNamed(SheetId::People, "Somebody").error().code, ErrorCode::NoSuchRow);
}

} // namespace
