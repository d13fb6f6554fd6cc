#pragma once

#include "core/base/instant.h"
#include "core/check/phase.h"
#include "core/register/location.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

// What the record holds of checks. A stamp says when something was recorded: of two things the later one has
// the greater stamp, whatever the time was that the person gave.

/// A check as it was opened.
struct CheckRun {
    std::string check; ///< its id
    std::string stamp;
    Location location;
    Phase phase = Phase::Launch;
    Instant openedAt = Instant::fromMillis(0);
};

/// A tag that was seen in a check.
struct Sighting {
    std::string id; ///< of the fact
    std::string stamp;
    std::string check;
    std::string code;
    Instant at = Instant::fromMillis(0);
    std::string seenBy;               ///< camera, picture, scanner or typed
    std::optional<double> print = {}; ///< what was left of its print, 4 to 0
};

/// What a crew does in a check, and may take back.
enum class ActKind { Sighting, Names, Point, Trip, Event, Damage };

/// One of these, as it was recorded.
struct RecordedAct {
    ActKind kind = ActKind::Sighting;
    std::string id; ///< of the fact
    std::string stamp;
    std::string code;                ///< Sighting: the tag's, Damage: the item's
    std::string name;                ///< Point, Event
    std::vector<std::string> people; ///< Names: who was on board from then on
    double value = 0;                ///< Point
};

/// A signature under a check. The answer that was signed is read apart from it: it is large.
struct SignOff {
    std::string check;
    std::string stamp;
    Location location;
    Phase phase = Phase::Launch;
    std::string by; ///< a person
    Instant at = Instant::fromMillis(0);
    std::string urgent; ///< empty: not urgent
};

} // namespace core
