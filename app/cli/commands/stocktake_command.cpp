#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "core/club/club_checks.h"
#include "core/club/club_register.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/commands/check_run.h"
#include "app/cli/commands/let_go.h"
#include "app/cli/commands/picture_reading.h"
#include "app/cli/commands/reports.h"
#include "app/cli/terminal/terminal.h"

#include "core/register/sheets.h"

#include <algorithm>
#include <memory>

namespace app {
namespace {

struct StocktakeOptions : CommonOptions {
    std::string signerPin; ///< file of the PIN of the signer
    std::string place;
    std::vector<std::string> from;
    std::string codes;
    std::string signer;
    std::string discard;
};

/// One that was begun may be signed without more scans.
bool isBegun(const core::Club& club, const std::string& place) {
    const auto open = club.checks().unfinished();
    return std::any_of(open.begin(), open.end(), [&](const core::OpenCheck& check) {
        return check.phase == core::Phase::Stocktake &&
               core::foldName(check.location.name) == core::foldName(place);
    });
}

/// As the register spells the place; one that it does not know as it was given.
std::string spelled(const core::Club& club, const std::string& place) {
    for (const std::string& known : club.register_().places())
        if (core::foldName(known) == core::foldName(place)) return known;
    return place;
}

int stocktake(const StocktakeOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        if (!options.discard.empty())
            return letGo(
                club, {spelled(club, options.place), core::Phase::Stocktake, options.discard, options.json},
                moment);
        CheckPlan plan{.boat = options.place,
                       .phase = core::Phase::Stocktake,
                       .people = {},
                       .points = {},
                       .pictures = {},
                       .codes = nullptr,
                       .signature = {},
                       .event = {},
                       .trip = {},
                       .today = moment.today,
                       .now = clockOf(options, moment)};
        if (!options.signer.empty()) {
            const auto signer = findPersonHere(club, options.signer, "--sign", moment.today);
            if (!signer) return fail(signer.error());
            plan.signature.by = *signer;
        }
        if (!options.signerPin.empty()) {
            auto pin = signersPin(options.signerPin, options.signer, options.codes);
            if (!pin) return fail(pin.error());
            plan.signature.pin = std::move(*pin);
        }
        if (options.from.empty() && options.codes.empty() && !isBegun(club, options.place))
            return failWith("nothing was scanned", "--codes",
                            "give pictures with --from or codes with --codes");
        std::ifstream file;
        if (const core::Outcome opened = openCodes(options.codes, file, plan.codes); !opened)
            return fail(opened.error());
        plan.pictures = readPictures(options.from);
        if (reportUnreadable(plan.pictures)) return static_cast<int>(ExitBadInput);
        const auto report = runCheck(club, plan);
        if (!report) return fail(report.error());
        if (options.json)
            say(checkJson(*report));
        else
            sayStocktake(*report);
        return exitOf(report->answer);
    });
}

} // namespace

void addStocktake(CommandLine& line) {
    auto options = std::make_shared<StocktakeOptions>();
    Command command = line.add("stocktake", "what is at a place against the register; unsigned it stays open",
                               [options] { return stocktake(*options); });
    takeCommon(command, *options);
    command.more(
        "Signed, what was not seen is missing. Without --sign it stays open and goes on when given again.");
    command.needsSomebody("something was not seen");
    command.text("--place", options->place, "the place", Need::Required);
    command.several("--from", options->from, "pictures, folders or videos of the shelf");
    command.text("--codes", options->codes, "file of codes, one a line, or - for standard input");
    command.notTogether("--from", "--codes");
    command.text("--sign", options->signer, "who signs; what was not seen is missing from then on",
                 Need::NotEmpty);
    command.text("--pin-file", options->signerPin, std::string("of --sign, ") + pinFileHelp, Need::NotEmpty);
    command.text("--discard", options->discard,
                 "close the unfinished stocktake without a signature, and why: nothing is missing for it",
                 Need::NotEmpty);
    for (const char* other : {"--sign", "--pin-file", "--codes", "--from"})
        command.notTogether("--discard", other);
    command.text("--at", options->at, "the instant of the stocktake, e.g. 2026-03-14T06:40:00Z");
}

} // namespace app
