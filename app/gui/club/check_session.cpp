#include "app/gui/club/check_session.h"

#include "app/text/sentences.h"
#include "app/text/words.h"
#include "core/answers/evidence.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_register.h"

namespace app {
namespace {

/// The items that a person of the answer wears.
std::map<std::string, core::Item> wornIn(const core::Club& club, const core::CheckAnswer& answer) {
    std::map<std::string, core::Item> worn;
    for (const core::LineAnswer& line : answer.lines)
        for (const core::LineItem& seen : line.items)
            if (seen.counts && !seen.wornBy.empty())
                if (auto item = club.kit().item(seen.code)) worn.emplace(seen.code, std::move(*item));
    return worn;
}

/// How the boat went out, of which this check is the return.
CheckContext launchOf(const core::Club& club, const core::OpenCheck& open, core::Instant now) {
    CheckContext context;
    if (open.phase != core::Phase::Return) return context;
    const auto evidence = club.answers().evidence(open.location.name, now);
    if (!evidence || !evidence->launch) return context;
    context.askWhom = evidence->people;
    context.launched = evidence->launch->at;
    return context;
}

core::Result<CheckState> readState(core::Club& club, const core::OpenCheck& open, core::CalendarDay today,
                                   CheckContext context) {
    auto answer = club.checks().answer(open.check, today);
    if (!answer) return answer.error();
    CheckState state{
        open, std::move(answer).value(), club.checks().namesOf(open.check), {}, {}, std::move(context), {}};
    for (core::Person& person : club.register_().people())
        state.people.push_back(std::move(person.name));
    if (auto log = club.log().entries(open.location.name)) state.log = std::move(log).value();
    state.context.worn = wornIn(club, state.answer);
    state.context.tags = club.kit().replacedTags();
    if (open.phase == core::Phase::Return) state.trip = club.events().operationOf(open.check);
    return state;
}

} // namespace

CheckSession::CheckSession(ClubThread& club, TimeSource time, QObject* parent)
    : QObject(parent)
    , m_club(club)
    , m_time(std::move(time)) {}

void CheckSession::open(const QString& boat, core::Phase phase) {
    ++m_jobs;
    const auto job = [boat = boat.toStdString(), phase,
                      moment = m_time()](core::Club& club) -> core::Result<CheckState> {
        auto open = phase == core::Phase::Stocktake ? club.checks().openStocktake(boat, moment)
                                                    : club.checks().open(boat, phase, moment);
        if (!open) return open.error();
        return readState(club, *open, moment.today, launchOf(club, *open, moment.at));
    };
    m_club.ask(this, job, [this](core::Result<CheckState> state) { take(state); });
}

void CheckSession::change(std::function<core::Outcome(core::Club&, const std::string&, core::Moment)> what) {
    if (!m_state) return;
    ++m_jobs;
    const auto job = [open = m_state->open, context = m_state->context, moment = m_time(),
                      what = std::move(what)](core::Club& club) -> core::Result<CheckState> {
        const core::Outcome done = what(club, open.check, moment);
        if (!done) return done.error();
        return readState(club, open, moment.today, context);
    };
    m_club.ask(this, job, [this](core::Result<CheckState> state) { take(state); });
}

void CheckSession::take(const core::Result<CheckState>& state) {
    --m_jobs;
    if (!state) {
        fail(state.error());
        return;
    }
    m_state = *state;
    emit changed();
}

void CheckSession::fail(const core::Error& error) {
    emit failed(withCapital(errorLine(error)) + QLatin1Char('.'));
}

void CheckSession::giveNames(const QStringList& people) {
    std::vector<std::string> names;
    for (const QString& person : people)
        names.push_back(person.toStdString());
    change([names](core::Club& club, const std::string& check, core::Moment moment) {
        return club.checks().giveNames(check, names, moment);
    });
}

void CheckSession::scan(const QString& text, core::SeenBy seenBy) {
    m_waiting.push_back({text.toStdString(), seenBy});
    if (!m_scanning && m_state) writeScans();
}

void CheckSession::writeScans() {
    m_scanning = true;
    ++m_jobs;
    const auto job = [open = m_state->open, context = m_state->context, moment = m_time(),
                      waiting = std::exchange(m_waiting, {})](core::Club& club) {
        std::vector<std::pair<core::Result<core::Scanned>, std::string>> scans;
        for (const Waiting& one : waiting)
            scans.emplace_back(club.checks().scan(open.check, one.text, one.seenBy, moment), one.text);
        return Scans{readState(club, open, moment.today, context), std::move(scans)};
    };
    m_club.ask(this, job, [this](Scans scans) { takeScans(std::move(scans)); });
}

void CheckSession::takeScans(Scans scans) {
    m_scanning = false;
    take(scans.state);
    for (const auto& [scan, text] : scans.scans) {
        if (scan)
            emit scanned(*scan, QString::fromStdString(text));
        else
            fail(scan.error());
    }
    if (!m_waiting.empty() && !m_scanning) writeScans();
}

void CheckSession::undo() {
    if (!m_state) return;
    ++m_jobs;
    using Undone = std::pair<core::Result<core::Scanned>, core::Result<CheckState>>;
    const auto job = [open = m_state->open, context = m_state->context, moment = m_time()](core::Club& club) {
        auto undone = club.checks().undoSighting(open.check, moment);
        return Undone{std::move(undone), readState(club, open, moment.today, context)};
    };
    m_club.ask(this, job, [this](Undone undone) {
        take(undone.second);
        if (undone.first)
            emit tookBack(*undone.first);
        else
            fail(undone.first.error());
    });
}

void CheckSession::takeBack(const QString& code) {
    change([code = code.toStdString()](core::Club& club, const std::string& check, core::Moment moment) {
        return club.checks().undoSightingOf(check, code, moment);
    });
}

void CheckSession::recordPoint(const QString& point, double value) {
    change([point = point.toStdString(), value](core::Club& club, const std::string& check,
                                                core::Moment moment) {
        return club.checks().recordPoint(check, point, value, moment);
    });
}

void CheckSession::withdraw(const QString& code, const QString& text) {
    change([code = code.toStdString(), text = text.toStdString()](core::Club& club, const std::string& check,
                                                                  core::Moment moment) {
        return club.checks().withdraw(check, code, text, moment);
    });
}

void CheckSession::recordTrip(const core::Operation& trip) {
    change([trip](core::Club& club, const std::string& check, core::Moment moment) {
        return club.events().recordOperation(check, trip, moment);
    });
}

void CheckSession::sign(const QString& by, const QString& urgent) {
    if (!m_state) return;
    ++m_jobs;
    const auto job = [check = m_state->open.check, by = by.toStdString(), urgent = urgent.toStdString(),
                      moment = m_time()](core::Club& club) {
        return club.checks().sign(check, by, urgent, moment);
    };
    m_club.ask(this, job, [this](core::Result<core::SignedCheck> done) {
        --m_jobs;
        if (done)
            emit signedOff(*done);
        else
            fail(done.error());
    });
}

} // namespace app
