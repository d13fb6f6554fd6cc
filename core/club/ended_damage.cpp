#include "core/club/act_effects.h"

#include "core/club/club_state.h"
#include "core/store/fact_table.h"

#include <algorithm>

namespace core {
namespace {

CellTexts keyOfEntry(const LogEntry& entry) {
    return {{"boat", entry.boat}, {"code", entry.item.id}, {"day", entry.day.iso()}, {"text", entry.text}};
}

/// The log entry that was written with the damage: the fact right before it. Empty when it is closed.
std::optional<LogEntry> entryOf(const ClubState& state, const RecordedAct& damage) {
    Database& database = *state.database;
    const auto fact = factTable::byId(database, damage.id);
    const auto before = fact ? factTable::beside(database, *fact, -1) : std::nullopt;
    if (!before || before->kind != sheet(SheetId::Log).table) return std::nullopt;
    const std::string key = factTable::rowOf(*before).key;
    for (LogEntry& entry : openOnly(state.registerStore.logOfItem(damage.code)))
        if (rowWritten(SheetId::Log, keyOfEntry(entry), {}).key == key) return std::move(entry);
    return std::nullopt;
}

void closeEntryOf(ClubState& state, Ledger& ledger, const RecordedAct& damage, const std::string& closing,
                  const std::string& by, CalendarDay today) {
    const auto entry = entryOf(state, damage);
    if (!entry) return;
    ledger.append(
        rowWritten(SheetId::Log, keyOfEntry(*entry), {{"closed", today.iso()}, {"closing", closing}}), by);
}

/// Records of service rounds since the item was given the state that it has now.
std::vector<ServiceRecord> recordedSince(const ClubState& state, const std::string& code,
                                         const std::vector<ServiceRecord>& services,
                                         const std::string& stamp) {
    std::vector<ServiceRecord> since;
    for (const ServiceRecord& record : services) {
        const RowWritten row = rowWritten(
            SheetId::Services,
            {{"code", code}, {"part", record.part}, {"rule", record.rule}, {"day", record.day.iso()}}, {});
        const auto facts =
            factTable::ofRow(*state.database, std::string(sheet(SheetId::Services).table), row.key);
        // A round is recorded by somebody; what came with an import decides nothing where a state is given.
        if (!facts.empty() && facts.back().stamp() > stamp && !facts.back().by.empty())
            since.push_back(record);
    }
    return since;
}

} // namespace

void judgeRoundsAnew(ClubState& state, Ledger& ledger, const std::string& code, CalendarDay today) {
    const auto services = state.registerStore.record(code)->services;
    const StateNow now = state.registerStore.stateOf(code, services);
    if (now.apartStamp.empty()) return; // no state was ever given: the records decide by themselves
    const auto since = recordedSince(state, code, services, now.apartStamp);
    const auto failed = failedRecord(since);
    if (now.apart.state == ItemState::Serviceable && failed) {
        RowWritten row = stateGiven(code, "unserviceable", failed->day, {});
        row.rule = failed->rule;
        ledger.append(row, {});
        return;
    }
    const auto open = openOnly(state.registerStore.logOfItem(code));
    const bool isHeldByLog = std::any_of(
        open.begin(), open.end(), [](const LogEntry& entry) { return entry.severity == Severity::Stop; });
    if (now.apart.byFailedRecord && !since.empty() && !failedSince(services) && !isHeldByLog)
        ledger.append(stateGiven(code, "serviceable", today, {}), {});
}

void endDamage(ClubState& state, Ledger& ledger, const RecordedAct& damage, const std::string& closing,
               const std::string& by, CalendarDay today) {
    closeEntryOf(state, ledger, damage, closing, by, today);
    judgeRoundsAnew(state, ledger, damage.code, today);
}

} // namespace core
