// What somebody chooses about their spreadsheet, and a layout for somebody who has still to choose.

#include "core/exchange/club_sheet/club_sheet.h"

#include "core/base/error_code.h"
#include "tests/core/exchange/exchange_support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace core {
namespace {

using testing::Contains;
using testing::ElementsAre;

Workbook bookOf(const std::string& csv) {
    return readWorkbook(csv, "ours.csv").value();
}

ImportPlan planOf(const std::string& csv, const ClubSheetChoices& choices) {
    const support::MapRegister rows;
    auto read = planClubSheet(
        bookOf(csv), choices, rows, CalendarDay::from(2026, 3, 14).value(),
        [next = 0](core::TagClass tagClass) mutable { return support::tagCode(tagClass, ++next); });
    EXPECT_TRUE(read);
    return read->plan;
}

std::vector<std::string> meaningsOf(const TableLayout& layout) {
    std::vector<std::string> meanings;
    for (const TableColumn& column : layout.columns)
        meanings.push_back(column.meaning);
    return meanings;
}

TEST(ClubSheetWords, whatAWordMeansIsToldOnceForItsColumn) {
    const std::string csv = "Name,Role\nAnna Berg,Bow hand\nBen Carter,bow-hand\nCarla Diaz,helm\n";
    ClubSheetChoices choices{.sheet = SheetId::People};
    const ImportPlan refused = planOf(csv, choices);
    ASSERT_EQ(refused.rejected.size(), 2u);
    EXPECT_EQ(refused.rejected[0].reason.code, ErrorCode::CellNotAChoice);
    choices.words[{"role", "BOW HAND"}] = "crew";
    const ImportPlan taken = planOf(csv, choices);
    EXPECT_EQ(support::describe(taken), "");
    ASSERT_EQ(taken.changes.size(), 3u);
    const auto roleOf = [](const RowChange& change) {
        for (const auto& [column, text] : change.set)
            if (sheet(SheetId::People).columns[static_cast<std::size_t>(column)].name == "role") return text;
        return std::string();
    };
    EXPECT_EQ(roleOf(taken.changes[0]), "crew");
    EXPECT_EQ(roleOf(taken.changes[1]), "crew");
    EXPECT_EQ(roleOf(taken.changes[2]), "driver") << "known without being told";
}

TEST(ClubSheetWords, whatIsToldIsLookedAtAsAnythingElse) {
    ClubSheetChoices choices{.sheet = SheetId::People, .words = {{{"role", "bow hand"}, "admiral"}}};
    const ImportPlan plan = planOf("Name,Role\nAnna Berg,bow hand\n", choices);
    ASSERT_EQ(plan.rejected.size(), 1u);
    EXPECT_EQ(plan.rejected[0].reason.code, ErrorCode::CellNotAChoice);
    choices.words = {{{"note", "bow hand"}, "crew"}};
    EXPECT_EQ(planOf("Name,Role\nAnna Berg,bow hand\n", choices).rejected.size(), 1u) << "of another column";
}

TEST(LayoutToChooseFrom, isThereWhereNothingIsKnown) {
    const Workbook book = bookOf("Ding,Farbe\nMesser,rot\n");
    const support::MapRegister rows;
    EXPECT_FALSE(layoutOf(book, {}, rows));
    const auto layout = layoutToChooseFrom(book, {}, rows);
    ASSERT_TRUE(layout);
    EXPECT_EQ(layout->headingRow, 1);
    EXPECT_THAT(meaningsOf(*layout), ElementsAre("", ""));
    EXPECT_EQ(layout->columns[0].heading, "Ding");
    // Once a meaning is chosen, both say the same.
    const ClubSheetChoices chosen{.columns = {{"Ding", "kit_type"}}};
    EXPECT_THAT(meaningsOf(*layoutOf(book, chosen, rows)), ElementsAre("kit_type", ""));
    EXPECT_THAT(meaningsOf(*layoutToChooseFrom(book, chosen, rows)), ElementsAre("kit_type", ""));
}

TEST(LayoutToChooseFrom, isThereWhereTheColumnIsMissingThatSaysWhatARowIs) {
    const Workbook book = bookOf("Serial,Note\nA-1,red\n");
    const support::MapRegister rows;
    EXPECT_EQ(layoutOf(book, {}, rows).error().code, ErrorCode::TableWithoutColumn);
    EXPECT_THAT(meaningsOf(*layoutToChooseFrom(book, {}, rows)), ElementsAre("serial", "note"));
    EXPECT_EQ(layoutToChooseFrom(book, {.table = "no such sheet"}, rows).error().code,
              ErrorCode::NoSuchTable);
}

TEST(MeaningsToChooseFrom, areTheColumnsOfTheSheet) {
    EXPECT_THAT(meaningsToChooseFrom(SheetId::People),
                ElementsAre("person", "tag", "role", "mass_kg", "chest_cm", "until", "note"));
    EXPECT_THAT(meaningsToChooseFrom(SheetId::Items), Contains("home"));
    EXPECT_THAT(meaningsToChooseFrom(SheetId::Items), Contains("quantity"));
}

} // namespace
} // namespace core
