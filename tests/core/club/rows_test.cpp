#include "core/answers/outlook.h"
#include "core/base/error_code.h"
#include "core/club/club_answers.h"
#include "core/club/club_copy.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "core/exchange/csv_text.h"
#include "core/tag/tag_code.h"
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

// What a person writes in a cell is what an import of that row writes, or refuses.
struct CellCase {
    SheetId sheet;
    std::string row; ///< its name; empty: a new row
    CellTexts key;   ///< of a new row
    std::string column;
    std::vector<std::string> good, bad;
};

std::string mintedTag(core::TagClass tagClass) {
    return core::TagCode::mint(tagClass, [next = 7u]() mutable { return next *= 48271u; }).text();
}

std::vector<CellCase> cellCases() {
    const std::string jacket = "JACKET";
    const auto of = [&](SheetId sheet, std::string row, std::string column, std::vector<std::string> good,
                        std::vector<std::string> bad) {
        return CellCase{sheet, std::move(row), {}, std::move(column), std::move(good), std::move(bad)};
    };
    const std::vector<std::string> notes{"a \"quoted\", long; note", "=1+1", "Grüße", ""};
    const std::vector<std::string> badNotes{std::string(2001, 'x'), "turn\u202e"};
    const std::vector<std::string> yesNo{"yes", "no", ""}, badYesNo{"maybe"};
    const std::vector<std::string> counts{"7", "0", ""}, badCounts{"-1", "1.5", "many"};
    const std::vector<std::string> amounts{"7.25", "0", ""}, badAmounts{"-1", "1,5", "many"};
    const std::vector<std::string> days{"2024-02-29", "2024-02", "2024", ""},
        badDays{"2023-02-29", "1.2.2024", "soon"};
    const std::vector<std::string> names{"Zulu 7", ""}, badNames{std::string(201, 'x'), "a\u200eb"};
    std::vector<CellCase> cases{
        of(SheetId::Places, "Store", "tag", {mintedTag(core::TagClass::Shelf)}, {"K00000001Z"}),
        of(SheetId::Places, "Store", "until", {"2030-01-01", ""}, {"2030-02-30"}),
        of(SheetId::Boats, "Petrel", "until", {"2030-01-01", ""}, {"2030-02-30"}),
        of(SheetId::People, "Bram Oke", "until", {"2030-01-01", ""}, {"2030-02-30"}),
        of(SheetId::Places, "Store", "note", notes, badNotes),
        of(SheetId::KitTypes, "life jacket", "worn", {"no", "yes"}, badYesNo),
        of(SheetId::KitTypes, "life jacket", "personal", yesNo, badYesNo),
        of(SheetId::KitTypes, "life jacket", "order_lead_days", counts, badCounts),
        of(SheetId::KitTypes, "life jacket", "pack", {"4", ""}, {"0", "1.5"}),
        of(SheetId::KitTypes, "life jacket", "price", amounts, badAmounts),
        of(SheetId::KitTypes, "life jacket", "spares", counts, badCounts),
        of(SheetId::KitTypes, "life jacket", "note", notes, badNotes),
        of(SheetId::Sizes, "life jacket/M", "mass_low_kg", {"", "45.5"}, {"95", "x"}),
        of(SheetId::Sizes, "life jacket/M", "mass_high_kg", {"95.5", ""}, {"45", "x"}),
        of(SheetId::Sizes, "life jacket/M", "chest_low_cm", {"", "75"}, {"125", "x"}),
        of(SheetId::Sizes, "life jacket/M", "chest_high_cm", {"125", ""}, {"70", "x"}),
        of(SheetId::Sizes, "life jacket/M", "wanted", counts, badCounts),
        of(SheetId::Sizes, "life jacket/M", "source", notes, badNotes),
        of(SheetId::LifeRules, "life jacket/yearly look", "kind", {"service_every"},
           {"stamped", "weekly", "after_event", ""}),
        of(SheetId::LifeRules, "life jacket/yearly look", "n", {"18"}, {"1.5", "0", ""}),
        of(SheetId::LifeRules, "life jacket/yearly look", "steps", {"60:9;120:3", ""}, {"60", "a:b"}),
        of(SheetId::LifeRules, "life jacket/after a blow", "event", {"bang"}, {""}),
        of(SheetId::LifeRules, "life jacket/yearly look", "severity", {"remark", ""}, {"maybe"}),
        of(SheetId::LifeRules, "life jacket/yearly look", "lead_days", counts, badCounts),
        of(SheetId::LifeRules, "life jacket/yearly look", "tolerance", {"end_of_month", "7d", "none", ""},
           {"7"}),
        of(SheetId::LifeRules, "life jacket/yearly look", "strict", yesNo, badYesNo),
        of(SheetId::LifeRules, "life jacket/yearly look", "undated", {"stop", "ignore", ""}, {"never"}),
        of(SheetId::LifeRules, "life jacket/yearly look", "source", notes, badNotes),
        of(SheetId::Boats, "Petrel", "boat_class", names, badNames),
        of(SheetId::Boats, "Petrel", "tag", {mintedTag(core::TagClass::Boat), ""},
           {"K00000001Z", "B00000001A"}),
        of(SheetId::Boats, "Petrel", "place", {"boat house", ""}, {"Nowhere"}),
        of(SheetId::Boats, "Petrel", "priority", amounts, badAmounts),
        of(SheetId::Boats, "Petrel", "check_every_days", {"9", ""}, {"0", "x"}),
        of(SheetId::Boats, "Petrel", "note", notes, badNotes),
        of(SheetId::ManifestLines, "class/inflatable/life jacket", "quantity", {"2", "0", ""},
           {"-1", "1001"}),
        of(SheetId::ManifestLines, "class/inflatable/life jacket", "required", yesNo, badYesNo),
        of(SheetId::ManifestLines, "class/inflatable/knife", "substitutes", {"radio; PADDLE", ""},
           {"life jacket", "spoon"}),
        of(SheetId::ManifestLines, "class/inflatable/knife", "note", notes, badNotes),
        of(SheetId::Points, "class/inflatable/launch/bow chamber", "kind", {"look"}, {"smell"}),
        of(SheetId::Points, "class/inflatable/launch/bow chamber", "unit", names, badNames),
        of(SheetId::Points, "class/inflatable/launch/bow chamber", "low", {"", "-2.5"}, {"30", "x"}),
        of(SheetId::Points, "class/inflatable/launch/bow chamber", "high", {"40", ""}, {"-3", "x"}),
        of(SheetId::Points, "class/inflatable/launch/bow chamber", "required", yesNo, badYesNo),
        of(SheetId::Points, "class/inflatable/launch/bow chamber", "note", notes, badNotes),
        of(SheetId::People, "Bram Oke", "tag", {mintedTag(core::TagClass::Person), ""}, {"K00000001Z"}),
        of(SheetId::People, "Bram Oke", "role", {"gear officer", ""}, {"helm"}),
        of(SheetId::People, "Bram Oke", "mass_kg", amounts, badAmounts),
        of(SheetId::People, "Bram Oke", "chest_cm", amounts, badAmounts),
        of(SheetId::People, "Bram Oke", "note", notes, badNotes),
        of(SheetId::Items, jacket, "kit_type", {"LIFE jacket"}, {"spoon", "radio"}),
        of(SheetId::Items, "KGFB6J8WF9", "kit_type", {"radio"}, {"", "spoon"}),
        of(SheetId::Items, jacket, "size", {"m", ""}, {"XXL"}),
        of(SheetId::Items, "KGFB6J8WF9", "boat", {"tern", ""}, {"Heron"}),
        of(SheetId::Items, jacket, "place", {"boat house", ""}, {"Nowhere"}),
        of(SheetId::Items, jacket, "person", {"bram oke", ""}, {"Nobody"}),
        of(SheetId::Items, jacket, "state", {"written off", "missing", "unserviceable", ""}, {"broken"}),
        of(SheetId::Items, jacket, "since", {"2026-01-02", ""}, {"2026-02-30"}),
        of(SheetId::Items, jacket, "why", {"worn", ""}, {"bored"}),
        of(SheetId::Items, jacket, "made", days, badDays),
        of(SheetId::Items, jacket, "first_use", days, badDays),
        of(SheetId::Items, jacket, "stamped", days, badDays),
        of(SheetId::Items, jacket, "registered", days, badDays),
        of(SheetId::Items, jacket, "maker", names, badNames),
        of(SheetId::Items, jacket, "gtin", {"96385074", ""}, {"96385075", "12"}),
        of(SheetId::Items, jacket, "serial", names, badNames),
        of(SheetId::Items, jacket, "batch", names, badNames),
        of(SheetId::Items, jacket, "note", notes, badNotes),
        of(SheetId::Parts, jacket + "/cylinder", "made", days, badDays),
        of(SheetId::Parts, jacket + "/cylinder", "first_use", days, badDays),
        of(SheetId::Parts, jacket + "/cylinder", "stamped", days, badDays),
        of(SheetId::Parts, jacket + "/cylinder", "serial", names, badNames),
        of(SheetId::Parts, jacket + "/cylinder", "note", notes, badNotes),
        of(SheetId::Services, jacket + "/yearly look/2026-03-14", "passed", yesNo, badYesNo),
        of(SheetId::Services, jacket + "/yearly look/2026-03-14", "by", names, badNames),
        of(SheetId::Services, jacket + "/yearly look/2026-03-14", "note", notes, badNotes),
        of(SheetId::Happenings, jacket + "/blow/2025-04-01", "note", notes, badNotes),
        of(SheetId::Use, jacket + "/2025-05-01", "hours", amounts, badAmounts),
        of(SheetId::Use, jacket + "/2025-05-01", "launches", counts, badCounts),
        of(SheetId::Log, "code/" + jacket + "/2025-06-01/zip stiff", "severity", {"stop", ""}, {"bad"}),
        of(SheetId::Log, "code/" + jacket + "/2025-06-01/zip stiff", "by", names, badNames),
        of(SheetId::Log, "code/" + jacket + "/2025-06-01/zip stiff", "closed", {"2025-06-03", ""},
           {"2025-02-30"}),
        of(SheetId::Log, "code/" + jacket + "/2025-06-01/zip stiff", "closing", notes, badNotes),
    };
    return cases;
}

