#include "core/club/act_effects.h"

#include "core/answers/service_round.h"
#include "core/club/club_state.h"
#include "core/store/check_acts.h"
#include "core/store/fact_table.h"
#include "core/store/item_states.h"

namespace core {
namespace {

/// The log entry that was written with the damage: the fact right before it. Empty when it is closed.
std::optional<LogEntry> entryOf(const ClubState& state, const RecordedAct& damage) {
    Database& database = *state.database;
    const auto fact = factTable::byId(database, damage.id);
    const auto before = fact ? factTable::beside(database, *fact, -1) : std::nullopt;
    if (!before || before->kind != sheet(SheetId::Log).table) return std::nullopt;
    const std::string id = logEntryId(factTable::rowOf(*before).keyCells);
    for (LogEntry& entry : openOnly(state.registerStore.logOfItem(damage.code)))
        if (entry.id == id) return std::move(entry);
    return std::nullopt;
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
        auto facts = factTable::ofRow(*state.database, std::string(sheet(SheetId::Services).table), row.key);
        std::erase_if(facts,
                      [&](const Fact& fact) { return checkActs::isTakenBack(*state.database, fact.id); });
        // A round is recorded by somebody; what came with an import decides nothing where a state is given.
        if (!facts.empty() && facts.back().stamp() > stamp && !facts.back().by.empty())
            since.push_back(record);
    }
    return since;
}

} // namespace

void judgeRoundsAnew(ClubState& state, Ledger& ledger, const std::string& code, CalendarDay today) {
    const auto services = state.registerStore.record(code)->services;
    const StateNow now = itemStates::now(*state.database, code, services);
    if (now.apartStamp.empty()) return; // no state was ever given: the records decide by themselves
    const auto since = recordedSince(state, code, services, now.apartStamp);
    const auto failed = failedRecord(since);
    if (now.apart.state == ItemState::Serviceable && failed) {
        RowWritten row = stateGiven(code, "unserviceable", failed->day, {});
        row.rule = failed->rule;
        ledger.append(row, {});
        return;
    }
    if (now.apart.byFailedRecord && !since.empty() && !failedSince(services) &&
        !isHeldByLog(openOnly(state.registerStore.logOfItem(code))))
        ledger.append(stateGiven(code, "serviceable", today, {}), {});
}

void endDamage(ClubState& state, Ledger& ledger, const RecordedAct& damage, const std::string& closing,
               const std::string& by, CalendarDay today) {
    if (const auto entry = entryOf(state, damage)) closeEntry(ledger, *entry, closing, by, today);
    judgeRoundsAnew(state, ledger, damage.code, today);
}

} // namespace core
