#pragma once

#include "core/register/item.h"
#include "core/register/kit_type.h"

#include <optional>

namespace core {

/// What an item without an end counts as.
inline const CalendarDay endlessDay = CalendarDay::fromNumber(3652059);

/// The rules of a kit type that end an item's life (design: rules 9): its own, of kind stamped, from_made,
/// from_first_use or year_end_from_made, of severity stop.
bool endsLife(const LifeRule& rule);
KitType withLifeEndsOnly(const KitType& kitType);

/// The last good day of an item by its life-ending rules (design: rules 1): the earliest due day, a strict
/// rule's a day before; a tolerance is for the beach, not for planning. `endlessDay` when no rule gives a
/// day. Empty: it counts on no day, because a rule that stops the undated has no day to count from.
/// `lifeEnds`: of withLifeEndsOnly.
std::optional<CalendarDay> lastGoodDayOf(const ItemRecord& record, const KitType& lifeEnds);

/// The same for an item bought new: made and first used on `arrival`, its stamp not known and so no bar.
CalendarDay lastGoodDayOfNew(const KitType& lifeEnds, CalendarDay arrival);

} // namespace core
