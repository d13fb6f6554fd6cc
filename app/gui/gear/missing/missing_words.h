#pragma once

#include "app/gui/widgets/list_row.h"
#include "core/answers/missing_list.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace app {

// The missing list in a person's words.

/// "Nothing is missing.", "3 items missing. The longest: knife, since 8 March 2026."
QString summaryOf(const std::vector<core::MissingItem>& missing);
/// Missing longest first, each with how long and where it was lost from sight.
std::vector<ListRow> linesOf(const std::vector<core::MissingItem>& missing, core::CalendarDay today);
/// The chain of one, oldest first.
std::vector<ListRow> chainOf(const core::MissingItem& item, core::CalendarDay today);
/// Whom to ask and where to look, in the order in which it is worth doing.
QStringList nextStepsOf(const core::MissingItem& item);

} // namespace app
