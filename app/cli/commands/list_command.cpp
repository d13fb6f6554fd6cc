#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/paper/lists/club_lists.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <map>
#include <memory>

namespace app {
namespace {

struct ListOptions : CommonOptions {
    std::string list;
    std::string within = "90d";
    std::string out;
};

const std::map<std::string, ClubList>& lists() {
    static const std::map<std::string, ClubList> all{{"kit", ClubList::Kit},
                                                     {"missing", ClubList::Missing},
                                                     {"due", ClubList::Due},
                                                     {"log", ClubList::Log},
                                                     {"boats", ClubList::Boats}};
    return all;
}

void sayWritten(const ListOptions& options, const ListTable& table, int pages) {
    const QString on =
        pages == 0 ? QString() : QStringLiteral(" on %1").arg(counted(pages, "%n page", "%n pages"));
    sayLine(QStringLiteral("%1: %2").arg(table.title, table.summary));
    sayLine(counted(static_cast<int>(table.lines.size()), "%n row", "%n rows") + on +
            QStringLiteral(": %1").arg(text(options.out)));
    for (const QString& caution : table.cautions)
        sayLine(caution);
}

/// The number of pages; none of a CSV.
core::Result<int> write(const ListOptions& options, const ListTable& table) {
    if (options.out.ends_with(".pdf")) {
        const Painting painting;
        return writeListPdf(options.out, table);
    }
    const core::Outcome written = writeListCsv(options.out, table);
    if (!written) return written.error();
    return 0;
}

int list(const ListOptions& options) {
    const auto days = daysWithin(options.within);
    if (!days) return failOfDays(options.within);
    if (!options.out.ends_with(".pdf") && !options.out.ends_with(".csv"))
        return failWith("'" + options.out + "' is no kind of list that can be written", "--out",
                        "let its name end with .pdf or .csv");
    return withClubOn(options, core::Club::Access::ReadOnly, [&](core::Club& club, core::Moment moment) {
        const auto table = readList(club, lists().at(options.list), moment.today, *days);
        if (!table) return fail(table.error());
        const auto pages = write(options, *table);
        if (!pages) return fail(pages.error());
        if (options.json)
            say(listJson(options.list, options.out, static_cast<int>(table->lines.size())));
        else
            sayWritten(options, *table, *pages);
        return static_cast<int>(table->needsSomebody ? ExitNeedsSomebody : ExitFine);
    });
}

} // namespace

void addList(CommandLine& line) {
    auto options = std::make_shared<ListOptions>();
    Command command =
        line.add("list", "a list to print or to open as a sheet", [options] { return list(*options); });
    takeCommon(command, *options);
    command.more("A PDF to print (A4), or CSV with ISO days that no sheet runs as a formula.");
    command.needsSomebody("as missing, due and boats have it");
    std::vector<std::string> names;
    for (const auto& [name, which] : lists())
        names.push_back(name);
    command.choice("LIST", options->list, names, "which list", Need::Required);
    command.text("--within", options->within, "of the due list: how far ahead, in days");
    command.text("--out", options->out, "the file to write: .pdf or .csv", Need::Required);
}

} // namespace app
