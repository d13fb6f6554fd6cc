#include "core/club/act_effects.h"

#include "core/club/club_state.h"
#include "core/register/typed_rows.h"
#include "core/store/check_acts.h"
#include "core/store/fact_table.h"

namespace core {
namespace {

std::string tableOfUse() {
    return std::string(sheet(SheetId::Use).table);
}

std::optional<SignOff> launchOf(const ClubState& state, const CheckRun& run) {
    const auto signedBack = checkTables::signOff(*state.database, run.check);
    const std::string& boat = run.location.name;
    return signedBack ? checkTables::newestLaunchSignedBefore(*state.database, boat, signedBack->stamp)
                      : state.checkStore.outOn(boat);
}

RowWritten useRow(const CheckRun& run, const std::string& code, const Use& use) {
    RowWritten row = rowWritten(SheetId::Use, {{"code", code}, {"day", use.day.iso()}},
                                {{"hours", numberText(use.hours)}, {"launches", numberText(use.launches)}});
    row.check = run.check;
    return row;
}

/// The rows that an account of a trip wrote: the facts right after it.
std::vector<RowWritten> rowsCountedBy(const ClubState& state, const CheckRun& run, const RecordedAct& trip) {
    std::vector<RowWritten> rows;
    auto fact = factTable::byId(*state.database, trip.id);
    while (fact && (fact = factTable::beside(*state.database, *fact, 1)) && fact->kind == tableOfUse()) {
        RowWritten row = factTable::rowOf(*fact);
        if (row.check != run.check) break;
        rows.push_back(std::move(row));
    }
    return rows;
}

/// What somebody wrote of that day since then, by hand or by an import, stays.
void takeBackUse(ClubState& state, Ledger& ledger, const CheckRun& run, const RowWritten& counted,
                 const TripUse& less, const std::string& tripStamp) {
    const auto facts = factTable::ofRow(*state.database, tableOfUse(), counted.key);
    const auto record = state.registerStore.record(counted.keyCells.front());
    const auto day = CalendarDay::parse(counted.keyCells.back());
    if (factTable::rowOf(facts.back()).check.empty() || !record || !day) return;
    const Use use = dayWith(less, record->use, *day);
    RowWritten row = useRow(run, record->item.id, use);
    if (use.hours == 0 && use.launches == 0 && facts.front().stamp() > tripStamp) {
        row.isGone = true;
        row.set.clear();
    }
    ledger.append(row, {});
}

} // namespace

void countTrip(ClubState& state, Ledger& ledger, const CheckRun& run, const TripUse& added) {
    const auto launch = launchOf(state, run);
    if (!launch || added.isNone()) return;
    for (const ItemRecord& record : state.checkStore.itemsSeenIn(launch->check))
        ledger.append(useRow(run, record.item.id, dayWith(added, record.use, run.openedAt.localDay())), {});
}

void uncountTrip(ClubState& state, Ledger& ledger, const CheckRun& run, const RecordedAct& trip) {
    const auto told = checkActs::operationTold(*state.database, trip.id);
    const auto before = checkActs::operation(*state.database, run.check);
    const TripUse less = addedBy(before.value_or(Operation{.launches = 0}), told);
    for (const RowWritten& row : rowsCountedBy(state, run, trip))
        takeBackUse(state, ledger, run, row, less, trip.stamp);
}

} // namespace core
