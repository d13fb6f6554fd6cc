#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_answers.h"
#include "core/club/club_pins.h"

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

void sayReset(const core::PinReset& reset) {
    QString line = QStringLiteral("▲ The PIN of %1 was reset on %2")
                       .arg(text(reset.person), inWords(reset.at.localDay()));
    if (!reset.by.empty()) line += QStringLiteral(" by %1").arg(text(reset.by));
    sayLine(line + QStringLiteral(": it was taken away without being given."));
}

void sayBoats(const std::vector<core::BoatCondition>& boats, const std::vector<core::PinReset>& resets,
              core::CalendarDay today) {
    for (const core::PinReset& each : resets)
        sayReset(each);
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
        const auto resets = club.pins().resets(moment.today);
        if (options.json)
            say(boatsJson(boats, resets));
        else
            sayBoats(boats, resets, moment.today);
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
