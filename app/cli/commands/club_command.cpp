#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_register.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/text.h"

#include <memory>

namespace app {
namespace {

struct ClubOptions : CommonOptions {
    std::string name;
};

int club(const ClubOptions& options) {
    const auto access = options.name.empty() ? core::Club::Access::ReadOnly : core::Club::Access::ReadWrite;
    return withClubOn(options, access, [&](core::Club& club, core::Moment moment) {
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        if (!options.name.empty())
            if (const auto named = club.register_().nameClub(options.name, *by); !named)
                return fail(named.error());
        if (options.json)
            say(clubJson(club.name()));
        else
            sayLine(text(club.name()));
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addClub(CommandLine& line) {
    auto options = std::make_shared<ClubOptions>();
    Command command = line.add("club", "what the club is called", [options] { return club(*options); });
    takeCommon(command, *options);
    command.more("What is shown and printed from then on bears it. Whose file it is does not depend on it.");
    command.text("--name", options->name, "what it is called from now on", Need::NotEmpty);
    takeOfficer(command, *options, "who names it");
}

} // namespace app
