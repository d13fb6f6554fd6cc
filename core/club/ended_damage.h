#pragma once

#include "core/base/calendar_day.h"
#include "core/check/check_record.h"

#include <string>

namespace core {

struct ClubState;

/// What goes with a damage that was taken back: its log entry is closed with these words, and what service
/// rounds found while the damage held the item is made good. After the taking back, in its transaction.
/// Throws StoreFailure.
void endDamage(ClubState& state, const RecordedAct& damage, const std::string& closing, const std::string& by,
               CalendarDay today);

} // namespace core
