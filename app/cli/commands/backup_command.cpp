#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "app/cli/commands/pin_file.h"
#include "core/base/error_code.h"
#include "core/record/verification.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/errors.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_copy.h"

#include <memory>

namespace app {
namespace {

struct BackupOptions : CommonOptions {
    std::string to;
};

void sayCopy(const BackupOptions& options, const core::Verification& found) {
    sayLine(QStringLiteral("%1: %2 facts, head %3.")
                .arg(text(options.to))
                .arg(found.facts)
                .arg(text(found.head)));
    for (const core::Error& problem : found.problems)
        sayLine(QStringLiteral("  ▲ %1: %2").arg(placeInWords(problem), errorInWords(problem)));
}

int report(const BackupOptions& options, const core::Result<core::Verification>& found) {
    if (!found) return fail(found.error());
    noteMade();
    if (options.json)
        say(verificationJson(*found));
    else
        sayCopy(options, *found);
    return found->problems.empty() ? ExitFine : ExitNeedsSomebody;
}

/// A damaged file is backed up as it is, and told; it is not restored.
int copy(const BackupOptions& options, bool keepDamaged) {
    return report(options, core::copyClub(options.file, options.to, keepDamaged));
}

int restore(const BackupOptions& options) {
    if (options.pinFile.empty())
        return report(options, core::restoreClub(options.file, options.to, options.by, nullptr));
    if (options.by.empty()) return fail({core::ErrorCode::PinOfNobody, {}, "--pin-file"});
    const auto pin = pinFrom(options.pinFile);
    return pin ? report(options, core::restoreClub(options.file, options.to, options.by, &*pin))
               : fail(pin.error());
}

} // namespace

void addBackup(CommandLine& line) {
    auto options = std::make_shared<BackupOptions>();
    Command command = line.add("backup", "a copy of the club file, looked through; also while it is in use",
                               [options] { return copy(*options, true); });
    takeCommon(command, *options);
    command.more("A damaged record is backed up as it is, and told.");
    command.needsSomebody("the record has a problem");
    command.file("TO", options->to, "the copy, which must not exist yet");
}

/// Where it is written to, it goes on as a machine of its own; `merge` brings both together.
void addCopy(CommandLine& line) {
    auto options = std::make_shared<BackupOptions>();
    Command command = line.add("copy", "a copy for another machine, of a record that is not damaged",
                               [options] { return copy(*options, false); });
    takeCommon(command, *options);
    command.more("Written to elsewhere, it goes on as a machine of its own; merge brings both together.");
    command.file("TO", options->to, "the copy, which must not exist yet");
}

void addRestore(CommandLine& line) {
    auto options = std::make_shared<BackupOptions>();
    Command command =
        line.add("restore", "a club file from an undamaged backup", [options] { return restore(*options); });
    takeCommon(command, *options, Takes::NoFile);
    command.more("A damaged backup is refused.");
    command.file("FROM", options->file, "the backup");
    command.file("FILE", options->to, "the club file, which must not exist yet");
    takeOfficer(command, *options, "the gear officer who restores it");
}

} // namespace app
