#include "app/cli/commands/command.h"

#include "app/cli/commands/commands.h"
#include "core/base/error_code.h"
#include "core/club/club_events.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/json/record_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <memory>

namespace app {
namespace {

struct EventOptions : CommonOptions {
    std::string name; ///< empty: only say which holds; "-": end it
    std::string until;
};

int sayHeld(const EventOptions& options, const std::optional<core::HeldEvent>& held,
            core::CalendarDay today) {
    if (options.json) {
        say(eventJson(held));
    } else if (!held) {
        sayLine(QStringLiteral("No event holds."));
    } else {
        sayLine(QStringLiteral("“%1” holds until %2: each check that is opened is of it.")
                    .arg(text(held->event), inWords(held->until, today)));
    }
    return ExitFine;
}

int begin(core::Club& club, const EventOptions& options, const std::string& by, core::Moment moment) {
    std::optional<core::Instant> until;
    if (!options.until.empty()) {
        until = core::Instant::parse(options.until);
        if (!until) return fail({core::ErrorCode::InstantUnreadable, {options.until}, "--until"});
    }
    const auto begun = club.events().begin(options.name, until, by, moment);
    if (!begun) return fail(begun.error());
    return sayHeld(options, *begun, moment.today);
}

int event(const EventOptions& options) {
    const bool isToWrite = !options.name.empty();
    if (!isToWrite && !options.until.empty())
        return failWith("no event is named that would hold until then", "--until", "give its name before it");
    const auto access = isToWrite ? core::Club::Access::ReadWrite : core::Club::Access::ReadOnly;
    return withClubOn(options, access, [&](core::Club& club, core::Moment moment) {
        if (!isToWrite) return sayHeld(options, club.events().held(moment.at), moment.today);
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        if (options.name != "-") return begin(club, options, *by, moment);
        const auto ended = club.events().end(*by, moment);
        if (!ended) return fail(ended.error());
        return sayHeld(options, {}, moment.today);
    });
}

} // namespace

void addEvent(CommandLine& line) {
    auto options = std::make_shared<EventOptions>();
    Command command = line.add("event", "the patrol, training day or carnival that checks opened now are of",
                               [options] { return event(*options); });
    takeCommon(command, *options);
    command.more("From now on each check that is opened is of it, until the end of the day or --until.");
    command.text("NAME", options->name,
                 "the event that begins; - ends the one that holds; without it, which holds");
    command.text("--until", options->until, "the instant at which it is over (the end of today)",
                 Need::NotEmpty);
    command.text("--by", options->by, "who begins or ends it", Need::NotEmpty);
    command.text("--at", options->at, "the instant of it, e.g. 2026-03-14T06:40:00Z");
}

} // namespace app
