#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_log.h"

#include "app/cli/commands/reports.h"
#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"

#include <memory>

namespace app {
namespace {

struct LogAddOptions : CommonOptions {
    std::string boat;
    std::string code;
    std::string text;
    std::string severity = "remark";
};

int logAdd(const LogAddOptions& options) {
    const auto severity = options.severity == "stop" ? core::Severity::Stop : core::Severity::Remark;
    const std::string& about = options.boat.empty() ? options.code : options.boat;
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto entry = club.log().add(about, options.text, severity, options.by, moment);
        if (!entry) return fail(entry.error());
        if (options.json)
            say(logEntryJson(*entry));
        else
            sayEntry(*entry);
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addLogAdd(CommandLine& line) {
    auto options = std::make_shared<LogAddOptions>();
    Command command = line.add("log-add", "write a remark or defect about a boat or an item",
                               [options] { return logAdd(*options); });
    takeCommon(command, *options);
    command.more("The text is words: a tag code, or fewer than three letters, is refused.");
    command.text("--boat", options->boat, "the boat it is about");
    command.text("--code", options->code, "the tag code of the item it is about");
    command.notTogether("--boat", "--code");
    command.atLeastOneOf("--boat", "--code");
    command.text("--text", options->text, "what is the matter", Need::Required);
    command.choice("--severity", options->severity, {"stop", "remark"},
                   "stop or remark; remark unless given");
    command.text("--by", options->by, "who writes it", Need::NotEmpty);
    command.text("--at", options->at, "when, if not now");
}

} // namespace app
