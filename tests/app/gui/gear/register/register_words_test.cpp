#include "app/text/contract_words.h"
#include "app/text/errors.h"
#include "app/text/register_words.h"
#include "core/base/error_code.h"
#include "core/register/cell_values.h"

#include <gtest/gtest.h>

namespace {

/// With what a cell that is typed may hold.
std::vector<std::string> choicesOf(const core::Column& column) {
    std::vector<std::string> choices(column.choices.begin(), column.choices.end());
    choices.emplace_back(column.byDefault);
    if (column.type == core::CellType::Tolerance)
        choices.insert(choices.end(), {"none", "end_of_month", "14d"});
    return choices;
}

} // namespace

TEST(RegisterWords, everyColumnAndChoiceOfEverySheetHasWords) {
    for (const core::Sheet& sheet : core::allSheets())
        for (const core::Column& column : sheet.columns) {
            const QString word = app::columnInWords(sheet.id, column.name);
            EXPECT_FALSE(word.isEmpty() || word.contains('_')) << sheet.file << " " << column.name;
            EXPECT_FALSE(app::hintOf(sheet.id, column.name).contains('_')) << column.name;
            for (const std::string& choice : choicesOf(column))
                EXPECT_FALSE(app::choiceInWords(column, choice).contains('_'))
                    << column.name << " " << choice;
        }
    EXPECT_EQ(app::columnInWords(core::SheetId::Boats, "no_such_column"), "no_such_column");
}

TEST(RegisterWords, aToleranceOfDaysIsSaidInDays) {
    const core::Sheet& rules = core::sheet(core::SheetId::LifeRules);
    const core::Column& column = rules.columns[static_cast<std::size_t>(rules.indexOf("tolerance"))];
    EXPECT_EQ(app::choiceInWords(column, "14d"), "14 days");
    EXPECT_EQ(app::choiceInWords(column, "1d"), "1 day");
    EXPECT_EQ(app::choiceInWords(column, "two weeks"), "two weeks");
}

TEST(RegisterWords, aRefusalInAFormHasTheFormsWords) {
    using core::ErrorCode;
    const auto said = [](const core::Error& error) {
        return app::inWordsOfForms(app::rejectionInWords(error)).toStdString();
    };
    EXPECT_EQ(said({ErrorCode::RangeReversed, {"mass_low_kg", "90", "mass_high_kg", "50"}}),
              "weight from 90 is above weight to 50: exchange or correct them");
    EXPECT_EQ(said({ErrorCode::RuleNeedsNumber, {"inspect_every"}}),
              "a rule of kind “inspect” needs a number above 0");
    EXPECT_EQ(
        said({ErrorCode::ReferredSizeMissing, {"XS", "life jacket"}}),
        "no size 'XS' of kit type 'life jacket' in sizes or in the club file: correct it or add it there");
    EXPECT_EQ(said({ErrorCode::SubstituteDisagrees, {"first_use", "knife", "worn"}}),
              "'first_use' and 'knife' do not agree in worn: a substitute must, so choose another")
        << "what was typed stays";
    EXPECT_EQ(app::inWordsOfForms("a_word that no column has"), "a_word that no column has");
}
