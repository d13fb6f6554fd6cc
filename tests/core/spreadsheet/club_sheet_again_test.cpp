// The same sheet again, after it or the register changed: what is matched, and what is new.

#include "core/exchange/club_sheet/club_sheet.h"

#include "core/base/error_code.h"
#include "tests/core/exchange/exchange_support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace core {
namespace {

using testing::ElementsAre;
using testing::UnorderedElementsAre;

class ClubSheetAgain : public testing::Test {
protected:
    ClubSheetAgain() {
        support::importInto(m_rows, {{"places.csv", "place\nStore\n"},
                                     {"boats.csv", "boat,boat_class\nHeron,Inshore\n"},
                                     {"kit_types.csv", "kit_type\nFlare\nKnife\n"}});
    }

    ImportPlan plan(const std::string& csv) {
        const auto book = readWorkbook(csv, "kit.csv");
        EXPECT_TRUE(book);
        auto read = planClubSheet(
            *book, {}, m_rows, CalendarDay::from(2026, 3, 14).value(),
            [this](core::TagClass tagClass) { return support::tagCode(tagClass, 100 + ++m_minted); });
        EXPECT_TRUE(read) << static_cast<int>(read.error().code);
        return read->plan;
    }

    /// How many rows were changed and how many are new.
    std::pair<int, int> take(const std::string& csv) {
        const ImportPlan planned = plan(csv);
        EXPECT_EQ(support::describe(planned), "");
        m_rows.apply(planned.changes);
        const auto added = std::count_if(planned.changes.begin(), planned.changes.end(),
                                         [](const RowChange& change) { return change.isNew; });
        return {static_cast<int>(planned.changes.size()) - static_cast<int>(added), static_cast<int>(added)};
    }

    std::vector<std::string> column(std::string_view name) const {
        std::vector<std::string> cells;
        for (const Cells& item : m_rows.all(SheetId::Items))
            cells.push_back(item[static_cast<std::size_t>(sheet(SheetId::Items).indexOf(name))]);
        return cells;
    }

