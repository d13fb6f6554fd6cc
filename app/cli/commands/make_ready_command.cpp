#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_plans.h"

#include "app/cli/json/plan_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/cautions.h"
#include "app/text/make_ready_sentences.h"
#include "app/text/words.h"

#include <algorithm>
#include <memory>

namespace app {
namespace {

struct MakeReadyOptions : CommonOptions {
    core::MakeReadyQuestion question;
};

bool isComplete(const core::BoatPlan& plan) {
    return plan.complete;
}

bool isSameTrip(const core::KitMove& a, const core::KitMove& b) {
    return a.from == b.from && a.to == b.to;
}

void sayMoves(const core::MakeReadyPlan& plan) {
    if (plan.moves.empty()) return sayLine(QStringLiteral("Nothing has to be carried."));
    sayLine(counted(static_cast<int>(plan.moves.size()), "%n move", "%n moves") +
            counted(plan.goals.trips, " on %n trip:", " on %n trips:"));
    for (std::size_t i = 0; i < plan.moves.size(); ++i) {
        if (i == 0 || !isSameTrip(plan.moves[i - 1], plan.moves[i]))
            sayLine(QStringLiteral("  ") + tripInWords(plan.moves[i]));
        sayLine(QStringLiteral("    [ ] ") + moveInWords(plan.moves[i]));
    }
}

void sayLeftOut(const core::MakeReadyPlan& plan) {
    if (!plan.boatsOut.empty())
        sayLine(QStringLiteral("Out, so neither planned nor is their kit on hand: %1.")
                    .arg(listed(plan.boatsOut)));
    if (!plan.notPlaced.empty())
        sayLine(counted(
            static_cast<int>(plan.notPlaced.size()),
            "%n item is not planned: it was never seen, and its home is no boat or place that is here.",
            "%n items are not planned: they were never seen, and their home is no boat or place that is "
            "here."));
}

void sayPlan(const core::MakeReadyPlan& plan) {
    if (plan.boats.empty()) {
        sayLine(QStringLiteral("No boat is in to be made ready."));
        return sayLeftOut(plan);
    }
    const auto complete = std::ranges::count_if(
        plan.boats, [](const core::BoatPlan& boat) { return boat.complete && !boat.asksNothing; });
    sayLine(QStringLiteral("%1 of %2 can be made complete.")
                .arg(complete)
                .arg(counted(static_cast<int>(plan.boats.size()), "%n boat", "%n boats")));
    for (const core::BoatPlan& boat : plan.boats)
        sayLine(QStringLiteral("  ") + boatInWords(boat));
    sayMoves(plan);
    sayLeftOut(plan);
    sayLine(proofInWords(plan));
    sayLine(makeReadyCaution());
    sayLine(whoPrevails());
}

int makeReady(const MakeReadyOptions& options) {
    return withClubOn(options, core::Club::Access::ReadOnly, [&](core::Club& club, core::Moment moment) {
        const auto plan = club.plans().makeReady(options.question, moment.today);
        if (!plan) return fail(plan.error());
        if (options.json)
            say(makeReadyJson(*plan));
        else
            sayPlan(*plan);
        const bool all = std::all_of(plan->boats.begin(), plan->boats.end(), isComplete);
        const bool noneIsIn = plan->boats.empty() && !options.question.boats.empty();
        return static_cast<int>(all && !noneIsIn ? ExitFine : ExitNeedsSomebody);
    });
}

} // namespace

void addMakeReady(CommandLine& line) {
    auto options = std::make_shared<MakeReadyOptions>();
    Command command =
        line.add("make-ready", "which boats can be made complete with the kit on hand, and by which moves",
                 [options] { return makeReady(*options); });
    takeCommon(command, *options);
    command.more("Boats that are not planned keep their kit. A plan that is proven cannot be bettered.");
    command.needsSomebody("a boat is left out, or none that was asked for is in");
    command.several("--place", options->question.places,
                    "only kit at these places and aboard the planned boats");
    command.several("--boats", options->question.boats, "only these boats; the others keep their kit");
    command.number("--seconds", options->question.seconds, 0.1, 86400,
                   "how long it may look for the best plan");
}

} // namespace app
