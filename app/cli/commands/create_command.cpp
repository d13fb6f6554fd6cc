#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"

#include "app/cli/commands/reports.h"
#include "app/cli/json/json_out.h"
#include "app/cli/terminal/progress.h"
#include "app/cli/terminal/terminal.h"
#include "app/starters/starters.h"
#include "app/text/text.h"

#include <QTemporaryDir>

#include <filesystem>
#include <memory>

namespace app {
namespace {

struct CreateOptions : CommonOptions {
    std::string club;
    std::string from;
    std::string starter;
};

/// A club whose register was refused is no club yet: there is no file.
int createFrom(const CreateOptions& options, const std::string& folder, core::CalendarDay today) {
    Progress progress(QStringLiteral("import"));
    auto plan = core::Club::createFrom(options.file, options.club, folder, today,
                                       [&](int done, int of) { progress.show(done, of); });
    if (!plan) return fail(plan.error());
    if (plan->rejected.empty()) noteMade();
    if (!options.starter.empty()) plan->warnings.clear(); // its boats and kit are the club's to write
    return reportImport(*plan, options.json, false);
}

int createFromStarter(const CreateOptions& options, core::CalendarDay today) {
    const QTemporaryDir folder;
    if (!writeStarter(QString::fromStdString(options.starter), folder.path()))
        return failWith("there is no such starter", options.starter, "`tholepinctl starters` lists them");
    return createFrom(options, folder.path().toStdString(), today);
}

int create(const CreateOptions& options) {
    const auto moment = momentOf(options);
    if (!moment) return fail(moment.error());
    if (!options.from.empty() && !options.starter.empty())
        return failWith("a club begins with one register", options.starter, "give --from or --starter");
    if (!options.from.empty() && !std::filesystem::is_directory(options.from))
        return failWith("there is no folder of CSV files", options.from, "look at the path");
    if (!options.from.empty()) return createFrom(options, options.from, moment->today);
    if (!options.starter.empty()) return createFromStarter(options, moment->today);
    const core::Result<core::Club> club = core::Club::create(options.file, options.club);
    if (!club) return fail(club.error());
    noteMade();
    if (options.json)
        say(importJson({}));
    else
        sayLine(QStringLiteral("The club file %1 is ready. Import a folder of CSV to fill it.")
                    .arg(text(options.file)));
    return ExitFine;
}

} // namespace

void addCreate(CommandLine& line) {
    auto options = std::make_shared<CreateOptions>();
    Command command = line.add("create", "make a new club file, filled from a folder of CSV if you name one",
                               [options] { return create(*options); });
    takeCommon(command, *options);
    command.more("Refuses a file that exists. All of it or nothing: killed, it can be given again.");
    command.text("--club", options->club, "the club's name", Need::Required);
    command.text("--from", options->from, "folder of CSV files");
    command.text("--starter", options->starter, "an example register, see `starters`", Need::NotEmpty);
}

} // namespace app
