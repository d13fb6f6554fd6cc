#pragma once

#include "app/gui/widgets/list_row.h"
#include "core/answers/event_tally.h"

#include <QString>

#include <map>
#include <string>
#include <vector>

namespace app {

// The tally of an event in a person's words.

/// "14 items went out on 2 boats, 11 came back on their own, 2 on another, 1 missing now."
QString summaryOf(const core::EventTally& tally);
/// Per boat what went out, came back and by whom; then what came back on another boat, with how to undo it;
/// then what is missing now. `kitTypes`: by id.
std::vector<ListRow> linesOf(const core::EventTally& tally,
                             const std::map<std::string, std::string>& kitTypes, core::CalendarDay today);

} // namespace app
