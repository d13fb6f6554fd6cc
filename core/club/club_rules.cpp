#include "core/base/error_code.h"
#include "core/club/club_register.h"
#include "core/club/club_state.h"

namespace core {

Outcome ClubRegister::removeRule(const Cells& seen, const std::string& by, Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        const Sheet& rules = core::sheet(SheetId::LifeRules);
        const auto row = m_state->registerStore.find(rules.id, keyOf(rules, seen));
        const std::string name = nameOfRow(rules.id, seen);
        if (!row) return Error{ErrorCode::NoSuchRow, {std::string(rules.name()), name}};
        if (*row != seen) return Error{ErrorCode::RowChanged, {name}};
        RowWritten gone =
            rowWritten({.sheet = rules.id, .keyCells = Cells(row->begin(), row->begin() + rules.keyColumns)});
        gone.isGone = true;
        ledger.append(gone, by);
        m_state->heldCheck.forget(); // it judges by the rules of before
        m_state->endUrgentOfWhole(ledger, moment.today);
        return Done{};
    });
}

} // namespace core
