#include "core/club/club_copy.h"
#include "core/exchange/csv_text.h"
#include "core/tag/tag_code.h"
#include "tests/core/store/full_club.h"

#include <gmock/gmock.h>

namespace {

using core::CellTexts;
using core::SheetId;
using support::FullClub;

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
