#pragma once

#include "core/check/boat_check.h"
#include "core/upkeep/due_date.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// A seen item with what the rules say of it on that day, before any place is considered.
struct JudgedItem {
    const SeenItem* seen = nullptr;
    const KitType* kitType = nullptr;
    std::vector<RuleDue> dues;

    const Item& item() const { return seen->record.item; }
    std::optional<CalendarDay> due() const; ///< the earliest over its rules
    bool isSound() const;                   ///< its state and its stop rules let it count
    bool wasMissing() const { return seen->wasMissing || item().state == ItemState::Missing; }
};

/// Every seen item once, by code. `input` must outlive the result.
std::vector<JudgedItem> judgeItems(const BoatCheckInput& input);

/// The type of that name; an empty type, not worn, personal or dated, when the input has none. Lives as long
/// as input.
const KitType& kitTypeOf(const BoatCheckInput& input, const std::string& name);

/// Why the item does not count by its state or its stop rules: written-off, unserviceable, out-of-date,
/// service-overdue or undated, the first that applies. Empty when it is sound. The severity is the caller's
/// to set.
std::optional<Finding> whyItDoesNotCount(const JudgedItem& item);

/// Of the remark-level rules that are passed, within tolerance or undated, the one that is told: chosen as
/// among stop rules. Null: there is none.
const RuleDue* firstRemark(const std::vector<RuleDue>& dues);

/// One for each open log entry on the item, of the entry's severity.
std::vector<Finding> logFindings(const JudgedItem& item);

} // namespace core
