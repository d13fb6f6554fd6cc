#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"

#include "app/cli/commands/reports.h"
#include "app/cli/terminal/terminal.h"

#include <filesystem>
#include <memory>

namespace app {
namespace {

struct ImportOptions : CommonOptions {
    std::string source; ///< a folder of CSV, or a spreadsheet
    bool dryRun = false;
    // Of a spreadsheet alone
    std::string as, columns, days, make, sheet, words;
};

core::Result<core::ClubSheetChoices> choicesOf(const ImportOptions& options) {
    auto columns = core::columnsFrom(options.columns);
    if (!columns) return columns.error();
    auto make = core::sheetsToMakeFrom(options.make);
    if (!make) return make.error();
    core::ClubSheetChoices choices;
    choices.sheet = core::sheetOfName(options.as)->id;
    choices.table = options.sheet;
    choices.columns = std::move(columns).value();
    choices.make = std::move(make).value();
    auto words = core::wordsFrom(core::sheet(choices.sheet), options.words);
    if (!words) return words.error();
    choices.words = std::move(words).value();
    if (!options.days.empty())
        choices.days = options.days == "dmy" ? core::DayOrder::DayFirst : core::DayOrder::MonthFirst;
    return choices;
}

int importSheet(const ImportOptions& options) {
    const auto choices = choicesOf(options);
    if (!choices) return fail(choices.error());
    const auto workbook = core::readWorkbook(std::filesystem::path(options.source));
    if (!workbook) return fail(workbook.error());
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto read = importSheetWithProgress(club, *workbook, *choices, moment.today, options.dryRun);
        return read ? reportClubSheet(*read, options.json, options.dryRun) : fail(read.error());
    });
}

int importFolder(const ImportOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto plan = importWithProgress(club, options.source, moment.today, options.dryRun);
        return plan ? reportImport(*plan, options.json, options.dryRun) : fail(plan.error());
    });
}

int import(const ImportOptions& options) {
    if (!options.as.empty()) return importSheet(options);
    const bool saysMore =
        !(options.columns + options.days + options.make + options.sheet + options.words).empty();
    std::error_code failure;
    if (saysMore || std::filesystem::is_regular_file(options.source, failure))
        return failWith("a spreadsheet needs to be told what its rows are", options.source,
                        "say it with --as, as in --as items");
    return importFolder(options);
}

} // namespace

void addImport(CommandLine& line) {
    auto options = std::make_shared<ImportOptions>();
    Command command =
        line.add("import", "take a folder of CSV, or a spreadsheet, into the register: all rows or none",
                 [options] { return import(*options); });
    takeCommon(command, *options);
    command.more("All or nothing; each rejected row is told with file, row and column. A spreadsheet in the "
                 "club's own shape is taken with --as.");
    command.file("SOURCE", options->source,
                 "folder of CSV files; with --as, a .xlsx, .ods, .csv or .tsv file");
    command.flag("--dry-run", options->dryRun, "only say what would be imported");
    takeOfficer(command, *options, "the gear officer whose PIN is given");
    command.choice("--as", options->as, sheetNames(), "what the rows of the spreadsheet are");
    command.text("--sheet", options->sheet, "which sheet of the spreadsheet");
    command.text("--columns", options->columns,
                 "what columns mean, as \"Heading=column,…\"; \"Heading=\" leaves one out");
    command.text("--words", options->words,
                 "what words mean, as \"column:word=meaning,…\"; role:helm=driver");
    command.choice("--days", options->days, {"dmy", "mdy"}, "order of day and month in numbers");
    command.text("--make", options->make, "make what is missing: kit_types,sizes,places,people");
}

} // namespace app
