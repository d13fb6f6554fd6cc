#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_log.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/text.h"

#include <memory>

namespace app {
namespace {

struct LogCloseOptions : CommonOptions {
    std::string entry;
    std::string closing;
};

int logClose(const LogCloseOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const core::Outcome done = club.log().close(options.entry, options.closing, options.by, moment);
        if (!done) return fail(done.error());
        if (options.json)
            say(closedJson(options.entry));
        else
            sayLine(QStringLiteral("Log entry %1 is closed.").arg(text(options.entry)));
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addLogClose(CommandLine& line) {
    auto options = std::make_shared<LogCloseOptions>();
    Command command = line.add("log-close", "say what was done about a log entry",
                               [options] { return logClose(*options); });
    takeCommon(command, *options);
    command.file("ENTRY", options->entry, "the entry's short id, as `log` shows it");
    command.text("--closing", options->closing, "what was done about it", Need::Required);
    command.text("--by", options->by, "who closes it", Need::NotEmpty);
    command.text("--at", options->at, "when, if not now");
}

} // namespace app
