#include "app/cli/commands/check_input.h"
#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_record.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <memory>

namespace app {
namespace {

struct EraseOptions : CommonOptions {
    std::string person;
};

int erase(const EraseOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        const auto erased = club.record().eraseMeasures(options.person, *by);
        if (!erased) return fail(erased.error());
        if (options.json)
            say(erasedJson(options.person, *erased));
        else
            sayLine(QStringLiteral("%1 of %2 erased, and the PIN if there was one. Backups and copies of the "
                                   "file still hold what was in them.")
                        .arg(counted(*erased, "%n measure", "%n measures"), text(options.person)));
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addErase(CommandLine& line) {
    auto options = std::make_shared<EraseOptions>();
    Command command = line.add("erase", "takes a person's mass and chest out of the file for good",
                               [options] { return erase(*options); });
    takeCommon(command, *options);
    command.more("The record tells that they were erased, not what they were. Backups and copies keep what "
                 "was in them.");
    command.file("PERSON", options->person, "the name, as people.csv has it");
    takeOfficer(command, *options, "who does it");
}

} // namespace app
