#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_log.h"
#include "core/club/club_photos.h"

#include "app/cli/commands/reports.h"
#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <memory>

namespace app {
namespace {

struct LogOptions : CommonOptions {
    std::string boat;
};

void sayLog(const std::vector<core::LogEntry>& entries) {
    if (entries.empty()) return sayLine(QStringLiteral("The log is empty."));
    int open = 0;
    for (const core::LogEntry& entry : entries)
        open += !entry.closed;
    sayLine(counted(open, "%n entry open of ", "%n entries open of ") + QString::number(entries.size()) +
            QStringLiteral("."));
    for (const core::LogEntry& entry : entries)
        sayEntry(entry);
}

int log(const LogOptions& options) {
    return withClub(options, core::Club::Access::ReadOnly, [&](core::Club& club) {
        const auto entries = club.log().entries(options.boat);
        if (!entries) return fail(entries.error());
        if (options.json)
            say(logJson(*entries, club.photos().all()));
        else
            sayLog(*entries);
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void sayEntry(const core::LogEntry& entry) {
    const QString about = entry.boat.empty() ? codeInWords(entry.item.tag) : text(entry.boat);
    const QString by = entry.by.empty() ? QString() : QStringLiteral(", by %1").arg(text(entry.by));
    const QString mark = entry.closed ? QStringLiteral("■") : QStringLiteral("▲");
    sayLine(QStringLiteral("  %1 %2  %3, %4%5: “%6”%7")
                .arg(mark, text(entry.id), about, inWords(entry.day), by, text(entry.text),
                     entry.severity == core::Severity::Stop ? QStringLiteral(" (stop)") : QString()));
    if (entry.closed)
        sayLine(QStringLiteral("      → %1, %2").arg(text(entry.closing), inWords(*entry.closed)));
}

void addLog(CommandLine& line) {
    auto options = std::make_shared<LogOptions>();
    Command command =
        line.add("log", "the log entries, open ones first", [options] { return log(*options); });
    takeCommon(command, *options);
    command.text("--boat", options->boat, "only this boat and its kit");
}

} // namespace app
