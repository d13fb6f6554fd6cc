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

struct DueOptions : CommonOptions {
    std::string within = "90d";
};

bool isLater(const core::DueRow& row) {
    return row.due.state == core::DueState::Later;
}

QStringList rowOf(const core::DueRow& row, core::CalendarDay today) {
    const QString size = row.size.empty() ? QString() : QStringLiteral(" (%1)").arg(text(row.size));
    const QString mark = row.due.isPassedStop() ? QStringLiteral("▲")
                         : isLater(row)         ? QStringLiteral("–")
                                                : QStringLiteral("◯");
    return {mark,           dueInWords(row.due, today), text(row.kitType) + size, codeInWords(row.item.tag),
            text(row.boat), ruleInWords(row.due.rule),  explanationOf(row.due)};
}

void sayDue(const std::vector<core::DueRow>& rows, int days, core::CalendarDay today) {
    const QString span = counted(days, "within %n day", "within %n days");
    if (rows.empty()) return sayLine(QStringLiteral("Nothing falls due %1.").arg(span));
    sayLine(counted(static_cast<int>(rows.size()), "%n due day", "%n due days") +
            QStringLiteral(" overdue, undated or %1.").arg(span));
    std::vector<QStringList> table;
    std::transform(rows.begin(), rows.end(), std::back_inserter(table),
                   [today](const core::DueRow& row) { return rowOf(row, today); });
    const QStringList heading{QString(), "due", "kit type", "tag", "boat", "rule", "why"};
    sayText(tableOf(heading, table));
    sayLine(dueCaution());
    sayLine(whoPrevails());
}

int due(const DueOptions& options) {
    const auto days = daysWithin(options.within);
    if (!days) return failOfDays(options.within);
    return withClubOn(options, core::Club::Access::ReadOnly, [&](core::Club& club, core::Moment moment) {
        const auto rows = club.answers().dueList(moment.today, *days);
        if (options.json)
            say(dueJson(rows, moment.today));
        else
            sayDue(rows, *days, moment.today);
        return static_cast<int>(std::all_of(rows.begin(), rows.end(), isLater) ? ExitFine
                                                                               : ExitNeedsSomebody);
    });
}

} // namespace

void addDue(CommandLine& line) {
    auto options = std::make_shared<DueOptions>();
    Command command = line.add("due", "what is due, overdue, or will be within a number of days",
                               [options] { return due(*options); });
    takeCommon(command, *options);
    command.more("90 days ahead unless --within says otherwise. Kit that is written off is left out.");
    command.needsSomebody("a row is due, overdue, undated or will be within the days");
    command.text("--within", options->within, "how far ahead, in days");
}

} // namespace app
