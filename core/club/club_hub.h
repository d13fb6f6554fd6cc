#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/club_exchange.h"

#include <chrono>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace core {

struct ClubState;
struct NotReadyReason;

/// Where a club file exchanges its record with the other machines of the club: a PostgreSQL database.
struct HubPlace {
    std::string url;           ///< without a password: that stands in ~/.pgpass
    bool sendsPrivate = false; ///< measures of people and the like go there, too
};

/// What an exchange did.
struct Exchanged {
    CameIn cameIn;
    int sent = 0;             ///< facts that were not there before
    Instant at;               ///< when it was over
    std::int64_t waiting = 0; ///< facts there that were not taken in, see TakingIn; then none was sent either
};

/// Taking in is one write, for which every other one waits.
enum class TakingIn {
    AtOnce,  ///< somebody asked for it
    GivesWay ///< of more than a thousand facts: not while a check is being done on this machine, and broken
             ///< off as soon as somebody of this program waits for it
};

/// The line of one club file to a hub, kept between exchanges. Belongs to one thread, with a Club that was
/// opened there, but for `stop`. It connects by itself, and anew after it was cut.
class HubLink {
public:
    HubLink();
    ~HubLink();
    HubLink(const HubLink&) = delete;
    HubLink& operator=(const HubLink&) = delete;

    enum class Waited { News, TimeUp, Stopped };
    /// Waits until another machine has sent something, for `atMost`. News also when the line was cut: the
    /// next exchange tells why. Before the first exchange there is none to hear of.
    Waited wait(std::chrono::milliseconds atMost);
    /// Ends `wait` and connecting (HubNotReached), now and from now on. From any thread, and from a handler
    /// of signals.
    void stop() noexcept;
    bool isStopped() const;

    int roundTrips() const; ///< to the hub and back, since the line stands

    struct Line;

private:
    friend class ClubHub;
    std::unique_ptr<Line> m_line;
};

/// The exchange with a hub. See Club for what holds of every function.
class ClubHub {
public:
    explicit ClubHub(ClubState& state)
        : m_state(&state) {}

    std::optional<HubPlace> place() const; ///< empty: this file exchanges with none
    /// The end of the last exchange that did not fail, of any file of the club that this user exchanges.
    std::optional<Instant> lastExchanged() const;

    /// A gear officer's act. From now on this file exchanges there; joined again, what is said now holds.
    /// Asks the hub first, and changes nothing where that cannot be reached or would not have this club.
    /// HubUrlUnreadable; HubUrlWithPassword; the errors of `exchange`.
    Outcome join(const HubPlace& place);
    Outcome leave(); ///< likewise; it exchanges no more, and what the hub has stays there

    /// The words of a reason, for the board that the district reads; in the language of whoever publishes it.
    using ReasonWords = std::function<std::string(const NotReadyReason&)>;
    /// Sends what the hub does not have, takes in what this file does not have, and publishes this machine's
    /// board of that day. What comes in is taken in whole or not at all. The file is not held while the hub
    /// is waited for and while signatures are looked at: other programs write to it meanwhile. Waits 10
    /// seconds for a connection and 90 for each answer. With nothing new on either side it is one round trip.
    /// When an exchange fails, what was taken in and sent before stays, and the next one goes on from there.
    /// HubNotJoined; HubNotReached; HubNotPrepared; HubNotAllowed; HubRefused; HubRoleUnknown; HubOtherClub,
    /// HubOtherName; HubForked, HubFactRefused, HubRecordDamaged; NamesFused. RecordDamaged: of this file,
    /// which is not sent.
    Result<Exchanged> exchange(HubLink& link, CalendarDay today, const ReasonWords& words,
                               TakingIn manner = TakingIn::AtOnce);

private:
    ClubState* m_state;
};

} // namespace core
