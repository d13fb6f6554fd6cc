#pragma once

#include "core/upkeep/due_date.h"

#include <map>
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

} // namespace core
