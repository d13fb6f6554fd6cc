#include "core/club/club_record.h"
#include "core/base/error_code.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/club_state.h"
#include "core/record/verification.h"

#include "core/base/given_text.h"
#include "core/base/plain_text.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "core/store/machine_names.h"
#include "core/store/pin_tables.h"
#include "core/store/private_table.h"

#include <algorithm>
#include <fmt/format.h>

namespace core {

Result<Verification> ClubRecord::verify(bool rebuild) {
    return guarded([&]() -> Result<Verification> {
        if (rebuild) {
            Transaction transaction(*m_state->database);
            rebuildTables(*m_state->database, *m_state->database);
            transaction.commit();
        }
        return verifyStore(*m_state->database);
    });
}

namespace {

/// The facts about that person whose private parts are still there, or may still come from another machine,
/// and how many measures those are.
std::pair<PrivateErased, int> stillKept(Database& database, const std::string& person) {
    PrivateErased kept;
    int measures = 0;
    const std::string key = keyOf(sheet(SheetId::People), {person});
    for (const Fact& fact : factTable::ofRow(database, std::string(sheet(SheetId::People).table), key))
        if (const int count = privateTable::isNotHere(database, fact.id)
                                  ? static_cast<int>(factTable::rowOf(fact).sealed.size())
                                  : privateTable::cellsOf(database, fact.id);
            count > 0) {
            kept.facts.push_back(fact.id);
            measures += count;
        }
    for (std::string& fact : pinTables::factsThatSet(database, person))
        if (privateTable::isNotHere(database, fact) || privateTable::cellsOf(database, fact) > 0)
            kept.facts.push_back(std::move(fact));
    return {kept, measures};
}

} // namespace

Result<int> ClubRecord::eraseMeasures(const std::string& name, const std::string& by) {
    auto erased = m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Result<int> {
        Database& database = *m_state->database;
        const auto person = m_state->registerStore.person(name);
        if (!person) return Error{ErrorCode::NoSuchPerson, {name}};
        if (!by.empty() && !m_state->registerStore.person(by)) return Error{ErrorCode::NoSuchPerson, {by}};
        const auto [kept, measures] = stillKept(database, person->name);
        if (!kept.facts.empty()) ledger.append(kept, by);
        return measures;
    });
    // What was erased stands in the log, too.
    if (erased && !m_state->database->emptyLog()) return Error{ErrorCode::ErasedNotYetInLog};
    return erased;
}

ThisMachine ClubRecord::thisMachine() const {
    Database& database = *m_state->database;
    const ReadSnapshot asOfNow(database);
    ThisMachine here{.machine = m_state->machineToGoOn()};
    if (here.machine.empty()) return here;
    here.name = machineNames::of(database, here.machine);
    if (const auto newest = factTable::newestOf(database, here.machine)) here.facts = newest->seq;
    return here;
}

Outcome ClubRecord::nameMachine(const std::string& given, const std::string& by) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        const auto name = nameFrom(withoutOuterBlanks(given), "name");
        if (!name) return name.error();
        if (name->empty()) return Error{ErrorCode::NameMissing};
        if (!by.empty() && !m_state->registerStore.person(by)) return unknownPerson(by);
        const std::string machine = ledger.machineToGoOn();
        if (machine.empty() || machineNames::of(*m_state->database, machine) != *name)
            ledger.append(MachineNamed{*name}, by);
        return Done{};
    });
}

std::optional<ClubOrigin> ClubRecord::origin() const {
    const auto oldest = factTable::oldest(*m_state->database);
    if (!oldest) return std::nullopt;
    return ClubOrigin{oldest->hash, factTable::recordedAt(*oldest)};
}

} // namespace core
