#include "app/cli/commands/check_run.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/terminal/terminal.h"
#include "app/flow/check_flow.h"
#include "app/flow/seen_text.h"
#include "app/text/act_words.h"
#include "app/text/sentences.h"
#include "app/text/words.h"
#include "core/base/error_code.h"
#include "core/base/plain_text.h"
#include "core/club/club_checks.h"
#include "core/club/club_events.h"

#include <algorithm>
#include <istream>

namespace app {
namespace {

using core::Outcome;
using core::Result;

/// Names, points, the event and the trip, as the command line gives them.
Outcome recordWhatIsTold(core::Club& club, CheckFlow& flow, const CheckPlan& plan) {
    if (!plan.people.empty())
        if (const auto named = flow.giveNames(club, plan.people, plan.now()); !named) return named.error();
    for (const PointValue& each : plan.points)
        if (const auto done = flow.recordPoint(club, each.point, each.value, plan.now()); !done)
            return done.error();
    if (!plan.event.empty())
        if (const Outcome filed = club.events().fileUnder(flow.check().check, plan.event, plan.now()); !filed)
            return filed;
    if (plan.trip)
        if (const auto told = flow.recordTrip(
                club, plan.trip->over(club.events().operationOf(flow.check().check)), plan.now());
            !told)
            return told.error();
    return core::Done{};
}

/// What is said of a step on the error channel; empty when it needs no words.
QString noteOn(core::Club& club, const FlowStep& step, const std::string& check, core::CalendarDay today) {
    switch (step.what) {
    case FlowStep::What::TookBack:
        return undoneInWords(*step.undone);
    case FlowStep::What::NothingToTakeBack:
        return QStringLiteral("the undo tag was shown and there is nothing to take back");
    case FlowStep::What::NothingToWithdraw:
        if (step.why) return errorLine(*step.why);
        return QStringLiteral(
            "the damaged tag was shown and no item of the club before it: show the item's tag first");
    case FlowStep::What::NoTimedPoint:
        return QStringLiteral("the clock tag was shown and no timed point is open");
    case FlowStep::What::NobodyToSign:
        return QStringLiteral(
            "the finish tag was shown and nobody is named: name the driver, or sign with --sign");
    case FlowStep::What::ReasonWanted:
        if (const auto answer = club.checks().answer(check, today))
            return QStringLiteral(
                       "not signed: %1; make it complete, or sign an urgent launch with --urgent REASON")
                .arg(outcomeOf(*answer));
        break;
    default:
        break;
    }
    return {};
}

/// Codes of one check, one after the other, from pictures or a hand-held scanner.
class CodeStream {
public:
    CodeStream(core::Club& club, CheckFlow& flow, const CheckPlan& plan)
        : m_club(club)
        , m_flow(flow)
        , m_plan(plan) {}

    Outcome takeAll() {
        for (const scanner::PathReading& picture : m_plan.pictures)
            for (const scanner::SeenCode& code : picture.seen)
                if (const Outcome taken = take(scannedText(code), core::SeenBy::Picture, code.text);
                    !taken || m_isEnded)
                    return taken;
        if (m_plan.codes == nullptr) return core::Done{};
        for (std::string line; nextLine(*m_plan.codes, line);) {
            if (core::withoutOuterBlanks(line).empty()) continue;
            if (const Outcome taken = take(core::ScannedText::typed(line), core::SeenBy::Scanner, line);
                !taken || m_isEnded)
                return taken;
        }
        if (m_plan.codes->bad()) return core::Error{core::ErrorCode::CodesCutOff};
        return core::Done{};
    }

    /// By --sign, unless a control tag has signed already or put the check aside.
    Outcome signAtEnd() {
        if (m_signed || m_plan.signature.by.empty()) return core::Done{};
        if (m_isPutAside) {
            note(QStringLiteral("not signed: the check was put aside"));
            return core::Done{};
        }
        return follow(m_flow.sign(m_club, m_plan.signature, m_plan.now()));
    }

    const std::vector<std::string>& unread() const { return m_unread; } ///< as they came, each once
    const std::optional<core::SignedCheck>& signedCheck() const { return m_signed; }

private:
    Outcome take(const core::ScannedText& scan, core::SeenBy seenBy, const std::string& asItCame) {
        const Result<FlowStep> step = m_flow.scan(m_club, scan, seenBy, {m_plan.now()});
        if (step && step->what == FlowStep::What::Scanned && step->scan.what == core::Scanned::What::Unread &&
            std::find(m_unread.begin(), m_unread.end(), asItCame) == m_unread.end())
            m_unread.push_back(asItCame);
        if (step && !step->scan.alike.empty()) note(errorLine(errorOfAlike(asItCame, step->scan.alike)));
        return follow(step);
    }

    Outcome follow(const Result<FlowStep>& step) {
        if (!step) return step.error();
        if (const QString words = noteOn(m_club, *step, m_flow.check().check, m_plan.now().today);
            !words.isEmpty())
            note(words);
        if (step->signedCheck) m_signed = step->signedCheck;
        m_isPutAside = step->what == FlowStep::What::PutAside;
        m_isEnded = step->isLast();
        return core::Done{};
    }

    core::Club& m_club;
    CheckFlow& m_flow;
    const CheckPlan& m_plan;
    std::vector<std::string> m_unread;
    std::optional<core::SignedCheck> m_signed;
    bool m_isPutAside = false;
    bool m_isEnded = false;
};

} // namespace

Result<CheckReport> runCheck(core::Club& club, const CheckPlan& plan) {
    Result<CheckFlow> flow = CheckFlow::open(club, plan.boat, plan.phase, plan.now(),
                                             CheckFlow::Finish::SignsAtOnce, plan.signature);
    if (!flow) return flow.error();
    const std::string& check = flow->check().check;
    if (const Outcome told = recordWhatIsTold(club, *flow, plan); !told) return told.error();
    CodeStream stream(club, *flow, plan);
    if (const Outcome taken = stream.takeAll(); !taken) return taken.error();
    if (flow->isClockRunning())
        note(QStringLiteral("the clock was started and not stopped: nothing is recorded for it"));
    Result<core::CheckAnswer> answer = club.checks().answer(check, plan.today);
    if (!answer && !stream.signedCheck()) return answer.error();
    CheckReport report{check, answer ? *answer : stream.signedCheck()->answer, {}, {}, stream.unread()};
    if (const Outcome done = stream.signAtEnd(); !done) return done.error();
    if (const auto& done = stream.signedCheck()) {
        report.signedBy = done->by;
        report.urgent = done->urgent;
        report.answer = done->answer;
    }
    return report;
}

} // namespace app