    using Counts = std::pair<int, int>;
    support::MapRegister m_rows;
    int m_minted = 0;
};

TEST_F(ClubSheetAgain, findsAThingByItsSerialWhateverElseChanged) {
    EXPECT_EQ(take("What;Serial;Where;State\nFlare;A1;Heron;ok\nKnife;A1;Heron;ok\n"), Counts(0, 2));
    EXPECT_EQ(take("What;Serial;Where;State\nflare;a1;Store;broken\nKnife;A1;Heron;ok\n"), Counts(1, 0));
    EXPECT_THAT(column("place"), UnorderedElementsAre("Store", ""));
    EXPECT_EQ(take("What;Serial\nFlare;A2\n"), Counts(0, 1));
}

TEST_F(ClubSheetAgain, findsAThingByItsTagBeforeItsSerial) {
    take("What;Serial\nFlare;A1\n");
    const std::string code = column("code").front();
    EXPECT_EQ(take("Tag;What;Serial\n" + code + ";Flare;B7\n"), Counts(1, 0));
    EXPECT_THAT(column("serial"), ElementsAre("B7"));
}

TEST_F(ClubSheetAgain, countsEqualRowsByPosition) {
    EXPECT_EQ(take("What;Qty;Where\nFlare;2;Heron\n"), Counts(0, 2));
    EXPECT_EQ(take("What;Qty;Where\nFlare;3;Heron\n"), Counts(0, 1));
    EXPECT_EQ(take("What;Qty;Where\nFlare;1;Heron\nFlare;2;Heron\n"), Counts(0, 0));
    EXPECT_EQ(take("What;Qty;Where\nFlare;1;Heron\n"), Counts(0, 0)); // an import takes nothing away
    EXPECT_EQ(take("What;Qty;Where\nFlare;1;Store\n"), Counts(0, 1)); // another home is another thing
}

TEST_F(ClubSheetAgain, leavesAmongEqualRowsEachItsState) {
    EXPECT_EQ(take("What;Where;State\nFlare;Heron;ok\nFlare;Heron;broken\nFlare;Heron;ok\n"), Counts(0, 3));
    EXPECT_EQ(take("What;Where;State\nFlare;Heron;broken\nFlare;Heron;ok\nFlare;Heron;ok\n"), Counts(0, 0));
    EXPECT_EQ(take("What;Where;State\nFlare;Heron;broken\nFlare;Heron;lost\nFlare;Heron;ok\n"), Counts(1, 0));
    EXPECT_THAT(column("state"), UnorderedElementsAre("serviceable", "unserviceable", "missing"));
}

TEST_F(ClubSheetAgain, comparesNoColumnThatTheSheetDoesNotHave) {
    EXPECT_EQ(take("What;Where\nFlare;Heron\n"), Counts(0, 1));
    m_rows.apply({{SheetId::Items,
                   {column("code").front()},
                   {{sheet(SheetId::Items).indexOf("note"), "noted by hand"}},
                   {},
                   false}});
    EXPECT_EQ(take("What;Where\nFlare;Heron\n"), Counts(0, 0));
    EXPECT_EQ(take("What;Where;Note\nFlare;Heron;\n"), Counts(0, 1));
}

TEST_F(ClubSheetAgain, takesNoThingWithASerialForOneWithout) {
    EXPECT_EQ(take("What;Serial\nFlare;A1\n"), Counts(0, 1));
    EXPECT_EQ(take("What;Serial\nFlare;A1\nFlare;\n"), Counts(0, 1));
}

TEST_F(ClubSheetAgain, changesNothingWhenOneRowIsRefused) {
    const ImportPlan planned = plan("What;Where\nFlare;Heron\nFlare;Moon\n");
    EXPECT_TRUE(planned.changes.empty());
    ASSERT_EQ(planned.rejected.size(), 1U);
    EXPECT_EQ(planned.rejected[0].file, "kit.csv");
    EXPECT_EQ(planned.rejected[0].column, "Where");
    EXPECT_EQ(planned.rejected[0].row, 3);
    EXPECT_EQ(planned.rejected[0].cell, "B3");
}

TEST_F(ClubSheetAgain, saysOnceWhatIsWrongWithManyThingsOfOneRow) {
    EXPECT_EQ(plan("What;Qty;Made\nFlare;40;soon\n").rejected.size(), 1U);
    EXPECT_TRUE(plan("What;Qty;Made\nFlare;40;2020\n").rejected.empty());
}

TEST_F(ClubSheetAgain, namesTheItemOfAServiceByItsSerial) {
    take("What;Serial\nFlare;S-1\nFlare;S-2\nKnife;S-2\n");
    support::importInto(m_rows, {{"life_rules.csv", "kit_type,rule,kind,n,source\n"
                                                    "Flare,look,inspect_every,12,maker\n"}});
    ClubSheetChoices choices;
    choices.sheet = SheetId::Services;
    const auto planOf = [&](const std::string& row) {
        const auto book = readWorkbook("Serial no;Rule;Day\n" + row, "done.csv");
        return planClubSheet(*book, choices, m_rows, CalendarDay::from(2026, 3, 14).value(), {})->plan;
    };
    const ImportPlan good = planOf("s-1;look;2026-03-01\n");
    EXPECT_EQ(support::describe(good), "");
    ASSERT_EQ(good.changes.size(), 1U);
    const auto serials = column("serial"), codes = column("code");
    const auto at = std::find(serials.begin(), serials.end(), "S-1") - serials.begin();
    EXPECT_EQ(good.changes[0].keyCells[0], codes[static_cast<std::size_t>(at)]);
    EXPECT_EQ(planOf("S-9;look;2026-03-01\n").rejected.at(0).reason.code, ErrorCode::SerialUnknown);
    EXPECT_EQ(planOf("S-2;look;2026-03-01\n").rejected.at(0).reason.code, ErrorCode::SerialOfSeveral);
}

ErrorCode errorOfColumns(const std::string& columns, const support::MapRegister& rows) {
    ClubSheetChoices choices;
    choices.columns = columnsFrom(columns).value();
    const auto layout = layoutOf(*readWorkbook("What;Note;Remarks\nFlare;a;b\n", "kit.csv"), choices, rows);
    return layout ? ErrorCode::EndOfCodes : layout.error().code;
}

TEST_F(ClubSheetAgain, refusesColumnsThatAreNotThere) {
    EXPECT_EQ(errorOfColumns("What=kit_type", m_rows), ErrorCode::EndOfCodes);
    EXPECT_EQ(errorOfColumns("Colour=note", m_rows), ErrorCode::NoSuchHeading);
    EXPECT_EQ(errorOfColumns("Note=colour", m_rows), ErrorCode::NoSuchMeaning);
    EXPECT_EQ(errorOfColumns("Note=note,Remarks=note", m_rows), ErrorCode::MeaningTwice);
    EXPECT_EQ(errorOfColumns("What=", m_rows), ErrorCode::TableWithoutColumn);
}

TEST(WordsFrom, saysWhatAWordOfAColumnMeans) {
    const core::Sheet& items = core::sheet(core::SheetId::Items);
    const auto words = core::wordsFrom(items, " State : tip top = serviceable,maker:shed, left=Acme");
    EXPECT_FALSE(words) << "a comma ends a word";
    const auto both = core::wordsFrom(items, " State : tip top = serviceable,maker:shed=Acme");
    ASSERT_TRUE(both);
    EXPECT_EQ(*both, (std::map<std::pair<std::string, std::string>, std::string>{
                         {{"state", "tip top"}, "serviceable"}, {{"maker", "shed"}, "Acme"}}));
    EXPECT_EQ(core::wordsFrom(items, "helm=driver").error().code, ErrorCode::WordsUnreadable);
    EXPECT_EQ(core::wordsFrom(items, "state:ok").error().code, ErrorCode::WordsUnreadable);
    EXPECT_EQ(core::wordsFrom(items, "role:helm=driver").error().code, ErrorCode::NoSuchMeaning);
}

TEST(ColumnsFrom, takesACommaWithinAHeading) {
    const auto columns = columnsFrom("What=kit_type, Kept, or not = home,Price=");
    ASSERT_TRUE(columns);
    EXPECT_THAT(*columns, ElementsAre(std::pair("What", "kit_type"), std::pair("Kept, or not", "home"),
                                      std::pair("Price", "")));
    for (const char* unreadable : {"What", "What=kit_type,Note", "=note"})
        EXPECT_FALSE(columnsFrom(unreadable)) << unreadable;
}

TEST(SheetsToMake, areThoseThatANameIsEnoughFor) {
    EXPECT_THAT(sheetsToMakeFrom("kit_types,people").value(),
                ElementsAre(SheetId::KitTypes, SheetId::People));
    EXPECT_THAT(sheetsToMakeFrom("").value(), ElementsAre());
    EXPECT_FALSE(sheetsToMakeFrom("boats"));
}

} // namespace
} // namespace core
