#pragma once

#include "app/gui/widgets/list_row.h"
#include "app/gui/widgets/plain_table.h"
#include "core/answers/due_list.h"
#include "core/answers/history.h"
#include "core/base/calendar_day.h"
#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/upkeep/due_date.h"

#include <QString>

#include <optional>
#include <vector>

namespace app {

// One item of the register in a person's words.

/// Everything that an item's page shows, as it stands on disk.
struct ItemAnswer {
    core::ItemRecord record;
    std::vector<core::RuleDue> dues;     ///< all rules, not only those that are near
    std::vector<core::LogEntry> openLog; ///< open entries about it
    std::vector<core::HistoryLine> history;
    std::optional<double> print = {}; ///< what is left of its tag's print, 4 to 0
};

QString kitName(const core::Item& item); ///< "life jacket (M)"
QString homeOf(const core::Item& item);  ///< boat or place, and whose it is: "Petrel · Ines Varro"
/// "serviceable", "written off: worn, since 1 March 2026", "serviceable, but does not count: rearm is due".
QString stateOf(const core::Item& item, const std::vector<core::RuleDue>& dues);
/// Where it is from: home, maker, numbers, its days as they were given, the note.
QString aboutOf(const core::Item& item);
/// A serviceable item of which something is to be looked at has the mark for that.
TableRow rowOf(const core::ItemDue& kit);
std::vector<TableColumn> kitColumns(); ///< kit, size, home, owner, state, next due, serial, tag
// Places of some of them.
inline constexpr int kitColumn = 0, sizeColumn = 1, homeColumn = 2, ownerColumn = 3, dueColumn = 5,
                     serialColumn = 6, tagColumn = 7;
/// "1 March 2027: retire", "no date: retire", "now: rearm": short, for a column.
QString nextInWords(const core::RuleDue& due);
/// A rule's day with how it comes about.
ListRow lineOf(const core::RuleDue& due, core::CalendarDay today);
/// Dates, parts, open log entries and history, each with its heading.
std::vector<ListRow> linesOf(const ItemAnswer& answer, core::CalendarDay today);

} // namespace app
