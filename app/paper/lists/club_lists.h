#pragma once

#include "app/paper/lists/list_table.h"
#include "core/answers/board.h"
#include "core/answers/due_list.h"
#include "core/answers/missing_list.h"
#include "core/register/boat.h"
#include "core/register/item.h"

#include <map>
#include <string>
#include <vector>

namespace core {
class Club;
}

namespace app {

// The club's lists as tables, from its answers; their club and day are left open.

/// How a thing is marked on a list: by its state, and by what is to be looked at of what is serviceable.
Mark markOf(const core::ItemDue& kit);

/// Kit that is not written off, by kit type, size, home and tag.
ListTable kitTable(std::vector<core::ItemDue> kit, core::CalendarDay today);
/// The kit that somebody has found, in the order given. `summary`: what it is, in a sentence.
ListTable foundKitTable(const std::vector<core::ItemDue>& kit, const QString& summary,
                        core::CalendarDay today);
ListTable missingTable(const std::vector<core::MissingItem>& missing, core::CalendarDay today);
/// `days`: how far ahead the rows look.
ListTable dueTable(const std::vector<core::DueRow>& rows, int days, core::CalendarDay today);
/// `kitTypes`: of the items that entries are about, by id.
ListTable logTable(const std::vector<core::LogEntry>& entries,
                   const std::map<std::string, std::string>& kitTypes);
ListTable boatsTable(const std::vector<core::BoatCondition>& boats, core::CalendarDay today);

enum class ClubList { Kit, Missing, Due, Log, Boats };

/// Reads one of them; `within`: of the due list, how many days ahead. Throws as the club's answers do.
core::Result<ListTable> readList(const core::Club& club, ClubList list, core::CalendarDay today,
                                 int within = 90);

/// The kit list, for a button that prints it.
core::Result<ListTable> readKitList(const core::Club& club, core::CalendarDay today);

} // namespace app
