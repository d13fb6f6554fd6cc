#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/club/club_checks.h"
#include "core/register/operation.h"
#include "core/tag/scanned_text.h"
#include "core/tag/tag_code.h"

#include <chrono>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace core {
class Pin;
}

namespace app {

/// When something was shown or pressed: the moment of the record, and a clock that nobody can put back, by
/// which points are timed.
struct FlowTime {
    core::Moment moment;
    std::chrono::steady_clock::time_point clock = std::chrono::steady_clock::now();
};

/// What one thing that was shown, typed or pressed came to.
struct FlowStep {
    enum class What {
        Scanned,           ///< no control tag: `scan` says what it meant
        Nothing,           ///< it is remembered, and nothing came of it yet
        Recorded,          ///< what was pressed or typed, and there is nothing to say of it
        TookBack,          ///< undo: what was done last, `undone`
        NothingToTakeBack, ///< undo where nothing stands; `why`
        Withdrawn,         ///< damaged: the item seen last, `scan.item`
        Happened,          ///< event `name` of `scan.item`, which `isNews` or stood recorded already
        NothingToWithdraw, ///< damaged, and no item is known to be meant (its own tag comes first), or `why`
        ClockStarted,      ///< of the timed point `name`
        ClockStopped,      ///< its seconds are recorded
        NoTimedPoint,      ///< none is open
        SignatureAsked,    ///< finish, where the signature is asked for first
        SignerNamed,       ///< a person's tag while it is asked for: `name` is to sign
        SignerUnknown,     ///< the same with a tag that is nobody's
        SignatureGiven,    ///< finish once more while it is asked for: the caller signs with what it holds
        Signed,            ///< `signedCheck`
        NobodyToSign,      ///< finish at once, and nobody is named
        ReasonWanted,      ///< an incomplete launch, and no reason why it is urgent; `why`
        PutAside,          ///< the check stays open
        LetGo,             ///< the check is closed without a signature
        NextBoat,          ///< likewise, and another boat is meant
    };
    What what = What::Scanned;
    core::Scanned scan;
    std::optional<core::Undone> undone{};
    std::string name;
    std::optional<core::SignedCheck> signedCheck;
    std::optional<core::Error> why;
    bool isNews = true;

    /// Something of the check is not as it was before.
    bool isChange() const;
    /// What is shown after it is not for this check any more.
    bool isLast() const {
        return what == What::Signed || what == What::LetGo || what == What::PutAside ||
               what == What::NextBoat;
    }
};

/// Who signs, for an incomplete launch why it is urgent.
struct Signature {
    std::string by;
    std::string urgent;
    std::optional<int> missing{}; ///< of a stocktake in which nothing was read: how many are, and it is meant
    std::shared_ptr<const core::Pin> pin{}; ///< the signer's own, which proves it; null: none is given
};

/// Whether a signature was refused for want of the signer's own PIN, or because of it.
bool isAboutPin(const core::Error& error);

/// What a person does step by step in a check, the same for every program: kit, people and control tags as
/// they are shown, what is pressed instead of a control tag, the signature. Remembers what the next step
/// depends on: the item seen last, the clock that runs, whether the signature is asked for. The record is the
/// club's; each step is on disk when it returns, and one that fails changes nothing. Holds no club, so that
/// it may outlive the file; used by the thread that owns the club which is passed in.
class CheckFlow {
public:
    /// What the finish tag does: sign at once, or ask for the signature, which shown again it gives.
    enum class Finish { SignsAtOnce, AsksFirst };

    /// Opens the check of that boat and phase, or goes on with its unfinished one; for a stocktake `where` is
    /// the place. `signature` is what the finish tag signs with at once; by nobody: the first of those on
    /// board.
    static core::Result<CheckFlow> open(core::Club& club, const std::string& where, core::Phase phase,
                                        core::Moment moment, Finish finish, Signature signature = {});

    const core::OpenCheck& check() const { return m_check; }

    core::Result<FlowStep> scan(core::Club& club, const core::ScannedText& text, core::SeenBy seenBy,
                                const FlowTime& time);

    core::Result<FlowStep> giveNames(core::Club& club, const std::vector<std::string>& people,
                                     core::Moment moment);
    core::Result<FlowStep> recordPoint(core::Club& club, const std::string& point, double value,
                                       core::Moment moment);
    core::Result<FlowStep> recordTrip(core::Club& club, const core::Operation& trip, core::Moment moment);

    /// Takes back what was done last, whatever it was.
    core::Result<FlowStep> undo(core::Club& club, core::Moment moment);
    core::Result<FlowStep> takeBack(core::Club& club, const std::string& code, core::Moment moment);
    core::Result<FlowStep> withdraw(core::Club& club, const std::string& code, const std::string& text,
                                    core::Moment moment);
    /// Something happened today to the item that its rules wait for.
    core::Result<FlowStep> happened(core::Club& club, const std::string& code, const std::string& event,
                                    core::Moment moment);
    /// Withdraws the item seen last, as the tag for damaged kit does.
    core::Result<FlowStep> withdrawLast(core::Club& club, core::Moment moment);
    /// Starts the clock of the first timed point that is open, or stops the one that runs.
    core::Result<FlowStep> turnClock(core::Club& club, const FlowTime& time);
    /// Starts that point's clock, or stops it. Another point's, which runs, is stopped first.
    core::Result<FlowStep> turnClockOf(core::Club& club, const std::string& point, const FlowTime& time);
    /// An incomplete launch without a reason is no error but a step: the crew goes on looking.
    core::Result<FlowStep> sign(core::Club& club, const Signature& signature, core::Moment moment);
    /// Lets the check go without a signature; `reason` as ClubChecks::discard wants it.
    core::Result<FlowStep> discard(core::Club& club, const std::string& reason, core::Moment moment);
    /// The signature is asked for by other means than the finish tag, or no longer.
    void setSignatureAsked(bool isAsked) { m_isSignatureAsked = isAsked; }

    /// Id of the item that "damaged" means: the one shown last, after an undo the newest that stands. Empty:
    /// none, or what was shown last was no item of the club.
    const std::string& lastItem() const { return m_lastItem; }
    bool isClockRunning() const { return !m_timedPoint.empty(); }

private:
    CheckFlow(core::OpenCheck check, Finish finish, Signature signature);
    core::Result<FlowStep> act(core::Club& club, core::ControlTag control, const FlowTime& time);
    core::Result<FlowStep> finish(core::Club& club, core::Moment moment);
    FlowStep nameSigner(core::Club& club, const core::TagCode& person, core::CalendarDay today) const;
    core::Result<FlowStep> stopClock(core::Club& club, const FlowTime& time);

    core::OpenCheck m_check;
    Finish m_finish;
    Signature m_signature;
    std::string m_lastItem;
    std::string m_timedPoint; ///< whose clock runs; empty: none
    std::chrono::steady_clock::time_point m_clockSince;
    bool m_isSignatureAsked = false;
};

} // namespace app
