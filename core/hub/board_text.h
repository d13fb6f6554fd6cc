#pragma once

#include "core/answers/published_board.h"
#include "core/base/calendar_day.h"

#include <string>
#include <vector>

namespace core {

/// A board as it stands on the hub: JSON, in the words of `boats --json`, and the day that it is of.
std::string textOf(const std::vector<PublishedBoat>& boats, CalendarDay today);
/// Reads day and boats. What a later program wrote beside it is left alone, and a part of a boat that cannot
/// be read has its default. What is no board is marked so: it must neither hide the others nor pass for an
/// empty one.
void readBoard(const std::string& text, PublishedBoard& into);

} // namespace core
