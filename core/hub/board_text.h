#pragma once

#include "core/answers/published_board.h"
#include "core/base/calendar_day.h"

#include <string>
#include <vector>

namespace core {

/// A board as it stands on the hub: JSON, in the words of `boats --json`, and the day that it is of.
std::string textOf(const std::vector<PublishedBoat>& boats, CalendarDay today);
/// Reads day and boats. What a later program wrote beside it is left alone, what cannot be read has its
/// default: a board is no record, and one that is damaged must not hide the others.
void readBoard(const std::string& text, PublishedBoard& into);

} // namespace core
