#include "app/text/register_words.h"

#include <gtest/gtest.h>

TEST(RegisterWords, everyColumnAndChoiceOfEverySheetHasWords) {
    for (const core::Sheet& sheet : core::allSheets())
        for (const core::Column& column : sheet.columns) {
            const QString word = app::columnInWords(sheet.id, column.name);
            EXPECT_FALSE(word.isEmpty() || word.contains('_')) << sheet.file << " " << column.name;
            for (const std::string_view choice : column.choices)
                EXPECT_FALSE(app::choiceInWords(column, std::string(choice)).contains('_'))
                    << column.name << " " << choice;
        }
    EXPECT_EQ(app::columnInWords(core::SheetId::Boats, "no_such_column"), "no_such_column");
}
