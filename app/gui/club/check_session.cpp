#include "app/gui/club/check_session.h"

#include "app/text/sentences.h"
#include "app/text/words.h"
#include "core/base/error_code.h"

#include <QPointer>

#include <utility>

namespace app {

CheckSession::CheckSession(ClubThread& club, TimeSource time, QObject* parent)
    : QObject(parent)
    , m_club(club)
    , m_time(std::move(time)) {}

void CheckSession::open(const QString& boat, core::Phase phase) {
    m_isOpening = true;
    const auto job = [where = boat.toStdString(), phase,
                      moment = m_time()](core::Club& club) -> core::Result<Opened> {
        auto flow = CheckFlow::open(club, where, phase, moment, CheckFlow::Finish::AsksFirst);
        if (!flow) return flow.error();
        const core::OpenCheck open = flow->check();
        auto work = std::make_shared<Work>(Work{std::move(*flow), CheckReader(open)});
        auto change = work->reader.read(club, moment, CheckReader::Extent::All);
        if (!change) return change.error();
        return Opened{std::move(work), stateOf(open, std::move(*change))};
    };
    m_club.ask(this, job, [this](core::Result<Opened> opened) { takeOpened(std::move(opened)); });
}

void CheckSession::takeOpened(core::Result<Opened> opened) {
    m_isOpening = false;
    if (!opened) {
        m_waiting.clear();
        return fail(opened.error());
    }
    m_work = std::move(opened->work);
    m_state = std::move(opened->state);
    const QPointer<CheckSession> self(this); // whoever hears of it may leave the check
    emit changed();
    if (self && !m_waiting.empty()) write();
}

void CheckSession::perform(Act act, const QString& text) {
    m_waiting.push_back({std::move(act), text});
    if (m_state && !m_isWriting) write();
}

void CheckSession::write() {
    m_isWriting = true;
    const auto job = [work = m_work, moment = m_time(), waiting = std::exchange(m_waiting, {})](
                         core::Club& club) { return written(club, *work, waiting, moment); };
    m_club.ask(this, job, [this](Written done) { takeWritten(std::move(done)); });
}

CheckSession::Written CheckSession::written(core::Club& club, Work& work, const std::vector<Waiting>& waiting,
                                            core::Moment moment) {
    Written done;
    bool isChanged = work.reader.isStale(club);
    auto extent = isChanged ? CheckReader::Extent::All : CheckReader::Extent::Scan;
    for (const Waiting& one : waiting) {
        auto step = one.act(club, work.flow);
        isChanged |= step && step->isChange();
        // A withdrawal is written into the log, a trip too; either may be taken back.
        if (step && (step->what == FlowStep::What::Withdrawn || step->what == FlowStep::What::Recorded ||
                     step->what == FlowStep::What::TookBack))
            extent = CheckReader::Extent::All;
        const bool isLast = step && step->isLast();
        done.steps.emplace_back(std::move(step), one.text);
        if (isLast) break;
    }
    if (isChanged) done.change = work.reader.read(club, moment, extent);
    done.lastItem = work.flow.lastItem();
    return done;
}

void CheckSession::takeWritten(Written done) {
    m_isWriting = false;
    const QPointer<CheckSession> self(this); // whoever hears of it may leave the check
    m_state->lastItem = std::move(done.lastItem);
    if (done.change && *done.change) {
        apply(*m_state, std::move(**done.change));
        emit changed();
    } else if (done.change) {
        fail(done.change->error());
    }
    for (const auto& [step, text] : done.steps) {
        if (!self) return;
        if (step && step->isLast()) m_waiting.clear();
        if (step && step->what == FlowStep::What::Signed) m_club.noteSigned();
        if (step) {
            emit stepped(*step, text);
            continue;
        }
        fail(step.error());
        if (self && isAboutPin(step.error())) askForPin(step.error());
    }
    if (self && !m_waiting.empty() && !m_isWriting) write();
}

void CheckSession::fail(const core::Error& error) {
    emit failed(errorSentence(error));
}

void CheckSession::scan(const core::ScannedText& scan, core::SeenBy seenBy) {
    scanAs(QString::fromStdString(scan.text), scan, seenBy);
}

void CheckSession::scan(const QString& typed, core::SeenBy seenBy) {
    scanAs(typed, core::ScannedText::typed(typed.toStdString()), seenBy);
}

void CheckSession::scanAs(const QString& asItCame, const core::ScannedText& scan, core::SeenBy seenBy) {
    const FlowTime time{m_time()};
    perform([scan, seenBy, time](core::Club& club,
                                 CheckFlow& flow) { return flow.scan(club, scan, seenBy, time); },
            asItCame);
}

void CheckSession::undo() {
    perform([moment = m_time()](core::Club& club, CheckFlow& flow) { return flow.undo(club, moment); });
}

void CheckSession::takeBack(const QString& code) {
    perform([code = code.toStdString(), moment = m_time()](core::Club& club, CheckFlow& flow) {
        return flow.takeBack(club, code, moment);
    });
}

void CheckSession::withdraw(const QString& code, const QString& text) {
    perform([code = code.toStdString(), text = text.toStdString(), moment = m_time()](
                core::Club& club, CheckFlow& flow) { return flow.withdraw(club, code, text, moment); });
}

void CheckSession::happened(const QString& code, const QString& event) {
    perform([code = code.toStdString(), event = event.toStdString(), moment = m_time()](
                core::Club& club, CheckFlow& flow) { return flow.happened(club, code, event, moment); });
}

void CheckSession::giveNames(const QStringList& people) {
    std::vector<std::string> names;
    for (const QString& person : people)
        names.push_back(person.toStdString());
    perform([names, moment = m_time()](core::Club& club, CheckFlow& flow) {
        return flow.giveNames(club, names, moment);
    });
}

void CheckSession::recordPoint(const QString& point, double value) {
    perform([point = point.toStdString(), value, moment = m_time()](core::Club& club, CheckFlow& flow) {
        return flow.recordPoint(club, point, value, moment);
    });
}

void CheckSession::recordTrip(const core::Operation& trip) {
    perform([trip, moment = m_time()](core::Club& club, CheckFlow& flow) {
        return flow.recordTrip(club, trip, moment);
    });
}

void CheckSession::turnClock() {
    const FlowTime time{m_time()};
    perform([time](core::Club& club, CheckFlow& flow) { return flow.turnClock(club, time); });
}

void CheckSession::turnClockOf(const QString& point) {
    const FlowTime time{m_time()};
    perform([point = point.toStdString(), time](core::Club& club, CheckFlow& flow) {
        return flow.turnClockOf(club, point, time);
    });
}

void CheckSession::discard(const QString& reason) {
    perform([reason = reason.toStdString(), moment = m_time()](core::Club& club, CheckFlow& flow) {
        return flow.discard(club, reason, moment);
    });
}

void CheckSession::setSignatureAsked(bool isAsked) {
    perform([isAsked](core::Club&, CheckFlow& flow) -> core::Result<FlowStep> {
        flow.setSignatureAsked(isAsked);
        return FlowStep{.what = FlowStep::What::Nothing};
    });
}

void CheckSession::sign(const QString& by, const QString& urgent, std::optional<int> missing) {
    signAs({by.toStdString(), urgent.toStdString(), missing});
}

void CheckSession::signAs(Signature signature) {
    m_signature = signature;
    perform([signature = std::move(signature), moment = m_time()](core::Club& club, CheckFlow& flow) {
        return flow.sign(club, signature, moment);
    });
}

/// A launch does not wait for who gave wrong ones: core takes it without.
void CheckSession::askForPin(const core::Error& error) {
    Signature signature = m_signature;
    signature.pin = nullptr;
    if (error.code == core::ErrorCode::PinWait && m_state->open.phase == core::Phase::Launch)
        return signAs(std::move(signature));
    m_club.askForSignersPin(this, QString::fromStdString(signature.by), error,
                            [this, signature](std::shared_ptr<core::Pin> pin) mutable {
                                signature.pin = std::move(pin);
                                signAs(std::move(signature));
                            });
}

} // namespace app
