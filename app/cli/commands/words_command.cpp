#include "app/cli/commands/check_input.h"
#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_register.h"
#include "core/register/sheets.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/text.h"

#include <algorithm>
#include <memory>

namespace app {
namespace {

struct WordsOptions : CommonOptions {
    std::vector<std::string> forget;
};

/// `helm`, `role:helm` or `people.role:helm`. What stands before a colon and is no column is of the word.
core::ToldWordWanted wantedFrom(const std::string& given) {
    const auto colon = given.find(':');
    if (colon == std::string::npos) return {given};
    std::string column = core::foldName(given.substr(0, colon));
    std::optional<core::SheetId> of;
    if (const auto stop = column.find('.'); stop != std::string::npos) {
        const core::Sheet* sheet = core::sheetOfName(column.substr(0, stop));
        if (sheet == nullptr) return {given};
        of = sheet->id;
        column.erase(0, stop + 1);
    }
    const auto sheets = core::allSheets();
    const bool isColumn = std::any_of(sheets.begin(), sheets.end(), [&](const core::Sheet& sheet) {
        return (!of || *of == sheet.id) && sheet.indexOf(column) >= 0;
    });
    if (!isColumn) return {given};
    return {given.substr(colon + 1), column, of};
}

void sayWords(const std::vector<core::ToldWord>& words) {
    std::vector<QStringList> table;
    for (const core::ToldWord& word : words) {
        const std::string_view rows = core::sheet(word.sheet).name();
        table.push_back({text(std::string(rows)), text(word.column), text(word.word),
                         word.means.empty() ? QStringLiteral("nothing") : text(word.means)});
    }
    sayText(tableOf({QStringLiteral("rows of"), QStringLiteral("column"), QStringLiteral("word"),
                     QStringLiteral("means")},
                    table));
}

int list(core::Club& club, const WordsOptions& options) {
    const auto words = club.register_().toldWords();
    if (options.json)
        say(wordsJson(words, {}));
    else if (words.empty())
        sayLine(QStringLiteral("The club was not told what words mean yet."));
    else
        sayWords(words);
    return ExitFine;
}

int forget(core::Club& club, const WordsOptions& options, const std::string& by) {
    std::vector<core::ToldWordWanted> wanted;
    for (const std::string& each : options.forget)
        wanted.push_back(wantedFrom(each));
    const auto forgotten = club.register_().forgetWords(wanted, by);
    if (!forgotten) return fail(forgotten.error());
    if (options.json) {
        say(wordsJson(club.register_().toldWords(), *forgotten));
    } else {
        sayLine(QStringLiteral("Forgotten: the next import asks again."));
        sayWords(*forgotten);
    }
    return ExitFine;
}

int words(const WordsOptions& options) {
    const bool isToWrite = !options.forget.empty();
    const auto access = isToWrite ? core::Club::Access::ReadWrite : core::Club::Access::ReadOnly;
    return withClubOn(options, access, [&](core::Club& club, core::Moment moment) {
        if (!isToWrite) return list(club, options);
        const auto by = byWhom(club, options.by, moment.today);
        return by ? forget(club, options, *by) : fail(by.error());
    });
}

} // namespace

void addWords(CommandLine& line) {
    auto options = std::make_shared<WordsOptions>();
    Command command = line.add("words", "what words of the club's spreadsheets were said to mean",
                               [options] { return words(*options); });
    takeCommon(command, *options);
    command.more("`import --words` and the window's import tell the club what its words mean, and the next "
                 "import knows them. A word that is forgotten is asked again.");
    command.repeated("--forget", options->forget,
                     "a word to forget, wherever it was told; `role:helm` or `people.role:helm` of that "
                     "column alone");
    takeOfficer(command, *options, "who does it");
}

} // namespace app
