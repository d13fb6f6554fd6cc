#pragma once

#include "app/gui/widgets/list_row.h"
#include "core/answers/history.h"
#include "core/base/calendar_day.h"

#include <QString>

#include <vector>

namespace app {

/// A line of a history as a sentence: "launch check signed: kit complete". A kind of fact that this program
/// does not know is said by its name.
QString inWords(const core::HistoryLine& line);
/// The lines, newest first, with when, by whom and where in the record.
std::vector<ListRow> linesOf(const std::vector<core::HistoryLine>& history, core::CalendarDay today);

} // namespace app
