#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_answers.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/cautions.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <algorithm>
#include <memory>

namespace app {
namespace {

using Kind = core::BoatCondition::Kind;

bool isNotReady(const core::BoatCondition& boat) {
    return boat.kind == Kind::NotReady;
}

void sayBoat(const core::BoatCondition& boat, core::CalendarDay today) {
    sayLine(QStringLiteral("  %1: %2").arg(text(boat.boat), conditionOf(boat, today)));
    if (!boat.urgent.empty())
        sayLine(QStringLiteral("      launched urgently with the kit incomplete: %1").arg(text(boat.urgent)));
    for (const core::NotReadyReason& reason : boat.reasons)
        sayLine(QStringLiteral("      ▲ %1").arg(reasonOf(reason)));
}

void sayBoats(const std::vector<core::BoatCondition>& boats, core::CalendarDay today) {
    if (boats.empty()) return sayLine(QStringLiteral("No boats yet. Import a folder of CSV to write them."));
    const auto notReady = std::count_if(boats.begin(), boats.end(), isNotReady);
    sayLine(counted(static_cast<int>(boats.size()), "%n boat, ", "%n boats, ") +
            counted(static_cast<int>(notReady), "%n not ready.", "%n not ready."));
    for (const core::BoatCondition& boat : boats)
        sayBoat(boat, today);
    sayLine(boardCaution());
}

int boats(const CommonOptions& options) {
    return withClubOn(options, core::Club::Access::ReadOnly, [&](core::Club& club, core::Moment moment) {
        const auto boats = club.answers().boatConditions(moment.today);
        if (options.json)
            say(boatsJson(boats));
        else
            sayBoats(boats, moment.today);
        const bool any = std::any_of(boats.begin(), boats.end(), isNotReady);
        return static_cast<int>(any ? ExitNeedsSomebody : ExitFine);
    });
}

} // namespace

void addBoats(CommandLine& line) {
    auto options = std::make_shared<CommonOptions>();
    Command command = line.add("boats", "which boats are kit ready, out, or not ready, and why",
                               [options] { return boats(*options); });
    takeCommon(command, *options);
    command.more("Kit ready: signed without a stop, and nothing has since become due, missing or "
                 "unserviceable. Out: a signed launch check with no return check after it.");
    command.needsSomebody("a boat is not ready");
}

} // namespace app
