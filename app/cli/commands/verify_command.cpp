#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_record.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/errors.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <memory>

namespace app {
namespace {

struct VerifyOptions : CommonOptions {
    bool rebuild = false;
};

void sayVerification(const core::Verification& found) {
    const int problems = static_cast<int>(found.problems.size());
    sayLine(problems == 0
                ? QStringLiteral("No fault was found in the record: chain, tables and file agree.")
                : counted(problems, "The record is damaged: %n place.", "The record is damaged: %n places."));
    for (const core::Error& problem : found.problems)
        sayLine(QStringLiteral("  ▲ %1: %2").arg(placeInWords(problem), errorInWords(problem)));
    const int machines = static_cast<int>(found.machines.size());
    sayLine(QStringLiteral("  %1 facts from %2; head %3")
                .arg(found.facts)
                .arg(counted(machines, "%n machine", "%n machines"), text(found.head)));
    for (const core::MachineRecord& each : found.machines)
        sayLine(QStringLiteral("  %1 %2: %3, %4")
                    .arg(text(each.machine), text(each.name),
                         counted(static_cast<int>(each.facts), "%n fact", "%n facts"),
                         each.isSigned ? QStringLiteral("each signed") : QStringLiteral("not all signed")));
    if (found.erased > 0)
        sayLine(QStringLiteral("  %1 of people erased")
                    .arg(counted(static_cast<int>(found.erased), "%n measure", "%n measures")));
    if (found.notHere > 0)
        sayLine(QStringLiteral("  %1 of people not handed on to this file")
                    .arg(counted(static_cast<int>(found.notHere), "%n measure", "%n measures")));
}

int verify(const VerifyOptions& options) {
    const auto access = options.rebuild ? core::Club::Access::ReadWrite : core::Club::Access::ReadOnly;
    return withClub(options, access, [&](core::Club& club) {
        const auto found = club.record().verify(options.rebuild);
        if (!found) return fail(found.error());
        if (options.json)
            say(verificationJson(*found));
        else
            sayVerification(*found);
        return static_cast<int>(found->problems.empty() ? ExitFine : ExitNeedsSomebody);
    });
}

} // namespace

void addVerify(CommandLine& line) {
    auto options = std::make_shared<VerifyOptions>();
    Command command = line.add("verify", "check the record: its chain, its tables, its file",
                               [options] { return verify(*options); });
    takeCommon(command, *options);
    command.more("Chains and their signatures, tables against facts, the file itself. Keep the head that it "
                 "prints on paper or with a second person.");
    command.needsSomebody("the record has a problem");
    command.flag("--rebuild", options->rebuild, "make the tables anew from the record");
}

} // namespace app
