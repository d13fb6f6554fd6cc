#include "app/flow/check_flow.h"

#include "core/answers/item_record.h"

#include "app/text/act_words.h"
#include "app/text/sentences.h"
#include "core/base/error_code.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"

#include <algorithm>
#include <utility>

namespace app {

using core::ControlTag;
using core::Outcome;
using core::Result;
using core::Scanned;
using What = FlowStep::What;

namespace {

/// A step that needs no words, of an act that was recorded or failed.
Result<FlowStep> recorded(const Outcome& done) {
    if (!done) return done.error();
    return FlowStep{.what = What::Recorded};
}

} // namespace

bool FlowStep::isChange() const {
    switch (what) {
    case What::Scanned:
        return scan.what == Scanned::What::NewItem || scan.what == Scanned::What::UnknownTag ||
               scan.what == Scanned::What::PersonNamed;
    case What::Recorded:
    case What::TookBack:
    case What::Withdrawn:
    case What::Happened:
    case What::ClockStopped:
    case What::Signed:
    case What::LetGo:
        return true;
    default:
        return false;
    }
}

Result<CheckFlow> CheckFlow::open(core::Club& club, const std::string& where, core::Phase phase,
                                  core::Moment moment, Finish finish, Signature signature) {
    auto check = phase == core::Phase::Stocktake ? club.checks().openStocktake(where, moment)
                                                 : club.checks().open(where, phase, moment);
    if (!check) return check.error();
    return CheckFlow(std::move(*check), finish, std::move(signature));
}

CheckFlow::CheckFlow(core::OpenCheck check, Finish finish, Signature signature)
    : m_check(std::move(check))
    , m_finish(finish)
    , m_signature(std::move(signature)) {}

Result<FlowStep> CheckFlow::scan(core::Club& club, const core::ScannedText& text, core::SeenBy seenBy,
                                 const FlowTime& time) {
    if (m_isSignatureAsked) {
        const auto tag = core::TagCode::parse(text.text);
        if (tag && tag->tagClass() == core::TagClass::Person)
            return nameSigner(club, *tag, time.moment.today);
    }
    const Result<Scanned> scanned = club.checks().scan(m_check.check, text, seenBy, time.moment);
    if (!scanned) return scanned.error();
    switch (scanned->what) {
    case Scanned::What::Control:
        return act(club, *scanned->control, time);
    case Scanned::What::NewItem:
        m_lastItem = scanned->item.id;
        break;
    case Scanned::What::SeenBefore:
        m_lastItem = scanned->name.empty() ? std::string() : scanned->item.id;
        break;
    case Scanned::What::UnknownTag:
    case Scanned::What::Unread:
        // Damage would be meant of that thing, not of the one before it.
        m_lastItem.clear();
        break;
    default:
        break;
    }
    return FlowStep{.what = What::Scanned, .scan = *scanned};
}

Result<FlowStep> CheckFlow::act(core::Club& club, ControlTag control, const FlowTime& time) {
    switch (control) {
    case ControlTag::Finish:
        return finish(club, time.moment);
    case ControlTag::Undo:
        return undo(club, time.moment);
    case ControlTag::Damaged:
        return withdrawLast(club, time.moment);
    case ControlTag::Clock:
        return turnClock(club, time);
    case ControlTag::PutAside:
        return FlowStep{.what = What::PutAside};
    case ControlTag::NextBoat:
        break;
    }
    return FlowStep{.what = What::NextBoat};
}

Result<FlowStep> CheckFlow::finish(core::Club& club, core::Moment moment) {
    if (m_finish == Finish::AsksFirst) {
        const bool isAsked = std::exchange(m_isSignatureAsked, true);
        return FlowStep{.what = isAsked ? What::SignatureGiven : What::SignatureAsked};
    }
    Signature signature = m_signature;
    if (signature.by.empty())
        if (const auto onBoard = club.checks().namesOf(m_check.check); !onBoard.empty())
            signature.by = onBoard.front();
    if (signature.by.empty()) return FlowStep{.what = What::NobodyToSign};
    return sign(club, signature, moment);
}

FlowStep CheckFlow::nameSigner(core::Club& club, const core::TagCode& person, core::CalendarDay today) const {
    const auto labels = club.kit().tagLabels({person.text()});
    if (!labels || labels->empty() || labels->front().name.empty())
        return FlowStep{.what = What::SignerUnknown};
    if (const Outcome may = club.checks().mayTakePart(m_check.check, labels->front().name, today); !may)
        return FlowStep{.what = What::SignerUnknown, .why = may.error()};
    return FlowStep{.what = What::SignerNamed, .name = labels->front().name};
}

Result<FlowStep> CheckFlow::giveNames(core::Club& club, const std::vector<std::string>& people,
                                      core::Moment moment) {
    return recorded(club.checks().giveNames(m_check.check, people, moment));
}

Result<FlowStep> CheckFlow::recordPoint(core::Club& club, const std::string& point, double value,
                                        core::Moment moment) {
    return recorded(club.checks().recordPoint(m_check.check, point, value, moment));
}

Result<FlowStep> CheckFlow::recordTrip(core::Club& club, const core::Operation& trip, core::Moment moment) {
    return recorded(club.events().recordOperation(m_check.check, trip, moment));
}

Result<FlowStep> CheckFlow::undo(core::Club& club, core::Moment moment) {
    const std::string closing = closedByUndo(club.checks().namesOf(m_check.check)).toStdString();
    const Result<core::Undone> undone = club.checks().undo(m_check.check, closing, moment);
    if (!undone && undone.error().kind() != core::ErrorKind::NotFound) return undone.error();
    m_lastItem = club.checks().itemSeenLast(m_check.check);
    if (!undone) return FlowStep{.what = What::NothingToTakeBack, .why = undone.error()};
    return FlowStep{.what = What::TookBack, .undone = *undone};
}

Result<FlowStep> CheckFlow::takeBack(core::Club& club, const std::string& code, core::Moment moment) {
    const Outcome done = club.checks().undoSightingOf(m_check.check, code, moment);
    if (done && code == m_lastItem) m_lastItem = club.checks().itemSeenLast(m_check.check);
    return recorded(done);
}

Result<FlowStep> CheckFlow::withdraw(core::Club& club, const std::string& code, const std::string& text,
                                     core::Moment moment) {
    const Outcome done = club.checks().withdraw(m_check.check, code, text, moment);
    if (!done && done.error().code == core::ErrorCode::WrittenOffAlready) // the check goes on
        return FlowStep{.what = What::NothingToWithdraw, .why = done.error()};
    if (!done) return done.error();
    FlowStep step{.what = What::Withdrawn};
    if (const auto item = club.kit().item(code)) step.scan.item = item->name();
    return step;
}

Result<FlowStep> CheckFlow::happened(core::Club& club, const std::string& code, const std::string& event,
                                     core::Moment moment) {
    const auto onBoard = club.checks().namesOf(m_check.check);
    const auto done = club.kit().happened(code, event, moment.today,
                                          onBoard.empty() ? std::string() : onBoard.front(), moment);
    if (!done) return done.error();
    FlowStep step{.what = What::Happened};
    step.scan.item = done->item;
    step.name = done->event;
    step.isNews = done->isNew;
    return step;
}

Result<FlowStep> CheckFlow::withdrawLast(core::Club& club, core::Moment moment) {
    if (m_lastItem.empty()) return FlowStep{.what = What::NothingToWithdraw};
    return withdraw(club, m_lastItem, damagedByTag().toStdString(), moment);
}

Result<FlowStep> CheckFlow::turnClock(core::Club& club, const FlowTime& time) {
    if (isClockRunning()) return stopClock(club, time);
    const Result<core::CheckAnswer> answer = club.checks().answer(m_check.check, time.moment.today);
    if (!answer) return answer.error();
    const auto isOpenTimed = [](const core::PointAnswer& each) {
        return each.point.kind == core::PointKind::Timed && each.state == core::PointState::Open;
    };
    const auto point = std::find_if(answer->points.begin(), answer->points.end(), isOpenTimed);
    if (point == answer->points.end()) return FlowStep{.what = What::NoTimedPoint};
    return turnClockOf(club, point->point.name, time);
}

Result<FlowStep> CheckFlow::turnClockOf(core::Club& club, const std::string& point, const FlowTime& time) {
    if (isClockRunning()) {
        const bool isItsOwn = m_timedPoint == point;
        Result<FlowStep> stopped = stopClock(club, time);
        if (!stopped || isItsOwn) return stopped;
    }
    m_timedPoint = point;
    m_clockSince = time.clock;
    return FlowStep{.what = What::ClockStarted, .name = point};
}

Result<FlowStep> CheckFlow::stopClock(core::Club& club, const FlowTime& time) {
    const std::string point = std::exchange(m_timedPoint, {});
    const double seconds = std::chrono::duration<double>(time.clock - m_clockSince).count();
    const Outcome done = club.checks().recordPoint(m_check.check, point, seconds, time.moment);
    if (!done) return done.error();
    return FlowStep{.what = What::ClockStopped, .name = point};
}

Result<FlowStep> CheckFlow::discard(core::Club& club, const std::string& reason, core::Moment moment) {
    const Outcome done = club.checks().discard(m_check.check, reason, moment);
    if (!done) return done.error();
    return FlowStep{.what = What::LetGo};
}

bool isAboutPin(const core::Error& error) {
    switch (error.code) {
    case core::ErrorCode::SignatureNeedsPin:
    case core::ErrorCode::PinWrong:
    case core::ErrorCode::PinWait:
        return true;
    default:
        return false;
    }
}

Result<FlowStep> CheckFlow::sign(core::Club& club, const Signature& signature, core::Moment moment) {
    auto done = club.checks().sign(m_check.check, signature.by, signature.urgent, moment, signature.missing,
                                   signature.pin.get());
    if (done) return FlowStep{.what = What::Signed, .signedCheck = std::move(*done)};
    if (isAboutPin(done.error()) || done.error().kind() != core::ErrorKind::NotAllowed) return done.error();
    const Result<core::CheckAnswer> answer = club.checks().answer(m_check.check, moment.today);
    if (!answer || answer->phase != core::Phase::Launch || answer->outcome != core::CheckOutcome::Incomplete)
        return done.error();
    return FlowStep{.what = What::ReasonWanted, .why = done.error()};
}

} // namespace app
