#pragma once

#include "core/answers/board.h"
#include "core/answers/due_list.h"
#include "core/register/boat.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// Kit that a boat's manifest asks for and that has its home aboard.
struct KitAtHome {
    std::string boat;
    std::string kitType;
    int wanted = 0;
    int there = 0; ///< of that type or a substitute, in use (not written off, missing or unserviceable)
};

/// How the club stands: what a change of the register may change.
struct Outlook {
    std::vector<BoatCondition> boats;
    std::vector<KitAtHome> kit; ///< by boat, in the manifest's order
    std::vector<DueRow> due;    ///< every rule, however late its day, of all kit that the change may touch
};

struct KitAtHomeChange {
    std::string boat;
    std::string kitType;
    std::optional<KitAtHome> before, after; ///< empty: not asked
};

struct ConditionChange {
    std::string boat;
    std::optional<BoatCondition> before, after; ///< empty: not on the board
};

/// The earliest day of an item, a part and a rule.
struct DueChange {
    ItemName item;
    std::string kitType;
    std::optional<RuleDue> before, after; ///< empty: the rule does not ask
};

/// What differs between two outlooks.
struct OutlookChange {
    std::vector<ConditionChange> boats; ///< of another condition, or with other reasons
    std::vector<KitAtHomeChange> kit;   ///< a shortage that comes, goes or changes
    std::vector<DueChange> due;         ///< by item id, in the kit type's order of rules

    bool isEmpty() const { return boats.empty() && kit.empty() && due.empty(); }
};

/// Kit at home of one boat: each line of its manifest, filled from `items` in the manifest's order, own types
/// before substitutes, so that no thing counts twice. Pure.
std::vector<KitAtHome> kitAtHomeOf(const std::string& boat, const std::vector<ManifestLine>& manifest,
                                   const std::vector<Item>& items);

/// What `after` has otherwise than `before`. Pure.
OutlookChange changesBetween(const Outlook& before, const Outlook& after);

} // namespace core
