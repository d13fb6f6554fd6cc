#include "core/register/sheets.h"

#include <gmock/gmock.h>
#include <set>

namespace {

using core::SheetId;

std::string columnsOf(const core::Sheet& sheet) {
    std::string columns;
    for (const core::Column& column : sheet.columns)
        columns.append(columns.empty() ? "" : " ").append(column.name);
    return columns;
}

// Design, the register as CSV: the table of files and columns.
TEST(Sheets, filesAndColumnsAreTheContracts) {
    const std::vector<std::pair<std::string, std::string>> contract{
        {"places.csv", "place tag until note"},
        {"kit_types.csv", "kit_type worn personal order_lead_days pack price spares note"},
        {"sizes.csv", "kit_type size mass_low_kg mass_high_kg chest_low_cm chest_high_cm wanted source"},
        {"life_rules.csv",
         "kit_type part rule kind n steps event severity lead_days tolerance strict undated source"},
        {"boats.csv", "boat boat_class tag place priority check_every_days until note"},
        {"manifest_lines.csv", "boat_class boat kit_type quantity required substitutes note"},
        {"points.csv", "boat_class boat phase point kind unit low high required note"},
        {"people.csv", "person tag role mass_kg chest_cm until note"},
        {"items.csv",
         "code kit_type size boat place person state since why made first_use stamped registered maker "
         "gtin serial batch note"},
        {"parts.csv", "code part made first_use stamped serial note"},
        {"services.csv", "code part rule day passed by note"},
        {"happenings.csv", "code event day note"},
        {"use.csv", "code day hours launches"},
        {"log.csv", "boat code day text severity by closed closing"},
    };
    ASSERT_EQ(core::allSheets().size(), contract.size());
    for (std::size_t i = 0; i < contract.size(); ++i) {
        const core::Sheet& sheet = core::allSheets()[i];
        EXPECT_EQ(static_cast<std::size_t>(sheet.id), i);
        EXPECT_EQ(sheet.file, contract[i].first);
        EXPECT_EQ(columnsOf(sheet), contract[i].second);
    }
}

TEST(Sheets, defaultsAreTheContracts) {
    const auto byDefault = [](SheetId id, std::string_view column) {
        const core::Sheet& sheet = core::sheet(id);
        return sheet.columns[static_cast<std::size_t>(sheet.indexOf(column))].byDefault;
    };
    EXPECT_EQ(byDefault(SheetId::KitTypes, "worn"), "no");
    EXPECT_EQ(byDefault(SheetId::KitTypes, "pack"), "1");
    EXPECT_EQ(byDefault(SheetId::LifeRules, "severity"), "stop");
    EXPECT_EQ(byDefault(SheetId::LifeRules, "lead_days"), "30");
    EXPECT_EQ(byDefault(SheetId::LifeRules, "undated"), "remark");
    EXPECT_EQ(byDefault(SheetId::ManifestLines, "required"), "yes");
    EXPECT_EQ(byDefault(SheetId::Points, "required"), "yes");
    EXPECT_EQ(byDefault(SheetId::Items, "state"), "serviceable");
    EXPECT_EQ(byDefault(SheetId::Services, "passed"), "yes");
    EXPECT_EQ(byDefault(SheetId::Log, "severity"), "remark");
}

TEST(Sheets, filesTablesAndColumnsAreFoundByName) {
    for (const core::Sheet& sheet : core::allSheets()) {
        EXPECT_EQ(core::sheetOfFile(sheet.file), &sheet);
        EXPECT_EQ(core::sheetOfTable(sheet.table), &sheet);
        EXPECT_EQ(sheet.indexOf(sheet.columns.back().name), static_cast<int>(sheet.columns.size()) - 1);
        EXPECT_EQ(sheet.indexOf("colour"), -1);
    }
    EXPECT_EQ(core::sheetOfFile("kit.csv"), nullptr);
    EXPECT_EQ(core::sheetOfTable("kit"), nullptr);
}

TEST(Sheets, keysJoinTheFoldedKeyCells) {
    const core::Sheet& rules = core::sheet(SheetId::LifeRules);
    core::Cells cells(rules.columns.size());
    cells[0] = "Life Jacket";
    cells[2] = "Yearly Look";
    EXPECT_EQ(core::keyOf(rules, cells), "life jacket\x1F\x1Fyearly look");
}

TEST(Sheets, keysHaveTheColumnsThatNameARow) {
    const std::vector<int> keyColumns{1, 1, 2, 3, 1, 3, 4, 1, 1, 2, 4, 3, 2, 4};
    for (std::size_t i = 0; i < keyColumns.size(); ++i)
        EXPECT_EQ(core::allSheets()[i].keyColumns, keyColumns[i]) << core::allSheets()[i].file;
}

} // namespace
