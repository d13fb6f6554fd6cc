#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/base/result.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

struct ClubState;
class Pin;
class PinClock;

/// By whose PIN a gear officer's acts are open, and until when if nothing more is done.
struct Unlocked {
    std::string person;
    Instant until;
};

/// A PIN that the owner of the file took away.
struct PinReset {
    std::string person;
    Instant at; ///< when it was recorded
    std::string by;
};

/// PINs (core/record/pin.h), and who may do what (docs/rules.md). As long as no gear officer who is here has
/// one, everything is open. What an act needs is asked where it is written: without it that gives PinNeeded,
/// and nothing is written. Unlocking is of this opened Club, not of the file. See Club for what holds of
/// every function.
class ClubPins {
public:
    explicit ClubPins(ClubState& state)
        : m_state(&state) {}

    bool anySet() const;                       ///< a gear officer's acts need a PIN
    std::vector<std::string> officers() const; ///< whose PIN opens them, by name
    bool isSet(const std::string& person) const;

    /// Opens a gear officer's acts for ten minutes, which each of them begins anew. NoSuchPerson;
    /// NotGearOfficer; NoPinSet; PinWrong; PinWait: after five wrong ones for that person in this file on
    /// this computer 30 seconds, doubling with each further one to 15 minutes; PinNotAsSet.
    Outcome unlock(const std::string& person, const Pin& pin);
    void lock();
    std::optional<Unlocked> unlocked() const;

    /// Gives a person a PIN, instead of the one before. It is a gear officer's act; or, with the person's PIN
    /// of before as `own`, that person's. PinSetAlready: in a club that is open, of whoever has one.
    Outcome set(const std::string& person, const Pin& pin, const std::string& by, const Pin* own = nullptr);
    /// Takes it away; likewise. NoPinSet.
    Outcome clear(const std::string& person, const std::string& by, const Pin* own = nullptr);
    /// Takes it away where nobody knows it, by whoever owns the file; it stands on the board for 30 days.
    /// NoPinSet; NotFileOwner; OtherOfficerHasPin: who can set a new one.
    Outcome reset(const std::string& person, const std::string& by);
    /// Newest first; of the last 30 days.
    std::vector<PinReset> resets(CalendarDay today) const;

    /// Whether whoever has a PIN is asked for it when signing a check (ClubChecks::sign). Asking for it, or
    /// no more, is a gear officer's act.
    bool areSignaturesProven() const;
    Outcome proveSignatures(bool areAsked, const std::string& by);

    /// For tests: measures by that clock, which must outlive the Club.
    void goBy(const PinClock& clock);

private:
    ClubState* m_state;
};

} // namespace core
