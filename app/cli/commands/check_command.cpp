#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_checks.h"
#include "core/club/club_events.h"
#include "core/club/club_register.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/commands/check_run.h"
#include "app/cli/commands/let_go.h"
#include "app/cli/commands/picture_reading.h"
#include "app/cli/commands/reports.h"
#include "app/cli/terminal/terminal.h"

#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/register/sheets.h"
#include "core/tag/reason.h"
#include "core/tag/tag_code.h"

#include <algorithm>
#include <fstream>
#include <memory>

namespace app {
namespace {

using core::Result;

struct CheckOptions : CommonOptions {
    std::string signerPin; ///< file of the PIN of the signer
    std::string boat;
    std::string phase;
    std::string driver;
    std::vector<std::string> crew;
    std::vector<std::string> from;
    std::string codes;
    std::string points;
    std::string signer;
    std::string urgent;
    std::string event;
    std::string discard;
    TripOptions trip;
};

/// By name, or by the boat's tag.
Result<std::string> findBoat(const core::Club& club, const std::string& asked) {
    const Result<core::Boat> boat = club.register_().boat(asked);
    if (boat) return boat->name;
    if (const auto code = core::TagCode::parse(asked))
        if (const auto tagged = club.register_().boatOfTag(code->text())) return tagged->name;
    return boat.error();
}

/// Driver first; somebody named twice is on board once.
Result<std::vector<std::string>> findPeople(const std::vector<core::Person>& known,
                                            const CheckOptions& options, const MayBe& mayBe) {
    std::vector<std::string> onBoard;
    const auto add = [&](const std::string& asked, const char* option) -> core::Outcome {
        const Result<std::string> person = findPerson(known, asked, option, mayBe);
        if (!person) return person.error();
        if (std::find(onBoard.begin(), onBoard.end(), *person) == onBoard.end()) onBoard.push_back(*person);
        return core::Done{};
    };
    if (!options.driver.empty())
        if (const core::Outcome added = add(options.driver, "--driver"); !added) return added.error();
    for (const std::string& each : options.crew)
        if (const core::Outcome added = add(each, "--crew"); !added) return added.error();
    return onBoard;
}

MayBe whoMayBe(const core::Club& club, const CheckPlan& plan) {
    return [may = club.checks().peopleFor(core::Location::boat(plan.boat), plan.phase, plan.today)](
               const core::Person& person) {
        return std::any_of(may.begin(), may.end(),
                           [&](const core::Person& each) { return each.name == person.name; });
    };
}

/// Whether the trip can be recorded, together with what was told of it before.
core::Outcome canBeTold(const core::Club& club, const CheckPlan& plan) {
    if (plan.phase != core::Phase::Return)
        return core::Error{core::ErrorCode::TripNotAtReturn, {}, "--phase"};
    const auto open = club.checks().unfinishedOf(plan.boat, plan.phase);
    const auto before = open ? club.events().operationOf(open->check) : std::nullopt;
    const auto whole = core::operationFrom(plan.trip->over(before), plan.today);
    return whole ? core::Outcome(core::Done{}) : whole.error();
}

/// Everything that can be wrong with the input is found here, before anything is recorded.
Result<CheckPlan> planOf(const core::Club& club, const CheckOptions& options, core::Moment given) {
    CheckPlan plan{.boat = {},
                   .phase = core::Phase::Launch,
                   .people = {},
                   .points = {},
                   .pictures = {},
                   .codes = nullptr,
                   .signature = {{}, options.urgent},
                   .event = {},
                   .trip = {},
                   .today = given.today,
                   .now = clockOf(options, given)};
    plan.phase = options.phase == "return" ? core::Phase::Return : core::Phase::Launch;
    const Result<std::string> boat = findBoat(club, options.boat);
    if (!boat) return boat.error();
    plan.boat = *boat;
    const std::vector<core::Person> known = club.register_().people();
    const MayBe mayBe = whoMayBe(club, plan);
    auto people = findPeople(known, options, mayBe);
    if (!people) return people.error();
    plan.people = std::move(*people);
    if (!options.urgent.empty())
        if (const auto good = core::reasonFrom(options.urgent); !good) {
            core::Error error = good.error();
            error.where = "--urgent";
            return error;
        }
    if (!options.signer.empty()) {
        const Result<std::string> signer = findPerson(known, options.signer, "--sign", mayBe);
        if (!signer) return signer.error();
        plan.signature.by = *signer;
    }
    if (!options.signerPin.empty()) {
        auto pin = signersPin(options.signerPin, options.signer, options.codes);
        if (!pin) return pin.error();
        plan.signature.pin = std::move(*pin);
    }
    auto event = core::nameFrom(options.event, "--event");
    if (!event) return event.error();
    plan.event = *event;
    auto trip = tripFrom(options.trip, plan.people);
    if (!trip) return trip.error();
    plan.trip = std::move(*trip);
    if (plan.trip)
        if (const core::Outcome good = canBeTold(club, plan); !good) return good.error();
    if (!options.points.empty()) {
        const auto points = club.register_().pointsOf(plan.boat, plan.phase);
        if (!points) return points.error();
        auto values = readPointsFile(options.points, *points);
        if (!values) return values.error();
        plan.points = std::move(*values);
    }
    return plan;
}

int check(const CheckOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        Result<CheckPlan> plan = planOf(club, options, moment);
        if (!plan) return fail(plan.error());
        std::ifstream file;
        if (const core::Outcome opened = openCodes(options.codes, file, plan->codes); !opened)
            return fail(opened.error());
        plan->pictures = readPictures(options.from);
        if (reportUnreadable(plan->pictures)) return static_cast<int>(ExitBadInput);

        const Result<CheckReport> report = runCheck(club, *plan);
        if (!report) return fail(report.error());
        if (options.json)
            say(checkJson(*report));
        else
            sayCheck(*report, club.checks().namesOf(report->check));
        return exitOf(report->answer);
    });
}

