#include "core/club/act_effects.h"

#include "core/club/club_state.h"
#include "core/register/cell_values.h"
#include "core/store/check_acts.h"
#include "core/store/fact_table.h"
#include "core/store/sign_off_tables.h"

#include <algorithm>
#include <span>

namespace core {
namespace {

std::string tableOfUse() {
    return std::string(sheet(SheetId::Use).table);
}

std::optional<SignOff> launchOf(const ClubState& state, const CheckRun& run) {
    const auto signedBack = signOffTables::signOff(*state.database, run.check);
    const std::string& boat = run.location.name;
    return signedBack ? signOffTables::newestLaunchSignedBefore(*state.database, boat, signedBack->stamp)
                      : state.checkStore.outOn(boat);
}

RowWritten useRow(const CheckRun& run, const std::string& code, const Use& use) {
    RowWritten row = rowWritten(SheetId::Use, {{"code", code}, {"day", use.day.iso()}},
                                {{"hours", numberText(use.hours)}, {"launches", numberText(use.launches)}});
    row.check = run.check;
    return row;
}

/// The facts of the rows that an account of a trip wrote: those right after it.
std::vector<Fact> countedBy(const ClubState& state, const CheckRun& run, const RecordedAct& trip) {
    std::vector<Fact> facts;
    auto fact = factTable::byId(*state.database, trip.id);
    while (fact && (fact = factTable::beside(*state.database, *fact, 1)) && fact->kind == tableOfUse()) {
        if (factTable::rowOf(*fact).check != run.check) break;
        facts.push_back(*fact);
    }
    return facts;
}

/// The day's use as those facts of its row leave it; empty: nothing is told of that day.
std::optional<Use> useAfter(std::span<const Fact> facts, CalendarDay day) {
    const Sheet& columns = sheet(SheetId::Use);
    std::optional<Use> use;
    for (const Fact& fact : facts) {
        const RowWritten row = factTable::rowOf(fact);
        if (row.isGone) {
            use.reset();
            continue;
        }
        if (!use) use = Use{day, 0, 0};
        for (const auto& [column, text] : row.set) {
            if (column == columns.indexOf("hours")) use->hours = numberFrom(text).value_or(0);
            if (column == columns.indexOf("launches")) use->launches = numberFrom(text).value_or(0);
        }
    }
    return use;
}

/// Takes from the day what that fact added to it. What somebody wrote of the day since then, by hand or by an
/// import, stays.
void takeBackUse(ClubState& state, Ledger& ledger, const CheckRun& run, const Fact& counted) {
    const RowWritten row = factTable::rowOf(counted);
    const auto day = CalendarDay::parse(row.keyCells.back());
    const auto facts = factTable::ofRow(*state.database, tableOfUse(), row.key);
    const auto at = std::ranges::find(facts, counted.id, &Fact::id);
    if (!day || at == facts.end() ||
        std::any_of(at, facts.end(), [](const Fact& each) { return factTable::rowOf(each).check.empty(); }))
        return;
    const auto before = useAfter({facts.begin(), at}, *day);
    const Use was = before.value_or(Use{*day, 0, 0});
    const Use counting = useAfter({facts.begin(), at + 1}, *day).value_or(was);
    const Use now = useAfter(facts, *day).value_or(Use{*day, 0, 0});
    const Use left{*day, now.hours - (counting.hours - was.hours),
                   now.launches - (counting.launches - was.launches)};
    RowWritten written = useRow(run, row.keyCells.front(), left);
    if (!before && left.hours == 0 && left.launches == 0) {
        written.isGone = true;
        written.set.clear();
    }
    ledger.append(written, {});
}

} // namespace

void countTrip(ClubState& state, Ledger& ledger, const CheckRun& run, const TripUse& added) {
    const auto launch = launchOf(state, run);
    if (!launch || added.isNone()) return;
    for (const ItemRecord& record : state.checkStore.itemsSeenIn(launch->check))
        ledger.append(useRow(run, record.item.id, dayWith(added, record.use, run.openedAt.localDay())), {});
}

void uncountTrip(ClubState& state, Ledger& ledger, const CheckRun& run, const RecordedAct& trip) {
    for (const Fact& counted : countedBy(state, run, trip))
        takeBackUse(state, ledger, run, counted);
}

} // namespace core
