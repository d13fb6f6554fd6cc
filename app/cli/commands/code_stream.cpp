#include "app/cli/commands/code_stream.h"

#include "app/cli/terminal/terminal.h"
#include "app/text/sentences.h"
#include "core/club/club_checks.h"

#include <algorithm>

namespace app {

using core::Result;
using core::Scanned;

CodeStream::CodeStream(core::Club& club, std::string check, std::function<core::Moment()> now,
                       std::string person, std::string urgent)
    : m_club(club)
    , m_check(std::move(check))
    , m_now(std::move(now))
    , m_person(std::move(person))
    , m_urgent(std::move(urgent)) {}

Result<bool> CodeStream::take(const std::string& text, core::SeenBy seenBy, const std::string& typed) {
    const Result<Scanned> scanned =
        m_club.checks().scan(m_check, typed.empty() ? text : typed, seenBy, m_now());
    if (!scanned) return scanned.error();
    switch (scanned->what) {
    case Scanned::What::NewItem:
    case Scanned::What::SeenBefore:
        m_lastItem = scanned->code;
        break;
    case Scanned::What::Unread:
        if (std::find(m_unread.begin(), m_unread.end(), text) == m_unread.end()) m_unread.push_back(text);
        break;
    case Scanned::What::Control:
        return act(*scanned->control);
    default:
        break;
    }
    return true;
}

Result<bool> CodeStream::act(core::ControlTag control) {
    switch (control) {
    case core::ControlTag::Finish:
        return finish();
    case core::ControlTag::Undo:
        return undo();
    case core::ControlTag::Damaged:
        return withdrawLast();
    case core::ControlTag::Clock:
        return turnClock();
    case core::ControlTag::PutAside:
        m_putAside = true;
        return false;
    case core::ControlTag::NextBoat:
        break;
    }
    return false;
}

/// What cannot be signed yet is no fault of the stream: the crew goes on looking.
Result<bool> CodeStream::finish() {
    std::string person = m_person;
    if (person.empty())
        if (const auto onBoard = m_club.checks().namesOf(m_check); !onBoard.empty()) person = onBoard.front();
    if (person.empty()) {
        note(QStringLiteral(
            "the finish tag was shown and nobody is named: name the driver, or sign with --sign"));
        return true;
    }
    auto done = signIfAllowed(m_club, m_check, person, m_urgent, m_now());
    if (!done) return done.error();
    m_signed = std::move(*done);
    return !m_signed.has_value();
}

Result<bool> CodeStream::undo() {
    const Result<Scanned> undone = m_club.checks().undoSighting(m_check, m_now());
    if (!undone && undone.error().kind() != core::ErrorKind::NotFound) return undone.error();
    if (!undone) note(QStringLiteral("the undo tag was shown and there is no sighting to take back"));
    m_lastItem.clear();
    return true;
}

Result<bool> CodeStream::withdrawLast() {
    if (m_lastItem.empty()) {
        note(QStringLiteral("the damaged tag was shown and no item before it: show the item's tag first"));
        return true;
    }
    const core::Outcome done =
        m_club.checks().withdraw(m_check, m_lastItem, damagedByTag().toStdString(), m_now());
    if (!done) return done.error();
    return true;
}

Result<bool> CodeStream::turnClock() {
    const auto now = std::chrono::steady_clock::now();
    if (m_clockSince) {
        const double seconds = std::chrono::duration<double>(now - *m_clockSince).count();
        m_clockSince.reset();
        const core::Outcome done = m_club.checks().recordPoint(m_check, m_timedPoint, seconds, m_now());
        if (!done) return done.error();
        return true;
    }
    const Result<core::CheckAnswer> answer = m_club.checks().answer(m_check, m_now().today);
    if (!answer) return answer.error();
    const auto isOpenTimed = [](const core::PointAnswer& each) {
        return each.point.kind == core::PointKind::Timed && each.state == core::PointState::Open;
    };
    const auto point = std::find_if(answer->points.begin(), answer->points.end(), isOpenTimed);
    if (point == answer->points.end()) {
        note(QStringLiteral("the clock tag was shown and no timed point is open"));
        return true;
    }
    m_timedPoint = point->point.name;
    m_clockSince = now;
    return true;
}

Result<std::optional<core::SignedCheck>> signIfAllowed(core::Club& club, const std::string& check,
                                                       const std::string& person, const std::string& urgent,
                                                       core::Moment moment) {
    auto done = club.checks().sign(check, person, urgent, moment);
    if (done) return std::optional<core::SignedCheck>(std::move(*done));
    if (done.error().kind() != core::ErrorKind::NotAllowed) return done.error();
    const Result<core::CheckAnswer> answer = club.checks().answer(check, moment.today);
    if (!answer) return done.error();
    if (answer->phase != core::Phase::Launch || answer->outcome != core::CheckOutcome::Incomplete)
        return done.error();
    note(QStringLiteral("not signed: %1; make it complete, or sign an urgent launch with --urgent REASON")
             .arg(outcomeOf(*answer)));
    return std::optional<core::SignedCheck>();
}

} // namespace app