int discard(const CheckOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const Result<std::string> boat = findBoat(club, options.boat);
        if (!boat) return fail(boat.error());
        const auto phase = options.phase == "return" ? core::Phase::Return : core::Phase::Launch;
        return letGo(club, {*boat, phase, options.discard, options.json}, moment);
    });
}

} // namespace

void addCheck(CommandLine& line) {
    auto options = std::make_shared<CheckOptions>();
    Command command =
        line.add("check", "a launch or return check of a boat's kit; unsigned it stays open",
                 [options] { return options->discard.empty() ? check(*options) : discard(*options); });
    takeCommon(command, *options);
    command.more("Without --sign nothing but the sightings is recorded and the check stays open; given "
                 "again, it goes on. A return check takes what the crew tells of its trip. What goes wrong "
                 "is found before anything is recorded.");
    command.needsSomebody("the kit is incomplete");
    command.text("--boat", options->boat, "the boat", Need::Required);
    command.choice("--phase", options->phase, {"launch", "return"}, "launch or return", Need::Required);
    command.text("--driver", options->driver, "who drives");
    command.repeated("--crew", options->crew, "who else is on board; may be repeated");
    command.several("--from", options->from, "pictures, folders or videos of the kit");
    command.text("--codes", options->codes, "file of codes, one a line, or - for standard input");
    command.notTogether("--from", "--codes");
    command.text("--points", options->points, "CSV of points and their values");
    command.text("--sign", options->signer, "who signs", Need::NotEmpty);
    command.text("--pin-file", options->signerPin, std::string("of --sign, ") + pinFileHelp, Need::NotEmpty);
    command.text("--urgent", options->urgent, "why a launch with the kit incomplete is signed all the same");
    command.text("--at", options->at, "the instant of the check, e.g. 2026-03-14T06:40:00Z");
    command.text("--event", options->event, "the patrol, training day or carnival that it belongs to",
                 Need::NotEmpty);
    takeTrip(command, options->trip);
    command.text("--discard", options->discard,
                 "close the unfinished check without a signature, and why: nothing is marked as missing",
                 Need::NotEmpty);
    for (const char* other :
         {"--sign", "--pin-file", "--urgent", "--codes", "--from", "--points", "--driver", "--crew",
          "--event", "--left", "--back", "--hours", "--launches", "--fuel", "--incidents"})
        command.notTogether("--discard", other);
}

} // namespace app
