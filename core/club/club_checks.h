#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/check/check_record.h"
#include "core/tag/scanned_text.h"
#include "core/tag/tag_code.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

struct ClubState;
class Pin;

/// By which means a tag was seen.
enum class SeenBy { Camera, Picture, Scanner, Typed };

/// A check that is not signed yet.
struct OpenCheck {
    std::string check; ///< id
    Location location; ///< the boat, or the place of a stocktake
    Phase phase = Phase::Launch;
    Instant openedAt;
    bool resumed = false;
};

/// What one scan meant.
struct Scanned {
    enum class What {
        NewItem,     ///< a registered item seen for the first time in this check
        SeenBefore,  ///< again in this check: counts once
        UnknownTag,  ///< a good kit or person tag that the register does not know
        PersonNamed, ///< a person's tag: next on board
        Ignored,     ///< the boat's own tag, a shelf's, or a person who is named already
        Unread,      ///< no code of this club's kind, another boat's tag, or that of who is no longer here
        Control,     ///< a control tag: the caller acts on it
    };
    What what = What::Unread;
    ItemName item;    ///< what it names; a tag that names no item is its own id
    std::string name; ///< kit type, or the person's name, also of one who is no longer here
    std::optional<ControlTag> control;
    std::vector<std::string> alike = {}; ///< Unread: the club's own tags one slip away from what was typed
};

/// Something that was done in a check, for people.
struct CheckAct {
    ActKind kind = ActKind::Sighting;
    ItemName item;                   ///< Sighting, Damage; a tag that names no item is its own id
    std::string name;                ///< Sighting, Damage: kit type; Point, Event: its name
    std::vector<std::string> people; ///< Names: who was on board by it
    std::optional<double> value;     ///< Point, but for one that is only looked at
};

/// What an undo took back.
struct Undone {
    CheckAct act;
    std::optional<CheckAct> next; ///< what the next undo would take back
};

/// Launch checks, return checks and stocktakes, from the first scan to the signature. See Club for what holds
/// of every function.
class ClubChecks {
public:
    explicit ClubChecks(ClubState& state)
        : m_state(&state) {}

    /// The unfinished check of that boat and phase, or a new one. `resumed` tells which. NoLongerHere for a
    /// boat that is gone, but for the return check of one that is out.
    Result<OpenCheck> open(const std::string& boat, Phase phase, Moment moment);
    /// The unfinished stocktake of that place, or a new one: a check like the others, of what the register
    /// has there. Signing it marks what was not seen as missing.
    Result<OpenCheck> openStocktake(const std::string& place, Moment moment);
    /// The unfinished check of that boat, or place, and phase, also one in which nothing stands. NotFound:
    /// none.
    Result<OpenCheck> unfinishedOf(const std::string& where, Phase phase) const;
    /// Checks that wait to be gone on with, newest first. Of boats, only those in which something stands; a
    /// stocktake is begun by a press of its own and waits in any case.
    std::vector<OpenCheck> unfinished() const;

    /// Whether that person may be named in the check today, or sign it. NotFound; NoLongerHere.
    Outcome mayTakePart(const std::string& check, const std::string& person, CalendarDay today) const;

    /// Replaces the names. Driver first, then crew, as they are to be served in that order. Unknown:
    /// NotFound.
    Outcome giveNames(const std::string& check, const std::vector<std::string>& people, Moment moment);
    std::vector<std::string> namesOf(const std::string& check) const;
    /// Who may be named in such a check, or sign it: the people who are here, and at a return those who went
    /// out with the boat. Who drove it last stands first, then who went out in it, then the others by name.
    std::vector<Person> peopleFor(const Location& where, Phase phase, CalendarDay today) const;

    /// One scan, as a camera or a hand-held scanner gives it. A new sighting is on disk when this returns.
    Result<Scanned> scan(const std::string& check, const ScannedText& text, SeenBy seenBy, Moment moment);
    /// Takes back what was done last in the check and still stands: a sighting, names, a point's value, a
    /// trip, an event or damage. It stays in the record as taken back. Damage: the item is what it was, and
    /// its log entry is closed with the words `closing`. A trip: its hours and launches count no more.
    /// NotFound when nothing stands.
    Result<Undone> undo(const std::string& check, const std::string& closing, Moment moment);
    /// Id of the item whose standing sighting in the check is the newest. Empty: none, or that tag names no
    /// item.
    std::string itemSeenLast(const std::string& check) const;
    /// What an undo would take back; empty: nothing.
    Result<std::optional<CheckAct>> newestAct(const std::string& check) const;
    /// Takes back that item's sighting in this check.
    Outcome undoSightingOf(const std::string& check, const std::string& code, Moment moment);
    /// A look: 1 done, 0 taken back. NotFound for an unknown point; BadInput for a look with another value.
    Outcome recordPoint(const std::string& check, const std::string& point, double value, Moment moment);
    /// Withdraws the item (unserviceable) with an open log entry of severity stop.
    Outcome withdraw(const std::string& check, const std::string& code, const std::string& text,
                     Moment moment);

    /// Lets the check go without a signature: it is not gone on with, and nothing is marked as missing. What
    /// was seen in it was seen. `reason`: why, where anything stands of it (else it may be empty), as
    /// reasonFrom wants it.
    Outcome discard(const std::string& check, const std::string& reason, Moment moment);

    /// How the check stands now. Its cost does not grow with the club's history.
    Result<CheckAnswer> answer(const std::string& check, CalendarDay today) const;
    /// Signs. A launch that is incomplete needs `urgent`, a reason, else NotAllowed; urgent is dropped when
    /// it is complete. A return marks what was not returned as missing. Afterwards nothing of the check
    /// changes.
    /// A stocktake in which nothing was read is refused, unless `missing` is how many it marks as missing:
    /// then it is meant.
    /// `pin`: the signer's own, by which the signature is proven; its errors are those of ClubPins::unlock.
    /// SignatureNeedsPin: the club asks for it, the signer has one, and it is not given; a launch is signed
    /// without it while the signer has to wait for wrong ones.
    Result<SignedCheck> sign(const std::string& check, const std::string& by, const std::string& urgent,
                             Moment moment, std::optional<int> missing = std::nullopt,
                             const Pin* pin = nullptr);

private:
    ClubState* m_state;
};

} // namespace core
