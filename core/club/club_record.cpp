#include "core/club/club_record.h"
#include "core/base/error_code.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/club_state.h"
#include "core/record/verification.h"

#include "core/base/plain_text.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
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

/// The facts about that person whose private cells are still there, or may still come from another machine,
/// and how many cells that are.
std::pair<PrivateErased, int> stillKept(Database& database, const std::string& key) {
    PrivateErased kept;
    int cells = 0;
    for (const Fact& fact : factTable::ofRow(database, std::string(sheet(SheetId::People).table), key))
        if (const int count = privateTable::isNotHere(database, fact.id)
                                  ? static_cast<int>(factTable::rowOf(fact).sealed.size())
                                  : privateTable::cellsOf(database, fact.id);
            count > 0) {
            kept.facts.push_back(fact.id);
            cells += count;
        }
    return {kept, cells};
}

} // namespace

Result<int> ClubRecord::eraseMeasures(const std::string& name, const std::string& by) {
    auto erased = m_state->write([&](Ledger& ledger) -> Result<int> {
        Database& database = *m_state->database;
        const auto person = m_state->registerStore.person(name);
        if (!person) return Error{ErrorCode::NoSuchPerson, {name}};
        if (!by.empty() && !m_state->registerStore.person(by)) return Error{ErrorCode::NoSuchPerson, {by}};
        const auto [kept, cells] = stillKept(database, keyOf(sheet(SheetId::People), {person->name}));
        if (cells > 0) ledger.append(kept, by);
        return cells;
    });
    // What was erased stands in the log, too.
    if (erased && !m_state->database->emptyLog()) return Error{ErrorCode::ErasedNotYetInLog};
    return erased;
}

std::optional<ClubOrigin> ClubRecord::origin() const {
    const auto oldest = factTable::oldest(*m_state->database);
    if (!oldest) return std::nullopt;
    return ClubOrigin{oldest->hash, factTable::recordedAt(*oldest)};
}

} // namespace core
