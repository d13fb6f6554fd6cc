#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_register.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/text.h"

#include <memory>

namespace app {
namespace {

struct ExportOptions : CommonOptions {
    std::string folder;
    std::vector<std::string> measuresOf;
};

int exportRegister(const ExportOptions& options) {
    return withClub(options, core::Club::Access::ReadOnly, [&](core::Club& club) {
        const core::Outcome done = club.register_().exportCsv(options.folder, options.measuresOf);
        if (!done) return fail(done.error());
        if (options.json)
            say(fileJson(options.folder));
        else
            sayLine(QStringLiteral("The register is in %1.").arg(text(options.folder)));
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addExport(CommandLine& line) {
    auto options = std::make_shared<ExportOptions>();
    Command command = line.add("export", "write the register as a folder of CSV",
                               [options] { return exportRegister(*options); });
    takeCommon(command, *options);
    command.more(
        "The same files that import takes. Measures of people are written only for those who are named.");
    command.file("DIR", options->folder, "folder for the CSV files");
    command.repeated("--measures-of", options->measuresOf, "a person whose mass and chest are written too");
}

} // namespace app
