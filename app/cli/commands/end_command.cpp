#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/base/error_code.h"
#include "core/club/club_register.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/register/sheets.h"

#include <memory>

namespace app {
namespace {

struct EndOptions : CommonOptions {
    std::string kind;
    std::string name;
    std::string on;
};

int end(const EndOptions& options) {
    const auto named = core::namedFrom(options.kind);
    const bool canEnd =
        named == core::Named::Boat || named == core::Named::Place || named == core::Named::Person;
    if (!canEnd)
        return failWith("nothing of this kind has a last day", options.kind, "give boat, person or place");
    const auto day = core::CalendarDay::parse(options.on);
    if (!day) return fail({core::ErrorCode::DayUnreadable, {options.on}, "--on"});
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        std::string by;
        if (!options.by.empty()) {
            const auto person = findPersonHere(club, options.by, "--by", moment.today);
            if (!person) return fail(person.error());
            by = *person;
        }
        const core::Result<std::string> done = club.register_().end(*named, options.name, *day, by, moment);
        if (!done) return fail(done.error());
        if (options.json)
            say(endedJson(options.kind, *done, *day));
        else
            sayLine(QStringLiteral("The last day of %1 is %2. The record keeps what was.")
                        .arg(text(*done), inWords(*day)));
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addEnd(CommandLine& line) {
    auto options = std::make_shared<EndOptions>();
    Command command = line.add("end", "the last day of a boat, person or place; the record keeps it",
                               [options] { return end(*options); });
    takeCommon(command, *options);
    command.more("From the next day on it is in no choice, board or plan, and stays in the record. Refused "
                 "while kit has its home there or is that person's own.");
    command.file("KIND", options->kind, "boat, person or place");
    command.offer("KIND", {"boat", "person", "place"});
    command.file("NAME", options->name, "its name");
    command.text("--on", options->on, "the last day that it is here, e.g. 2026-10-31", Need::Required);
    takeOfficer(command, *options, "who does it");
}

} // namespace app
