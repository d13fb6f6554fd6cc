#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_answers.h"

#include "app/cli/json/record_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/cautions.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <memory>

namespace app {
namespace {

struct AboardOptions : CommonOptions {
    std::string boat;
    std::string on;
};

QString inDateInWords(const core::AboardItem& item) {
    if (item.passed) return QStringLiteral("OUT OF DATE OR OVERDUE: %1").arg(passedInWords(*item.passed));
    if (!item.inDate) return item.isUndated ? QStringLiteral("undated") : QStringLiteral("not known");
    return *item.inDate ? QStringLiteral("in date") : QStringLiteral("OUT OF DATE OR OVERDUE");
}

void sayAboard(const core::Evidence& evidence, core::CalendarDay today) {
    const QString boat = text(evidence.boat);
    const QString on = text(evidence.on.iso());
    if (evidence.on.localDay() > today)
        sayLine(QStringLiteral("That is still to come: this is what the record says up to now."));
    if (!evidence.launch)
        return sayLine(QStringLiteral("No launch check of %1 was signed up to %2.").arg(boat, on));
    const core::SignedCheck& launch = *evidence.launch;
    sayLine(QStringLiteral("%1 at %2: %3.")
                .arg(boat, on, evidence.out ? QStringLiteral("out") : QStringLiteral("in")));
    sayLine(
        QStringLiteral("Launch check %1, signed by %2 %3: %4.")
            .arg(text(launch.check), text(launch.by), inWords(launch.at, today), outcomeOf(launch.answer)));
    if (!launch.urgent.empty()) sayLine(QStringLiteral("Urgent: %1").arg(text(launch.urgent)));
    if (!evidence.people.empty()) sayLine(QStringLiteral("On board: %1.").arg(listed(evidence.people)));
    if (evidence.back)
        sayLine(QStringLiteral("Return check signed by %1 %2.")
                    .arg(text(evidence.back->by), inWords(evidence.back->at, today)));
    for (const auto& [then, now] : evidence.calledNow)
        sayLine(QStringLiteral("%1 is called %2 now.").arg(text(then), text(now)));
    std::vector<QStringList> rows;
    for (const core::AboardItem& item : evidence.aboard)
        rows.push_back({text(item.kitType), codeInWords(item.item.tag),
                        item.counted ? QStringLiteral("counted") : QStringLiteral("did not count"),
                        inDateInWords(item), item.due ? inWords(*item.due) : QString(), text(item.wornBy)});
    sayText(tableOf({"kit type", "tag", "by that day's rules", "dates", "due", "worn by"}, rows));
    sayLine(QStringLiteral("Fact %1 of machine %2, hash %3.")
                .arg(evidence.seq)
                .arg(text(evidence.machine), text(evidence.factHash)));
    sayLine(QStringLiteral("The chain's head is %1; `verify` tells whether anything was changed since.")
                .arg(text(evidence.head)));
    sayLine(scanCaution());
}

int aboard(const AboardOptions& options) {
    const auto on = core::Instant::parse(options.on);
    if (!on)
        return failWith("'" + options.on + "' is no instant", "--on", "write it like 2026-03-14T06:40:00Z");
    return withClubOn(options, core::Club::Access::ReadOnly, [&](core::Club& club, core::Moment moment) {
        const auto evidence = club.answers().evidence(options.boat, *on);
        if (!evidence) return fail(evidence.error());
        if (options.json)
            say(evidenceJson(*evidence));
        else
            sayAboard(*evidence, moment.today);
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addAboard(CommandLine& line) {
    auto options = std::make_shared<AboardOptions>();
    Command command =
        line.add("aboard", "what was aboard a boat at an instant, in date or not, signed by whom",
                 [options] { return aboard(*options); });
    takeCommon(command, *options);
    command.more("As the launch check was signed; nothing is judged anew.");
    command.text("--boat", options->boat, "the boat", Need::Required);
    command.text("--on", options->on, "the instant, e.g. 2026-03-14T06:40:00Z", Need::Required);
}

} // namespace app
