#pragma once

#include "core/register/item.h"
#include "core/register/life_rule.h"
#include "core/upkeep/due_date.h"

#include <optional>

namespace core {

/// The day that a rule counts from, and what kind of day it is.
struct AnchorDay {
    Anchor anchor = Anchor::None;
    CalendarDay day;
};

/// The part that a rule is about; null for a rule of the item's own, or when the item has no such part.
const Part* partOf(const ItemRecord& record, const LifeRule& rule);

/// Empty when the day is not known. `part`: null for the item's own days. For rules that count from a record
/// or an event it is the last record, else first use, else made, else the item's registered day (design:
/// rules 2).
std::optional<AnchorDay> anchorOf(const LifeRule& rule, const ItemRecord& record, const Part* part);

/// The last passed record of that rule; null if there is none.
const ServiceRecord* lastRecordOf(const LifeRule& rule, const ItemRecord& record);

/// The latest event that the rule waits for and that no record has settled; null if there is none.
const Happening* openEventOf(const LifeRule& rule, const ItemRecord& record);

} // namespace core
