#include "app/cli/commands/check_input.h"
#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_exchange.h"

#include "app/cli/json/merge_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/merge_sentences.h"

#include <memory>

namespace app {
namespace {

struct MergeOptions : CommonOptions {
    std::vector<std::string> others;
    bool asNewMachine = false;
    bool dryRun = false;
};

int merge(const MergeOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        if (const auto by = byWhom(club, options.by, moment.today); !by) return fail(by.error());
        const std::vector<std::filesystem::path> others(options.others.begin(), options.others.end());
        const auto forks = options.asNewMachine ? core::ClubExchange::Forks::AsNewMachine
                                                : core::ClubExchange::Forks::Refused;
        const auto cameIn =
            options.dryRun ? club.exchange().planMerge(others, forks) : club.exchange().merge(others, forks);
        if (!cameIn) return fail(cameIn.error());
        if (options.json) {
            say(mergeJson(*cameIn));
        } else {
            sayLine(cameInWords(*cameIn) + '.');
            for (const core::LookAt& each : cameIn->lookAt)
                sayLine(QStringLiteral("  ▲ %1.").arg(lookAtInWords(each)));
            if (options.dryRun) sayLine(QStringLiteral("Nothing was written."));
        }
        return static_cast<int>(cameIn->lookAt.empty() ? ExitFine : ExitNeedsSomebody);
    });
}

} // namespace

void addMerge(CommandLine& line) {
    auto options = std::make_shared<MergeOptions>();
    Command command = line.add("merge", "takes in what other machines recorded in their files of this club",
                               [options] { return merge(*options); });
    takeCommon(command, *options);
    command.more(
        "Every new fact is looked through first, then all or nothing is taken in; twice is nothing new.");
    command.needsSomebody("somebody must look at what came in");
    command.paths("OTHER", options->others, "other files of the club; they stay as they are");
    command.flag("--as-new-machine", options->asNewMachine,
                 "take a record that was forked in as that of a machine of its own");
    command.flag("--dry-run", options->dryRun, "only say what would come in");
    takeOfficer(command, *options, "who takes it in");
}

} // namespace app
