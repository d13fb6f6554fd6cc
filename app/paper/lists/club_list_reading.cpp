#include "app/paper/lists/club_lists.h"

#include "app/text/text.h"
#include "core/base/plain_text.h"
#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_plans.h"
#include "core/club/club_register.h"
#include "core/plan/make_ready/make_ready.h"

#include <algorithm>
#include <set>
#include <tuple>

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

core::Result<ListTable> readStocktake(const core::Club& club, core::CalendarDay today,
                                      const std::vector<std::string>& asked) {
    std::vector<core::Item> kit;
    std::set<std::string> counted;
    for (const std::string& place : asked.empty() ? club.register_().placesHere(today) : asked) {
        if (!counted.insert(core::foldName(place)).second) continue; // given twice
        auto there = club.answers().kitToCount(place, today);
        if (!there) return there.error();
        std::ranges::sort(*there, {}, [](const core::Item& item) {
            return std::tie(item.kitType, item.size, item.person, item.tag);
        });
        kit.insert(kit.end(), there->begin(), there->end());
    }
    return stocktakeTable(kit);
}

core::Result<ListTable> readMakeReady(const core::Club& club, core::CalendarDay today,
                                      const std::vector<std::string>& places) {
    const auto plan = club.plans().makeReady({.places = places, .boats = {}}, today);
    return plan ? makeReadyTable(*plan) : core::Result<ListTable>(plan.error());
}

core::Result<ListTable> tableOf(const core::Club& club, ClubList list, core::CalendarDay today,
                                const ListReach& reach) {
    switch (list) {
    case ClubList::Kit:
        return kitTable(club.answers().kitWithNextDue(today), today);
    case ClubList::Missing:
        return missingTable(club.answers().missingItems(), today);
    case ClubList::Due:
        return dueTable(club.answers().dueList(today, reach.within), reach.within, today);
    case ClubList::Log:
        return readLog(club);
    case ClubList::Stocktake:
        return readStocktake(club, today, reach.places);
    case ClubList::MakeReady:
        return readMakeReady(club, today, reach.places);
    case ClubList::Boats:
        break;
    }
    return boatsTable(club.answers().boatConditions(today), today);
}

} // namespace

core::Result<ListTable> readList(const core::Club& club, ClubList list, core::CalendarDay today,
                                 const ListReach& reach) {
    core::Result<ListTable> table = tableOf(club, list, today, reach);
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
