#include "app/text/outlook_sentences.h"
#include "app/text/register_words.h"
#include "core/answers/outlook.h"

#include <gtest/gtest.h>

namespace {

core::RuleDue dueOn(int year, int month, int day) {
    core::RuleDue due;
    due.due = core::CalendarDay::from(year, month, day);
    return due;
}

core::DueChange moved(const char* id, std::optional<core::RuleDue> before,
                      std::optional<core::RuleDue> after) {
    return {{id, id}, "knife", std::move(before), std::move(after)};
}

} // namespace

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

TEST(OutlookSentences, sayWhatABoatWillLack) {
    core::OutlookChange change;
    const auto kit = [](const char* type, int wanted, int there) {
        return core::KitAtHome{"Dabchick", type, wanted, there};
    };
    change.kit = {{"Dabchick", "knife", kit("knife", 1, 1), kit("knife", 1, 0)},
                  {"Dabchick", "paddle", kit("paddle", 2, 2), kit("paddle", 2, 1)},
                  {"Dabchick", "radio", kit("radio", 1, 0), kit("radio", 1, 1)},
                  {"Dabchick", "flare", kit("flare", 2, 0), std::nullopt}};
    EXPECT_EQ(
        app::effectsInWords(change),
        (QStringList{"Dabchick will have no knife.", "Dabchick will have 1 of the 2 it needs of: paddle.",
                     "Dabchick will have all it needs of: radio.",
                     "Dabchick will not be asked for its flare any more."}));
    EXPECT_TRUE(app::effectsInWords({}).isEmpty());
}

TEST(OutlookSentences, sayHowManyThingsFallDueEarlierAndTheFirstOfThem) {
    core::OutlookChange change;
    change.due = {moved("K1", dueOn(2028, 1, 1), dueOn(2027, 3, 1)),
                  moved("K2", dueOn(2028, 1, 1), dueOn(2027, 4, 1)),
                  moved("K3", dueOn(2027, 1, 1), dueOn(2029, 1, 1)),
                  moved("K4", std::nullopt, dueOn(2030, 1, 1)), moved("K5", dueOn(2027, 1, 1), std::nullopt)};
    EXPECT_EQ(app::effectsInWords(change),
              (QStringList{"2 things fall due earlier, the first on 1 March 2027.",
                           "1 thing falls due later, the first on 1 January 2029.",
                           "1 thing gets a day to fall due, the first on 1 January 2030.",
                           "1 thing falls due no more."}));
}
