#pragma once

#include "core/upkeep/due_date.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace core {

/// One item and rule on the due list.
struct DueRow {
    ItemName item;
    std::string kitType;
    std::string size;
    std::string boat;
    RuleDue due;
};

/// What of the kit is due within `days` of today, passed, undated or due without a day: worst first, then by
/// day, id and rule. Kit that is written off, or of a type that is not among `kitTypes`, has no rows.
/// Design: rules 1 and 2. Pure.
std::vector<DueRow> dueListOf(const std::vector<ItemRecord>& kit,
                              const std::map<std::string, KitType>& kitTypes, CalendarDay today, int days);

/// Days ahead to which every day of a due list belongs, however late (CalendarDay ends with 9999).
inline constexpr int howeverLate = 3'652'059;

/// Whether a person should look at a thing because of that: its day has passed, if only within tolerance, or
/// is not known.
bool isToLookAt(const RuleDue& due);

/// A thing with what of it comes due next, or is worst.
struct ItemDue {
    Item item;
    std::optional<RuleDue> next; ///< empty: nothing does
    bool isToLookAt = false;     ///< because of any of its rules
};

/// Each with the first of its rows of a due list that goes on for ever, in the order given. Pure.
std::vector<ItemDue> nextDuesOf(std::vector<ItemRecord> kit, const std::map<std::string, KitType>& kitTypes,
                                CalendarDay today);

} // namespace core
