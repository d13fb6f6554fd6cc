#include "core/answers/service_round.h"
#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/club/club_kit.h"
#include "core/club/club_state.h"
#include "core/club/scanned_code.h"
#include "core/store/item_states.h"

namespace core {
namespace {

/// What each scan means, and the items that they mean.
void readScans(const ClubState& state, ServiceRoundInput& input) {
    for (const std::string& text : input.order.scans) {
        const auto code = scannedCode(ScannedText::typed(text), *state.database, state.registerStore,
                                      input.moment.today.year());
        const bool isKit = code && code->tagClass() == TagClass::Kit;
        input.codes.push_back(isKit ? std::optional(code->text()) : std::nullopt);
        if (!isKit || input.items.contains(code->text())) continue;
        if (auto record = state.registerStore.record(code->text())) {
            StateApart apart = itemStates::now(*state.database, code->text(), record->services).apart;
            input.items.emplace(code->text(),
                                ItemBeforeRound{std::move(*record),
                                                openOnly(state.registerStore.logOfItem(code->text())),
                                                std::move(apart)});
        }
    }
}

void writeEntry(Ledger& ledger, const RoundEntry& entry, const ServiceOrder& order) {
    for (const LifeRule& rule : entry.rules) {
        RowWritten row = rowWritten(
            SheetId::Services,
            {{"code", entry.item}, {"part", rule.part}, {"rule", rule.name}, {"day", order.day.iso()}},
            {{"passed", order.passed ? "yes" : "no"}, {"by", order.by}, {"note", order.note}});
        row.at = entry.at;
        ledger.append(row, order.by);
    }
    if (entry.state) {
        const StateApart& state = *entry.state;
        RowWritten row = stateGiven(entry.item, std::string(nameOf(state.state)),
                                    state.since.value_or(order.day), state.why);
        row.rule = state.rule;
        ledger.append(row, order.by);
    }
}

} // namespace

Result<ServiceRound> ClubKit::recordService(const ServiceOrder& given, Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Result<ServiceRound> {
        ServiceRoundInput input{.order = given, .moment = moment};
        ServiceOrder& order = input.order;
        if (order.day > moment.today)
            return Error{ErrorCode::ServiceInFuture, {order.day.iso(), moment.today.iso()}};
        const auto person = m_state->registerStore.person(order.by);
        if (!person) return Error{ErrorCode::NoSuchPerson, {order.by}};
        if (const Outcome here = stillHere(person->name, person->until, order.day); !here)
            return here.error();
        order.by = person->name;
        const auto note = proseFrom(order.note, "note");
        if (!note) return note.error();
        order.note = *note;
        input.kitTypes = m_state->registerStore.allKitTypes();
        if (!isRuleOfClub(order.rule, input.kitTypes)) return Error{ErrorCode::NoSuchRule, {order.rule}};
        readScans(*m_state, input);
        ServiceRoundAnswer answer = serviceRoundOf(input);
        for (const RoundEntry& entry : answer.entries)
            writeEntry(ledger, entry, order);
        m_state->endUrgentOfWhole(ledger, moment.today);
        return std::move(answer.round);
    });
}

} // namespace core
