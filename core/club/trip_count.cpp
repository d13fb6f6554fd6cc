#include "core/club/trip_count.h"

#include "core/club/club_state.h"
#include "core/register/typed_rows.h"
#include "core/store/fact_table.h"

namespace core {
namespace {

std::optional<SignOff> launchOf(const ClubState& state, const CheckRun& run) {
    const auto signedBack = checkTables::signOff(*state.database, run.check);
    const std::string& boat = run.location.name;
    return signedBack ? checkTables::newestLaunchSignedBefore(*state.database, boat, signedBack->stamp)
                      : state.checkStore.outOn(boat);
}

bool wasToldBefore(Database& database, const std::string& key, const std::string& stamp) {
    const auto facts = factTable::ofRow(database, std::string(sheet(SheetId::Use).table), key);
    return !facts.empty() && facts.front().stamp() < stamp;
}

void countUse(ClubState& state, const ItemRecord& record, CalendarDay day, const TripUse& added,
              const std::string& takenBack) {
    const Use use = dayWith(added, record.use, day);
    RowWritten row = rowWritten(SheetId::Use, {{"code", record.item.id}, {"day", day.iso()}},
                                {{"hours", numberText(use.hours)}, {"launches", numberText(use.launches)}});
    const bool isNothing = use.hours == 0 && use.launches == 0;
    if (!takenBack.empty() && isNothing && !wasToldBefore(*state.database, row.key, takenBack)) {
        row.isGone = true;
        row.set.clear();
    }
    state.ledger.append(row, {});
}

} // namespace

void countTrip(ClubState& state, const CheckRun& run, const TripUse& added, const std::string& takenBack) {
    const auto launch = launchOf(state, run);
    if (!launch || added.isNone()) return;
    for (const ItemRecord& record : state.checkStore.itemsSeenIn(launch->check))
        countUse(state, record, run.openedAt.localDay(), added, takenBack);
}

} // namespace core