/// The same cell given to two clubs that are alike: in one by a person, in the other by an import.
class TwoClubs {
public:
    void expectTheSame(const CellCase& each) {
        const CellTexts key = keyOf(each);
        for (const std::string& text : each.bad)
            expectTheSame(each, key, text, false);
        for (const std::string& text : each.good)
            expectTheSame(each, key, text, true);
    }

private:
    static core::Club copyOf(const FullClub& club) {
        const auto file = club.folder / "copy.tholepin";
        EXPECT_TRUE(core::copyClub(club.file(), file, false));
        return core::Club::open(file).value();
    }
    CellTexts keyOf(const CellCase& each) {
        std::string name = each.row;
        if (const auto at = name.find("JACKET"); at != std::string::npos)
            name.replace(at, 6, m_byHand.jacket);
        const auto row = m_byHand.club.register_().rowNamed(each.sheet, name);
        EXPECT_TRUE(row) << name << support::described(row ? core::Error{} : row.error());
        const core::Sheet& sheet = core::sheet(each.sheet);
        CellTexts key;
        for (std::size_t i = 0; i < static_cast<std::size_t>(sheet.keyColumns); ++i)
            key.emplace_back(sheet.columns[i].name, (*row)[i]);
        return key;
    }

    void expectTheSame(const CellCase& each, const CellTexts& key, const std::string& text, bool isGood) {
        SCOPED_TRACE(each.row + " " + each.column + "=" + text.substr(0, 40));
        const auto byHand = m_byHand.club.register_().write({each.sheet, {{key, {{each.column, text}}, {}}}},
                                                            {}, m_byHand.now);
        const auto imported = importCell(each, key, text);
        ASSERT_TRUE(byHand && imported);
        ASSERT_EQ(byHand->rejected.size(), imported->rejected.size());
        EXPECT_EQ(byHand->rejected.empty(), isGood);
        for (std::size_t i = 0; i < byHand->rejected.size(); ++i) {
            EXPECT_EQ(byHand->rejected[i].reason, imported->rejected[i].reason);
            EXPECT_EQ(byHand->rejected[i].column, imported->rejected[i].column);
        }
        ASSERT_EQ(byHand->changes.size(), imported->changes.size());
        for (std::size_t i = 0; i < byHand->changes.size(); ++i)
            EXPECT_EQ(core::textOf(core::rowWritten(byHand->changes[i])),
                      core::textOf(core::rowWritten(imported->changes[i])));
        for (const core::Sheet& sheet : core::allSheets())
            EXPECT_EQ(m_byHand.club.register_().rows(sheet.id), m_byImport.register_().rows(sheet.id));
    }

