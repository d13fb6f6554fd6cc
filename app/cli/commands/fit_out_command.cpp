#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/kit_options.h"
#include "app/cli/commands/options.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/json/record_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/answers/set_up.h"
#include "core/club/club_kit.h"

#include <memory>

namespace app {
namespace {

void sayFitOut(const core::BoatFitOut& boat, const FittedOut& fitted) {
    if (boat.lines.empty()) sayLine(QStringLiteral("Nothing is asked of %1 yet.").arg(text(boat.boat)));
    for (std::size_t i = 0; i < boat.lines.size(); ++i) {
        sayLine(QStringLiteral("%1: there %2, new %3")
                    .arg(text(boat.lines[i].line.kitType))
                    .arg(boat.lines[i].there)
                    .arg(boat.lines[i].lacking()));
        for (const core::Item& item : fitted[i])
            sayLine(QStringLiteral("  %1").arg(codeInWords(item.tag)));
    }
}

/// What the manifest lacks, without size and dates: nobody can guess them.
std::vector<core::NewKit> kitLacking(const core::BoatFitOut& boat) {
    std::vector<core::NewKit> kinds;
    for (const core::FitOutLine& each : boat.lines) {
        core::NewKit& kit = kinds.emplace_back();
        kit.kitType = each.line.kitType;
        kit.boat = boat.boat;
        kit.count = each.lacking();
    }
    return kinds;
}

/// Registered in one; the items by line, as there are none for some.
core::Result<FittedOut> registerLacking(core::Club& club, const core::BoatFitOut& boat, const std::string& by,
                                        core::Moment moment) {
    std::vector<core::NewKit> kinds = kitLacking(boat);
    std::erase_if(kinds, [](const core::NewKit& kit) { return kit.count == 0; });
    auto items =
        kinds.empty() ? core::Result<FittedOut>(FittedOut()) : club.kit().registerAll(kinds, by, moment);
    if (!items) return items.error();
    FittedOut fitted(boat.lines.size());
    auto next = items->begin();
    for (std::size_t i = 0; i < boat.lines.size(); ++i)
        if (boat.lines[i].lacking() > 0) fitted[i] = std::move(*next++);
    return fitted;
}

int fitOut(const KitOptions& options) {
    const auto access = options.dryRun ? core::Club::Access::ReadOnly : core::Club::Access::ReadWrite;
    return withClubOn(options, access, [&](core::Club& club, core::Moment moment) {
        const auto boat = club.kit().fitOutOf(options.kit.boat);
        if (!boat) return fail(boat.error());
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        if (const core::Outcome room = canPrintTags(options); !room) return fail(room.error());
        const auto fitted = options.dryRun ? core::Result<FittedOut>(FittedOut(boat->lines.size()))
                                           : registerLacking(club, *boat, *by, moment);
        if (!fitted) return fail(fitted.error());
        std::vector<std::string> codes;
        for (const auto& items : *fitted)
            for (const core::Item& item : items)
                codes.push_back(item.tag);
        if (options.json)
            say(fitOutJson(*boat, *fitted, codes.empty() ? std::string() : options.out));
        else
            sayFitOut(*boat, *fitted);
        return codes.empty() ? static_cast<int>(ExitFine) : finishWithSheet(club, options, codes);
    });
}

} // namespace

void addFitOut(CommandLine& line) {
    auto options = std::make_shared<KitOptions>();
    Command command = line.add("fit-out", "register what a boat's manifest lacks, and mint its tags",
                               [options] { return fitOut(*options); });
    takeCommon(command, *options);
    command.more("What the boat's manifest lacks becomes items at home on the boat, without size and days.");
    command.text("--boat", options->kit.boat, "the boat", Need::Required);
    command.flag("--dry-run", options->dryRun, "only say what would be registered");
    takeOfficer(command, *options, "who registers it");
    takeSheet(command, *options);
    command.notTogether("--dry-run", "--out");
}

} // namespace app
