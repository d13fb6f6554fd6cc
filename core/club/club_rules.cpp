#include "core/base/error_code.h"
#include "core/club/club_register.h"
#include "core/club/club_state.h"
#include "core/upkeep/same_name.h"

#include <algorithm>

namespace core {
namespace {

/// Service records that stand of a rule: an export of them without it would not come in again.
int recordsOf(const ClubState& state, const std::string& kitType, const std::string& part,
              const std::string& rule) {
    int count = 0;
    for (const ItemRecord& each : state.registerStore.allRecords())
        if (sameName(each.item.kitType, kitType))
            count += static_cast<int>(std::ranges::count_if(each.services, [&](const ServiceRecord& record) {
                return sameName(record.part, part) && sameName(record.rule, rule);
            }));
    return count;
}

} // namespace

Outcome ClubRegister::removeRule(const Cells& seen, const std::string& by, Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        const Sheet& rules = core::sheet(SheetId::LifeRules);
        const auto row = m_state->registerStore.find(rules.id, keyOf(rules, seen));
        const std::string name = nameOfRow(rules.id, seen);
        if (!row) return Error{ErrorCode::NoSuchRow, {std::string(rules.name()), name}};
        if (*row != seen) return Error{ErrorCode::RowChanged, {name}};
        if (const int records = recordsOf(*m_state, row->at(0), row->at(1), row->at(2)); records > 0)
            return Error{ErrorCode::RuleWithRecords, {row->at(2), row->at(0), std::to_string(records)}};
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
