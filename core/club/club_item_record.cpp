#include "core/answers/item_record.h"
#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/club/act_effects.h"
#include "core/club/club_kit.h"
#include "core/club/club_state.h"
#include "core/exchange/csv_import.h"
#include "core/store/check_acts.h"
#include "core/store/fact_table.h"
#include "core/tag/reason.h"
#include "core/upkeep/anchor.h"
#include "core/upkeep/same_name.h"

#include <algorithm>
#include <fmt/ranges.h>

namespace core {
namespace {

bool waits(const LifeRule& rule, const ItemRecord& record) {
    return rule.kind == RuleKind::AfterEvent && (rule.part.empty() || partOf(record, rule) != nullptr);
}

std::vector<std::string> eventsOf(const ItemRecord& record, const KitType& type) {
    std::vector<std::string> events;
    for (const LifeRule& rule : type.rules)
        if (waits(rule, record) && std::ranges::none_of(events, [&](const std::string& known) {
                return sameName(known, rule.event);
            }))
            events.push_back(rule.event);
    return events;
}

/// As the rules spell it.
Result<std::string> knownEvent(const std::string& event, const ItemRecord& record, const KitType& type) {
    const auto known = eventsOf(record, type);
    for (const std::string& each : known)
        if (sameName(each, event)) return each;
    if (known.empty()) return Error{ErrorCode::NoRuleWaits, {event, type.name}};
    return Error{ErrorCode::NoRuleWaitsFor, {event, type.name, fmt::format("{}", fmt::join(known, ", "))}};
}

/// Whether a rule was satisfied since the event was told, so that another one of the day has to be told
/// again.
bool isPutRight(const std::string& event, const ItemRecord& record, const KitType& type) {
    return std::ranges::any_of(type.rules, [&](const LifeRule& rule) {
        return waits(rule, record) && sameName(rule.event, event) && openEventOf(rule, record) == nullptr;
    });
}

bool isOf(const Cells& cells, const ServiceEntry& record) {
    const auto given = PartialDay::parse(record.day), has = PartialDay::parse(cells[3]);
    return sameName(cells[1], record.part) && sameName(cells[2], record.rule) && given && has &&
           given->firstDay() == has->firstDay();
}

/// The facts that told of the record which counts now, newest first: back to the one that said how it ended.
/// What stood there before, of the same day, counts again.
std::vector<Fact> tellersOf(Database& database, const std::string& key) {
    const Sheet& services = sheet(SheetId::Services);
    auto facts = factTable::ofRow(database, std::string(services.table), key);
    std::erase_if(facts, [&](const Fact& fact) { return checkActs::isTakenBack(database, fact.id); });
    const auto saysHowItEnded = [&](const Fact& fact) {
        return std::ranges::any_of(factTable::rowOf(fact).set, [&](const auto& cell) {
            return cell.first == services.indexOf("passed");
        });
    };
    std::vector<Fact> tellers;
    for (auto fact = facts.rbegin(); fact != facts.rend(); ++fact) {
        tellers.push_back(*fact);
        if (saysHowItEnded(*fact)) break;
    }
    return tellers;
}

/// Empty: the fact gives that item none.
std::string stateGivenBy(const Fact& fact, const std::string& code) {
    if (fact.kind != sheet(SheetId::Items).table) return {};
    const RowWritten row = factTable::rowOf(fact);
    for (const auto& [column, text] : row.set)
        if (column == sheet(SheetId::Items).indexOf("state") && row.keyCells.front() == code) return text;
    return {};
}

bool isByRule(const Fact& fact, const std::string& rule) {
    return sameName(factTable::rowOf(fact).rule, rule);
}

/// The fact of the state that the item was given with that record: behind the records that its round wrote of
/// the item. An import gives no states by its records, and so none by a rule.
std::optional<Fact> stateOfRound(Database& database, Fact record, const std::string& code) {
    const std::string by = record.by;
    const Cells key = factTable::rowOf(record).keyCells;
    const std::string &rule = key[2], &day = key[3];
    while (const auto next = factTable::beside(database, record, 1)) {
        if (next->by != by) break;
        if (!stateGivenBy(*next, code).empty()) return isByRule(*next, rule) ? next : std::nullopt;
        if (next->kind != sheet(SheetId::Services).table) break;
        const Cells other = factTable::rowOf(*next).keyCells;
        if (other[0] != code || other[3] != day) break; // another round's
        record = *next;
    }
    return std::nullopt;
}

/// The state that a failed record of that rule gave the item later, once a damage was taken back.
std::optional<Fact> stateByRule(Database& database, const Fact& record, const std::string& code,
                                const std::string& rule) {
    for (const Fact& fact :
         factTable::ofRow(database, std::string(sheet(SheetId::Items).table), foldName(code)))
        if (fact.stamp() > record.stamp() && isByRule(fact, rule) &&
            stateGivenBy(fact, code) == nameOf(ItemState::Unserviceable) &&
            !checkActs::isTakenBack(database, fact.id))
            return fact;
    return std::nullopt;
}

Error noSuchRecord(const ClubState& state, const Item& item, const ServiceEntry& record) {
    const std::string table(sheet(SheetId::Services).table);
    for (const Fact& fact : factTable::ofRowsUnder(*state.database, table, foldName(item.id)))
        if (isOf(factTable::rowOf(fact).keyCells, record))
            return {ErrorCode::RecordWithdrawnAlready, {record.rule, record.day}};
    if (record.part.empty()) return {ErrorCode::NoSuchServiceRecord, {record.rule, record.day, item.tag}};
    return {ErrorCode::NoServiceRecordOfPart, {record.rule, record.part, record.day, item.tag}};
}

RecordWithdrawn withdrawalOf(Database& database, const Cells& cells) {
    const Sheet& services = sheet(SheetId::Services);
    RecordWithdrawn withdrawn{.code = cells[0], .part = cells[1], .rule = cells[2], .day = cells[3]};
    for (const Fact& teller : tellersOf(database, keyOf(services, cells))) {
        withdrawn.acts.push_back(teller.id);
        auto state = stateOfRound(database, teller, cells[0]);
        if (!state && cells[4] == "no") state = stateByRule(database, teller, cells[0], cells[2]);
        if (state) withdrawn.acts.push_back(state->id);
    }
    return withdrawn;
}

} // namespace

std::vector<std::string> ClubKit::eventsFor(const std::string& code) const {
    const auto record = itemRecord(code);
    const auto type = record ? m_state->registerStore.kitType(record->item.kitType) : std::nullopt;
    return type ? eventsOf(*record, *type) : std::vector<std::string>();
}

Result<Happened> ClubKit::happened(const std::string& typed, const std::string& given, CalendarDay on,
                                   const std::string& by, Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Result<Happened> {
        const auto known = knownItem(*m_state, typed);
        if (!known) return known.error();
        const auto type = m_state->registerStore.kitType(known->kitType);
        if (!type) return Error{ErrorCode::NoSuchKitType, {known->kitType}};
        const auto record = m_state->registerStore.record(known->id);
        const auto event = knownEvent(given, *record, *type);
        if (!event) return event.error();
        if (on > moment.today) return Error{ErrorCode::HappeningInFuture, {on.iso(), moment.today.iso()}};
        const Sheet& sheet = core::sheet(SheetId::Happenings);
        const CellTexts cells{{"code", known->id}, {"event", *event}, {"day", on.iso()}};
        const auto plan = planRows(sheet, {cells}, m_state->registerStore, moment.today);
        if (!plan.rejected.empty()) return plan.rejected.front().reason;
        Happened happened{.item = known->name(), .event = *event};
        const bool isToday = on == moment.today;
        happened.isNew = !plan.changes.empty() || (isToday && isPutRight(*event, *record, *type));
        if (happened.isNew) {
            RowWritten row = plan.changes.empty() ? rowWritten(SheetId::Happenings, cells, {})
                                                  : rowWritten(plan.changes[0]);
            if (isToday) row.at = moment.at;
            ledger.append(row, by);
        }
        for (RuleDue& due : dueDatesOf(*m_state->registerStore.record(known->id), *type, moment.today))
            if (due.rule.kind == RuleKind::AfterEvent && sameName(due.rule.event, *event))
                happened.dues.push_back(std::move(due));
        return happened;
    });
}

