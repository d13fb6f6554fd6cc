#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"

#include "app/cli/commands/reports.h"
#include "app/cli/terminal/terminal.h"

#include <memory>

namespace app {
namespace {

struct ImportOptions : CommonOptions {
    std::string folder;
    bool dryRun = false;
};

int import(const ImportOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto plan = importWithProgress(club, options.folder, moment.today, options.dryRun);
        return plan ? reportImport(*plan, options.json, options.dryRun) : fail(plan.error());
    });
}

} // namespace

void addImport(CommandLine& line) {
    auto options = std::make_shared<ImportOptions>();
    Command command = line.add("import", "take a folder of CSV into the register: all rows or none",
                               [options] { return import(*options); });
    takeCommon(command, *options);
    command.file("DIR", options->folder, "folder of CSV files");
    command.flag("--dry-run", options->dryRun, "only say what would be imported");
}

} // namespace app