    core::Result<core::ImportPlan> importCell(const CellCase& each, const CellTexts& key,
                                              const std::string& text) {
        std::string header, line;
        for (const auto& [column, cell] : key) {
            header += column + ",";
            line += core::csvCell(cell) + ",";
        }
        const auto folder = m_byHand.folder / "one";
        std::filesystem::create_directories(folder);
        support::writeFile(folder / std::string(core::sheet(each.sheet).file),
                           header + each.column + "\n" + line +
                               core::csvCell(text.empty()     ? "-"
                                             : text == "=1+1" ? "'=1+1"
                                                              : text) +
                               "\n");
        const auto done = m_byImport.register_().importCsv(folder, m_byHand.now.today, false);
        std::filesystem::remove_all(folder);
        return done;
    }

    FullClub m_byHand;
    core::Club m_byImport = copyOf(m_byHand); // the same tags, which are minted by chance
};

TEST(RowCells, areWrittenAndRefusedAsAnImportDoes) {
    TwoClubs clubs;
    for (const CellCase& each : cellCases())
        clubs.expectTheSame(each);
}

TEST(RowCells, everyColumnThatIsNoKeyIsAmongTheCases) {
    const auto cases = cellCases();
    for (const core::Sheet& sheet : core::allSheets())
        for (std::size_t i = static_cast<std::size_t>(sheet.keyColumns); i < sheet.columns.size(); ++i)
            EXPECT_TRUE(std::any_of(cases.begin(), cases.end(),
                                    [&](const CellCase& each) {
                                        return each.sheet == sheet.id && each.column == sheet.columns[i].name;
                                    }))
                << sheet.file << " " << sheet.columns[i].name;
}

} // namespace
