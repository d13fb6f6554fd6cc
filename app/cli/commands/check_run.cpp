#include "app/cli/commands/check_run.h"

#include "app/cli/commands/code_stream.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/tag_of_text.h"
#include "core/club/club_checks.h"
#include "core/club/club_events.h"

#include "core/base/plain_text.h"

#include <istream>

namespace app {
namespace {

using core::Outcome;
using core::Result;

Outcome recordPoints(core::Club& club, const std::string& check, const CheckPlan& plan) {
    for (const PointValue& each : plan.points)
        if (const Outcome done = club.checks().recordPoint(check, each.point, each.value, plan.now()); !done)
            return done;
    return core::Done{};
}

Result<bool> takePictures(CodeStream& stream, const CheckPlan& plan) {
    for (const scanner::PathReading& picture : plan.pictures)
        for (const scanner::SeenCode& code : picture.seen) {
            const Result<bool> goOn = stream.take(code.text, core::SeenBy::Picture, typedText(code));
            if (!goOn || !*goOn) return goOn;
        }
    return true;
}

Result<bool> takeCodes(CodeStream& stream, const CheckPlan& plan) {
    if (plan.codes == nullptr) return true;
    for (std::string line; std::getline(*plan.codes, line);) { // each as it comes: a scanner may be typing
        if (line.ends_with('\r')) line.pop_back();
        if (core::withoutOuterBlanks(line).empty()) continue;
        const Result<bool> goOn = stream.take(line, core::SeenBy::Scanner);
        if (!goOn || !*goOn) return goOn;
    }
    return true;
}

/// By --sign, unless a control tag has signed already or put the check aside.
Outcome signAtEnd(core::Club& club, const CodeStream& stream, const CheckPlan& plan, CheckReport& report) {
    std::optional<core::SignedCheck> done = stream.signedCheck();
    if (!done && !plan.signer.empty() && stream.isPutAside())
        note(QStringLiteral("not signed: the check was put aside"));
    else if (!done && !plan.signer.empty()) {
        auto result = signIfAllowed(club, report.check, plan.signer, plan.urgent, plan.now());
        if (!result) return result.error();
        done = std::move(*result);
    }
    if (done) {
        report.signedBy = done->by;
        report.urgent = done->urgent;
        report.answer = done->answer;
    }
    return core::Done{};
}

} // namespace

Result<CheckReport> runCheck(core::Club& club, const CheckPlan& plan) {
    const Result<core::OpenCheck> open = plan.phase == core::Phase::Stocktake
                                             ? club.checks().openStocktake(plan.boat, plan.now())
                                             : club.checks().open(plan.boat, plan.phase, plan.now());
    if (!open) return open.error();
    if (!plan.people.empty())
        if (const Outcome named = club.checks().giveNames(open->check, plan.people, plan.now()); !named)
            return named.error();
    if (const Outcome recorded = recordPoints(club, open->check, plan); !recorded) return recorded.error();

    if (!plan.event.empty())
        if (const Outcome filed = club.events().fileUnder(open->check, plan.event, plan.now()); !filed)
            return filed.error();
    if (plan.trip)
        if (const Outcome told = club.events().recordOperation(open->check, *plan.trip, plan.now()); !told)
            return told.error();

    CodeStream stream(club, open->check, plan.now, plan.signer, plan.urgent);
    Result<bool> goOn = takePictures(stream, plan);
    if (goOn && *goOn) goOn = takeCodes(stream, plan);
    if (!goOn) return goOn.error();
    if (stream.clockRuns())
        note(QStringLiteral("the clock was started and not stopped: nothing is recorded for it"));

    Result<core::CheckAnswer> answer = club.checks().answer(open->check, plan.today);
    if (!answer && !stream.signedCheck()) return answer.error();
    CheckReport report{
        open->check, answer ? std::move(*answer) : stream.signedCheck()->answer, {}, {}, stream.unread()};
    if (const Outcome done = signAtEnd(club, stream, plan, report); !done) return done.error();
    return report;
}

} // namespace app
