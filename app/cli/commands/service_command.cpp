#include "app/cli/commands/command.h"

#include "app/cli/commands/commands.h"
#include "core/base/error_code.h"
#include "core/club/club_kit.h"
#include "core/club/club_register.h"
#include "core/tag/tag_code.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/commands/picture_reading.h"
#include "app/cli/json/record_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/flow/seen_text.h"
#include "app/text/cautions.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <memory>

namespace app {
namespace {

struct ServiceOptions : CommonOptions {
    std::string rule;
    std::string day;
    std::vector<std::string> from;
    std::string codes;
    std::string note;
    bool failed = false;
};

core::Result<core::ServiceOrder> orderOf(const core::Club& club, const ServiceOptions& options,
                                         core::Moment moment) {
    const auto day = options.day.empty() ? moment.today : core::CalendarDay::parse(options.day);
    if (!day) return core::Error{core::ErrorCode::DayUnreadable, {options.day}, "--day"};
    const auto person = findPersonHere(club, options.by, "--by", *day);
    if (!person) return person.error();
    return core::ServiceOrder{options.rule, *day, *person, !options.failed, options.note, {}};
}

QString whyRefused(core::ServiceRound::Refusal why) {
    switch (why) {
    case core::ServiceRound::Refusal::NoSuchRule:
        return QStringLiteral("its kit type has no such rule, or it lacks the part");
    case core::ServiceRound::Refusal::WrittenOff:
        return QStringLiteral("it is written off");
    case core::ServiceRound::Refusal::DoneAlready:
        return QStringLiteral("already recorded for that day");
    case core::ServiceRound::Refusal::UnknownTag:
        break;
    }
    return QStringLiteral("the register does not know it");
}

void sayRound(const core::ServiceOrder& order, const core::ServiceRound& round) {
    sayLine(QStringLiteral("“%1”, %2, %3: %4 recorded as %5.")
                .arg(text(order.rule), inWords(order.day), text(order.by),
                     counted(static_cast<int>(round.recorded.size()), "%n item", "%n items"),
                     order.passed ? QStringLiteral("passed") : QStringLiteral("failed")));
    for (const auto& each : round.recorded) {
        QString row = QStringLiteral("  ■ %1 %2").arg(text(each.kitType), codeInWords(each.item.tag));
        if (!each.part.empty()) row += QStringLiteral(", its %1").arg(text(each.part));
        if (!order.passed) row += QStringLiteral(": withdrawn until a passed record");
        if (order.passed && each.nextDue) row += QStringLiteral(": next due %1").arg(inWords(*each.nextDue));
        if (each.released) row += QStringLiteral("; serviceable again");
        sayLine(row);
    }
    for (const auto& each : round.refused)
        sayLine(QStringLiteral("  ▲ %1 %2 not recorded: %3")
                    .arg(text(each.kitType), codeInWords(each.item.tag), whyRefused(each.why)));
    for (const std::string& each : round.unread)
        sayLine(QStringLiteral("  – %1: no kit of this club by that code").arg(text(each)));
    if (isRearm(text(order.rule))) sayLine(rearmCaution());
    sayLine(serviceCaution());
}

/// The control tag "undo" takes back the code before it, as in a check.
std::vector<std::string> withoutUndone(const std::vector<std::string>& codes) {
    std::vector<std::string> scans;
    for (const std::string& code : codes) {
        const auto tag = core::TagCode::parse(code);
        if (!tag || core::controlOf(*tag) != core::ControlTag::Undo)
            scans.push_back(code);
        else if (!scans.empty())
            scans.pop_back();
    }
    return scans;
}

int service(const ServiceOptions& options) {
    if (options.codes == "-" && options.pinFile == "-")
        return fail({core::ErrorCode::PinFileWithCodes, {}, "--pin-file"});
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        auto order = orderOf(club, options, moment);
        if (!order) return fail(order.error());
        std::ifstream file;
        std::istream* codes = nullptr;
        if (const core::Outcome opened = openCodes(options.codes, file, codes); !opened)
            return fail(opened.error());
        const auto pictures = readPictures(options.from);
        if (reportUnreadable(pictures)) return static_cast<int>(ExitBadInput);
        for (const auto& picture : pictures)
            for (const auto& code : picture.seen)
                order->scans.push_back(typedText(code));
        if (codes != nullptr) order->scans = withoutUndone(linesOf(*codes));
        if (codes != nullptr && codes->bad())
            return fail({core::ErrorCode::CodesUnreadable, {}, options.codes});
        const auto round = club.kit().recordService(*order, moment);
        if (!round) return fail(round.error());
        if (options.json)
            say(serviceJson(*order, *round));
        else
            sayRound(*order, *round);
        return static_cast<int>(round->refused.empty() ? ExitFine : ExitNeedsSomebody);
    });
}

} // namespace

void addService(CommandLine& line) {
    auto options = std::make_shared<ServiceOptions>();
    Command command = line.add("service", "a service round: one record for all that is scanned",
                               [options] { return service(*options); });
    takeCommon(command, *options);
    command.more("Failed, they are withdrawn; a later passed record releases what only a failed one held.");
    command.needsSomebody("something was refused; what fits is recorded all the same");
    command.text("--rule", options->rule, "the life rule that the record satisfies", Need::Required);
    command.text("--day", options->day, "the day on which it was done (today)");
    takeOfficer(command, *options, "who did it", Need::Required);
    command.several("--from", options->from, "pictures, folders or videos of the kit");
    command.text("--codes", options->codes, "file of codes, one a line, or - for standard input");
    command.notTogether("--from", "--codes");
    command.atLeastOneOf("--from", "--codes");
    command.flag("--failed", options->failed, "they failed: each is withdrawn");
    command.text("--note", options->note, "what was done or seen");
    command.text("--at", options->at, "the instant of the record, e.g. 2026-03-14T06:40:00Z");
}

} // namespace app
