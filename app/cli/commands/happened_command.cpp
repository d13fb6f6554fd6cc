#include "app/cli/commands/command.h"

#include "app/cli/commands/commands.h"
#include "core/base/error_code.h"
#include "core/club/club_kit.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/json/record_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/cautions.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <memory>

namespace app {
namespace {

struct HappenedOptions : CommonOptions {
    std::string code;
    std::string event;
    std::string on;
};

void sayHappened(const core::Club& club, const core::Happened& happened, core::CalendarDay on) {
    const auto item = club.kit().item(happened.item.id);
    sayLine((happened.isNew
                 ? QStringLiteral("“%1” of %2 %3 on %4 is recorded.")
                 : QStringLiteral("“%1” of %2 %3 on %4 stood recorded already; nothing was changed."))
                .arg(text(happened.event), text(item->kitType), codeInWords(item->tag), inWords(on)));
    for (const core::RuleDue& due : happened.dues) {
        const QString part =
            due.rule.part.empty() ? QString() : QStringLiteral(" of its %1").arg(text(due.rule.part));
        const bool isDue = due.state == core::DueState::Passed;
        sayLine(QStringLiteral("  %1 %2%3: %4")
                    .arg(isDue ? QStringLiteral("▲") : QStringLiteral("■"), text(due.rule.name), part,
                         isDue ? QStringLiteral("due before it is used again") : QStringLiteral("not due")));
    }
}

int happened(const HappenedOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto on = options.on.empty() ? moment.today : core::CalendarDay::parse(options.on);
        if (!on) return fail({core::ErrorCode::DayUnreadable, {options.on}, "--on"});
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        const auto done = club.kit().happened(options.code, options.event, *on, *by, moment);
        if (!done) return fail(done.error());
        if (options.json)
            say(happenedJson(*done, *on));
        else
            sayHappened(club, *done, *on);
        return static_cast<int>(ExitFine);
    });
}

struct WithdrawOptions : CommonOptions {
    std::string code;
    core::ServiceEntry record;
    std::string why;
};

int withdrawRecord(const WithdrawOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        if (!core::PartialDay::parse(options.record.day))
            return fail({core::ErrorCode::DayUnreadable, {options.record.day}, "--on"});
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        const core::Outcome done =
            club.kit().withdrawRecord(options.code, options.record, options.why, *by, moment);
        if (!done) return fail(done.error());
        const auto item = club.kit().item(options.code);
        if (options.json) {
            say(withdrawnJson(*item, options.record));
            return static_cast<int>(ExitFine);
        }
        sayLine(
            QStringLiteral("The record of “%1” on %2 counts no more; it stays in the history. %3 %4 is %5.")
                .arg(text(options.record.rule), text(options.record.day), text(item->kitType),
                     codeInWords(item->tag), text(std::string(nameOf(item->state)))));
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addHappened(CommandLine& line) {
    auto options = std::make_shared<HappenedOptions>();
    Command command = line.add("happened", "an item was used or inflated, or what else its rules wait for",
                               [options] { return happened(*options); });
    takeCommon(command, *options);
    command.more("The rules of its kit type that wait for that event are then due. Told twice of one day it "
                 "changes nothing.");
    command.file("CODE", options->code, "the item's tag code");
    command.text("--event", options->event, "what happened, as a rule of its kit type has it",
                 Need::Required);
    command.text("--on", options->on, "the day on which it happened (today)", Need::NotEmpty);
    command.text("--by", options->by, "who tells it", Need::NotEmpty);
    command.text("--at", options->at, "the instant at which it happened, e.g. 2026-03-14T06:40:00Z");
}

void addWithdrawRecord(CommandLine& line) {
    auto options = std::make_shared<WithdrawOptions>();
    Command command = line.add("withdraw-record", "a service record that was made in error counts no more",
                               [options] { return withdrawRecord(*options); });
    takeCommon(command, *options);
    command.more("It stays in the history with the reason, and an export leaves it out.");
    command.file("CODE", options->code, "the item's tag code");
    command.text("--rule", options->record.rule, "the rule that it satisfied", Need::Required);
    command.text("--on", options->record.day, "its day, month or year, as it was recorded", Need::Required);
    command.text("--part", options->record.part, "the part that it was of", Need::NotEmpty);
    command.text("--why", options->why, "why, in words", Need::Required);
    takeOfficer(command, *options, "who withdraws it");
}

} // namespace app