std::vector<ServiceEntry> ClubKit::serviceRecords(const std::string& code) const {
    std::vector<ServiceEntry> records;
    const auto known = item(code);
    if (!known) return records;
    for (const Cells& cells : m_state->registerStore.where(SheetId::Services, "code", known->id))
        records.push_back({.rule = cells[2],
                           .part = cells[1],
                           .day = cells[3],
                           .passed = cells[4] != "no",
                           .by = cells[5],
                           .note = cells[6]});
    std::ranges::stable_sort(records, std::greater(), &ServiceEntry::day);
    return records;
}

Outcome ClubKit::withdrawRecord(const std::string& typed, const ServiceEntry& record, const std::string& why,
                                const std::string& by, Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        const auto known = knownItem(*m_state, typed);
        if (!known) return known.error();
        const auto rows = m_state->registerStore.where(SheetId::Services, "code", known->id);
        const auto row = std::ranges::find_if(rows, [&](const Cells& cells) { return isOf(cells, record); });
        if (row == rows.end()) return noSuchRecord(*m_state, *known, record);
        const auto reason = reasonFrom(why);
        if (!reason) return reason.error();
        RecordWithdrawn withdrawn = withdrawalOf(*m_state->database, *row);
        withdrawn.reason = *reason;
        withdrawn.at = moment.at;
        ledger.append(withdrawn, by);
        judgeRoundsAnew(*m_state, ledger, known->id, moment.today);
        m_state->endUrgentOfWhole(ledger, moment.today);
        return Done{};
    });
}

} // namespace core
