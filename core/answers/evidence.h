#pragma once

#include "core/check/boat_check.h"
#include "core/check/check_record.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace core {

/// One thing that was seen at the boat in its launch check.
struct AboardItem {
    ItemName item;
    std::string kitType;
    bool counted = false;           ///< it filled a place of the manifest by the rules of that day
    std::optional<CalendarDay> due; ///< its earliest due day as it stood then, where that check says it
    std::optional<bool> inDate; ///< false: a rule had passed beyond its tolerance, or the day of what did not
                                ///< count; empty: undated, or that check does not say
    bool isUndated = false;     ///< a day that a rule counts from was not known
    std::optional<RuleDue> passed; ///< the rule that was passed, the one that stops before one that does not
    std::string wornBy;
    std::optional<Instant> seenAt;
    std::string seenBy; ///< camera, picture, scanner or typed
};

/// What was aboard a boat at an instant, by the record alone: nothing is judged anew.
struct Evidence {
    std::string boat;
    Instant on;
    bool out = false;                  ///< a launch check was signed before and no return check until then
    std::optional<SignedCheck> launch; ///< the last one signed until then
    std::vector<std::string> people;   ///< on board, as that check named them
    std::vector<AboardItem> aboard;    ///< by kit type and id; empty when the boat was in
    std::optional<SignedCheck> back;   ///< the first return check signed after that launch
    std::string factHash;              ///< of the launch check's signature in the chain
    std::string machine;               ///< whose chain, with the number in it
    std::int64_t seq = 0;
    std::string head; ///< the chain's newest hash now
    /// People are named as whoever signed named them; what those are called by now, where it is another name.
    std::map<std::string, std::string> calledNow;
};

/// What the record holds of the launch that an instant asks for.
struct LaunchOnRecord {
    SignedCheck launch;
    std::vector<std::string> people;              ///< as it named them
    std::map<std::string, std::string> calledNow; ///< of those and who signed, as in Evidence
    std::vector<Sighting> sightings;              ///< those that stand, oldest first
    std::optional<SignedCheck> back;              ///< of firstReturnAfter
    std::string factHash;                         ///< of its signature
    std::string machine;
    std::int64_t seq = 0;
    std::map<std::string, std::string> replacedTags; ///< item id to its tag of now, where that is another
};

/// The boat's last launch check signed until then, and its first return check signed after a launch; null:
/// there is none. Signatures are ordered by when the check was, those of one instant by when they were
/// recorded.
const SignOff* lastLaunchUntil(Instant on, const std::vector<SignOff>& signOffs);
const SignOff* firstReturnAfter(const SignOff& launch, const std::vector<SignOff>& signOffs);

/// What was aboard `boat` on that instant; `launch`: of lastLaunchUntil, empty when there is none. The head
/// is the caller's to add. What the code settles under "evidence". Pure.
Evidence evidenceOf(const std::string& boat, Instant on, const std::optional<LaunchOnRecord>& launch);

} // namespace core
