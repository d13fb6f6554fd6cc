#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_record.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/json/pin_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <memory>

namespace app {
namespace {

struct MachineOptions : CommonOptions {
    std::string name;
};

void sayMachine(const core::ThisMachine& here) {
    if (here.machine.empty())
        return sayLine(
            QStringLiteral("Nothing was written here yet: a machine begins with what is written next."));
    sayLine(QStringLiteral("%1 %2: %3")
                .arg(text(here.machine), text(here.name),
                     counted(static_cast<int>(here.facts), "%n fact", "%n facts")));
}

int machine(const MachineOptions& options) {
    const auto access = options.name.empty() ? core::Club::Access::ReadOnly : core::Club::Access::ReadWrite;
    return withClubOn(options, access, [&](core::Club& club, core::Moment moment) {
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        if (!options.name.empty())
            if (const auto named = club.record().nameMachine(options.name, *by); !named)
                return fail(named.error());
        const core::ThisMachine here = club.record().thisMachine();
        if (options.json)
            say(machineJson(here));
        else
            sayMachine(here);
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addMachine(CommandLine& line) {
    auto options = std::make_shared<MachineOptions>();
    Command command = line.add("machine", "which machine writes here, and what it is called",
                               [options] { return machine(*options); });
    takeCommon(command, *options);
    command.text("--name", options->name, "what it is called from now on", Need::NotEmpty);
    takeOfficer(command, *options, "who names it");
}

} // namespace app
