#include "core/answers/service_round.h"
#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/club/act_effects.h"
#include "core/club/club_kit.h"
#include "core/club/club_state.h"
#include "core/club/scanned_code.h"
#include "core/store/item_states.h"
#include "core/upkeep/same_name.h"

#include <algorithm>

namespace core {
namespace {

std::optional<ItemBeforeRound> itemBefore(const ClubState& state, const std::string& code) {
    auto record = state.registerStore.record(code);
    if (!record) return std::nullopt;
    StateApart apart = itemStates::now(*state.database, code, record->services).apart;
    return ItemBeforeRound{std::move(*record), openOnly(state.registerStore.logOfItem(code)),
                           std::move(apart)};
}

/// What each scan means, and the items that they mean.
void readScans(const ClubState& state, ServiceRoundInput& input) {
    for (const std::string& text : input.order.scans) {
        const auto code = scannedCode(ScannedText::typed(text), *state.database, state.registerStore,
                                      input.moment.today.year());
        const bool isKit = code && code->tagClass() == TagClass::Kit;
        input.codes.push_back(isKit ? std::optional(code->text()) : std::nullopt);
        if (!isKit || input.items.contains(code->text())) continue;
        if (auto before = itemBefore(state, code->text()))
            input.items.emplace(code->text(), std::move(*before));
    }
}

void giveState(Ledger& ledger, const std::string& item, const StateApart& state, CalendarDay day,
               const std::string& by) {
    RowWritten row = stateGiven(item, std::string(nameOf(state.state)), state.since.value_or(day), state.why);
    row.rule = state.rule;
    ledger.append(row, by);
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
    if (entry.state) giveState(ledger, entry.item, *entry.state, order.day, order.by);
}

/// Empty: the row says nothing of how it ended.
std::optional<ServiceRecord> recordIn(const RowChange& change, const std::vector<ServiceRecord>& services) {
    const int passed = sheet(SheetId::Services).indexOf("passed");
    const auto day = PartialDay::parse(change.keyCells[3]);
    if (!day || (!change.isNew && std::none_of(change.set.begin(), change.set.end(),
                                               [&](const auto& cell) { return cell.first == passed; })))
        return std::nullopt;
    for (const ServiceRecord& record : services)
        if (sameName(record.part, change.keyCells[1]) && sameName(record.rule, change.keyCells[2]) &&
            record.day == day->firstDay())
            return record;
    return std::nullopt;
}

} // namespace

void writeRecord(ClubState& state, Ledger& ledger, const RowChange& change, const std::string& by,
                 Moment moment) {
    const std::string& item = change.keyCells.front();
    const auto before = itemBefore(state, item);
    appendRows(*state.database, ledger, {change}, by, moment);
    if (!before) return;
    const auto services = state.registerStore.record(item)->services;
    const auto record = recordIn(change, services);
    if (const auto given = record ? stateByRecord(*before, services, *record) : std::nullopt)
        giveState(ledger, item, *given, record->day, by);
}

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
