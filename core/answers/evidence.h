#pragma once

#include "core/check/boat_check.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// One thing that was seen at the boat in its launch check.
struct AboardItem {
    std::string code;
    std::string tag; ///< the tag that names it now: another than its code when that was replaced
    std::string kitType;
    bool counted = false;              ///< it filled a place of the manifest by the rules of that day
    std::optional<CalendarDay> due;    ///< its earliest due day as it stood then
    std::optional<bool> inDate = true; ///< false: that check found it passed; empty: undated
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
    std::vector<AboardItem> aboard;    ///< by kit type and code; empty when the boat was in
    std::optional<SignedCheck> back;   ///< the first return check signed after that launch
    std::string factHash;              ///< of the launch check's signature in the chain
    std::string device;                ///< whose chain, with the number in it
    std::int64_t seq = 0;
    std::string head; ///< the chain's newest hash now
};

} // namespace core
