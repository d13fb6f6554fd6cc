#include "app/paper/lists/club_lists.h"

#include "app/text/text.h"
#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"

namespace app {
namespace {

core::Result<ListTable> readLog(const core::Club& club) {
    const auto entries = club.log().entries();
    if (!entries) return entries.error();
    std::map<std::string, std::string> kitTypes;
    for (const core::LogEntry& entry : *entries)
        if (!entry.item.id.empty())
            if (const auto item = club.kit().item(entry.item.id)) kitTypes[entry.item.id] = item->kitType;
    return logTable(*entries, kitTypes);
}

core::Result<ListTable> tableOf(const core::Club& club, ClubList list, core::CalendarDay today, int within) {
    switch (list) {
    case ClubList::Kit:
        return kitTable(club.answers().kitWithNextDue(today), today);
    case ClubList::Missing:
        return missingTable(club.answers().missingItems(), today);
    case ClubList::Due:
        return dueTable(club.answers().dueList(today, within), within, today);
    case ClubList::Log:
        return readLog(club);
    case ClubList::Boats:
        break;
    }
    return boatsTable(club.answers().boatConditions(today), today);
}

} // namespace

core::Result<ListTable> readList(const core::Club& club, ClubList list, core::CalendarDay today, int within) {
    core::Result<ListTable> table = tableOf(club, list, today, within);
    if (table) {
        table->club = text(club.name());
        table->day = today;
    }
    return table;
}

core::Result<ListTable> readKitList(const core::Club& club, core::CalendarDay today) {
    return readList(club, ClubList::Kit, today);
}

} // namespace app
