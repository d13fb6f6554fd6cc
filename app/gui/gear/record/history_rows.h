#pragma once

#include "app/gui/widgets/list_row.h"
#include "core/answers/history.h"
#include "core/base/calendar_day.h"

#include <vector>

namespace app {

/// The lines of a history in words, newest first, with when, by whom and where in the record.
std::vector<ListRow> linesOf(const std::vector<core::HistoryLine>& history, core::CalendarDay today);

} // namespace app
