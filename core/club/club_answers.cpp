#include "core/club/club_answers.h"
#include "core/answers/board.h"
#include "core/answers/due_list.h"
#include "core/answers/missing_list.h"
#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/check/boat_check.h"
#include "core/check/finding.h"
#include "core/club/club_state.h"
#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/upkeep/due_date.h"

#include "core/club/club_register.h"

#include "core/record/answer_json.h"

#include <algorithm>
#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <tuple>

namespace core {
namespace {

using Reason = NotReadyReason;

CheckAnswer answerOf(const SignOff& signOff) {
    return answerFrom(nlohmann::json::parse(signOff.answer));
}

Reason reasonOf(Reason::Kind kind, const Item& item) {
    Reason reason;
    reason.kind = kind;
    reason.code = item.code;
    reason.kitType = item.kitType;
    return reason;
}

Reason reasonOf(Reason::Kind kind, const Finding& finding) {
    Reason reason;
    reason.kind = kind;
    reason.finding = finding;
    reason.code = finding.code;
    reason.kitType = finding.kitType;
    return reason;
}

Finding findingOf(const LogEntry& entry) {
    Finding finding;
    finding.kind = FindingKind::LogOpen;
    finding.severity = entry.severity;
    finding.text = entry.text;
    finding.entry = entry.id;
    finding.since = entry.day;
    return finding;
}

Finding findingOf(const Item& item, const RuleDue& due) {
    const bool dated = due.rule.kind == RuleKind::Stamped || due.rule.kind == RuleKind::FromMade ||
                       due.rule.kind == RuleKind::FromFirstUse || due.rule.kind == RuleKind::YearEndFromMade;
    Finding finding;
    finding.kind = due.state == DueState::Undated ? FindingKind::Undated
                   : dated                        ? FindingKind::OutOfDate
                                                  : FindingKind::ServiceOverdue;
    finding.severity = Severity::Stop;
    finding.code = item.code;
    finding.kitType = item.kitType;
    finding.due = due;
    return finding;
}

/// Worst first: what stops, then what is passed or not known, then by the day.
int rankOf(const RuleDue& due) {
    if (due.isPassedStop()) return 0;
    switch (due.state) {
    case DueState::Passed:
        return 1;
    case DueState::WithinTolerance:
        return 2;
    case DueState::Undated:
        return 3;
    case DueState::DueSoon:
        return 4;
    case DueState::Later:
        return 5;
    }
    return 5;
}

bool isListed(const RuleDue& due, CalendarDay today, int days) {
    if (due.due) return daysBetween(today, *due.due) <= days;
    return due.state != DueState::Later; // due without a day, or undated
}

int conditionRank(BoatCondition::Kind kind) {
    return static_cast<int>(kind);
}

/// Judges what has become of a boat's kit since its last return check was signed.
class KitSince {
public:
    KitSince(const ClubState& state, const SignOff& last, CalendarDay today)
        : m_state(state)
        , m_last(last)
        , m_today(today) {}

    std::vector<Reason> reasons() const {
        std::vector<Reason> found;
        for (const ItemRecord& record : m_state.checkStore.itemsSeenIn(m_last.check))
            addOfItem(record, found);
        addShortLines(found);
        for (const LogEntry& entry : openOnly(m_state.registerStore.logOfBoat(m_last.boat)))
            if (entry.severity == Severity::Stop)
                found.push_back(reasonOf(Reason::Kind::LogOpen, findingOf(entry)));
        return found;
    }

    /// What did not come back may have turned up elsewhere: the boat still lacks it, but nobody need search.
    Reason reasonNow(const Finding& finding) const {
        const auto elsewhere =
            finding.kind == FindingKind::NotReturned ? seenElsewhere(finding.code) : std::nullopt;
        Reason reason = reasonOf(elsewhere ? Reason::Kind::SeenElsewhere : Reason::Kind::Finding, finding);
        if (elsewhere) reason.elsewhere = *elsewhere;
        return reason;
    }

private:
    void addOfItem(const ItemRecord& record, std::vector<Reason>& found) const {
        const Item& item = record.item;
        if (item.state == ItemState::Missing)
            return found.push_back(reasonOf(Reason::Kind::BecameMissing, item));
        if (item.state != ItemState::Serviceable)
            return found.push_back(reasonOf(Reason::Kind::BecameUnserviceable, item));
        if (const auto elsewhere = seenElsewhere(item.code)) {
            Reason reason = reasonOf(Reason::Kind::SeenElsewhere, item);
            reason.elsewhere = *elsewhere;
            return found.push_back(reason);
        }
        const auto type = m_state.registerStore.kitType(item.kitType);
        if (!type) return;
        for (const RuleDue& due : dueDatesOf(record, *type, m_today))
            if (due.isPassedStop()) {
                Reason reason = reasonOf(Reason::Kind::BecameDue, item);
                reason.finding = findingOf(item, due);
                return found.push_back(reason);
            }
    }

    std::optional<std::string> seenElsewhere(const std::string& code) const {
        const auto later = checkTables::newestSighting(*m_state.database, code, m_last.stamp);
        const auto run = later ? checkTables::run(*m_state.database, later->check) : std::nullopt;
        return run && run->boat != m_last.boat ? std::optional(run->boat) : std::nullopt;
    }

    /// A boat that went out short and came back whole is still short.
    void addShortLines(std::vector<Reason>& found) const {
        auto run = checkTables::run(*m_state.database, m_last.check);
        if (!run) return;
        run->phase = core::nameOf(Phase::Launch);
        BoatCheckInput input = m_state.checkStore.inputOf(*run, m_today);
        if (input.people.empty()) input.people = peopleOfLaunch();
        for (const Finding& finding : judge(input).findings)
            if (finding.kind == FindingKind::Missing && finding.severity == Severity::Stop)
                found.push_back(reasonOf(Reason::Kind::Finding, finding));
    }

    std::vector<Person> peopleOfLaunch() const {
        std::vector<Person> people;
        if (const auto launch =
                checkTables::newestSignOff(*m_state.database, m_last.boat, core::nameOf(Phase::Launch)))
            for (const std::string& name : checkTables::names(*m_state.database, launch->check))
                if (auto person = m_state.registerStore.person(name)) people.push_back(std::move(*person));
        return people;
    }

    const ClubState& m_state;
    const SignOff& m_last;
    CalendarDay m_today;
};

/// The reason of the boat's last urgent launch, unless a complete launch was signed since.
std::string urgentOf(const ClubState& state, const std::string& boat) {
    const auto launch = checkTables::newestSignOff(*state.database, boat, nameOf(Phase::Launch));
    return launch ? launch->urgent : std::string();
}

BoatCondition conditionOf(const ClubState& state, const Boat& boat, CalendarDay today) {
    BoatCondition condition;
    condition.boat = boat.name;
    condition.boatClass = boat.boatClass;
    const auto last = checkTables::newestSignOff(*state.database, boat.name);
    if (!last) {
        condition.reasons.emplace_back();
        return condition;
    }
    condition.since = Instant::parse(last->at);
    condition.by = last->by;
    condition.urgent = urgentOf(state, boat.name);
    if (last->phase == nameOf(Phase::Launch)) {
        condition.kind = BoatCondition::Kind::Out;
        return condition;
    }
    const KitSince kit(state, *last, today);
    const CheckAnswer answer = answerOf(*last);
    for (const Finding& finding : answer.findings)
        if (finding.severity == Severity::Stop) condition.reasons.push_back(kit.reasonNow(finding));
    if (condition.reasons.empty()) condition.reasons = kit.reasons();
    if (condition.reasons.empty()) {
        condition.kind = BoatCondition::Kind::RescueReady;
        condition.urgent.clear(); // whole again
    }
    return condition;
}

ChainLink linkOf(ChainLink::What what, const std::string& at, const std::string& where,
                 std::vector<std::string> by, const std::string& check) {
    return {what, Instant::parse(at), {}, where, std::move(by), check};
}

std::vector<ChainLink> chainOf(Database& database, const std::string& code, const StateNow& now) {
    std::vector<ChainLink> chain;
    if (const auto launch = checkTables::newestLaunchOf(database, code, now.missingStamp))
        chain.push_back(linkOf(ChainLink::What::Launched, launch->at, launch->boat,
                               checkTables::names(database, launch->check), launch->check));
    if (const auto seen = checkTables::newestSighting(database, code, {}, now.missingStamp)) {
        const auto run = checkTables::run(database, seen->check);
        chain.push_back(linkOf(ChainLink::What::Seen, seen->at, run ? run->boat : "",
                               checkTables::names(database, seen->check), seen->check));
    }
    if (const auto missed = checkTables::signOff(database, now.missingCheck)) {
        const bool counted = missed->phase == nameOf(Phase::Stocktake); // a place does not come back
        chain.push_back(linkOf(counted ? ChainLink::What::MarkedMissing : ChainLink::What::NotReturned,
                               missed->at, missed->boat, {missed->by}, missed->check));
    } else
        chain.push_back({ChainLink::What::MarkedMissing, {}, now.since, {}, {}, {}});
    return chain;
}

} // namespace

std::vector<BoatCondition> ClubAnswers::boatConditions(CalendarDay today) const {
    std::vector<BoatCondition> conditions;
    for (const Boat& boat : ClubRegister(*m_state).boats())
        conditions.push_back(conditionOf(*m_state, boat, today));
    std::stable_sort(conditions.begin(), conditions.end(),
                     [](const BoatCondition& a, const BoatCondition& b) {
                         return conditionRank(a.kind) < conditionRank(b.kind);
                     });
    return conditions;
}

std::vector<MissingItem> ClubAnswers::missingItems() const {
    std::vector<std::string> codes;
    Statement query = m_state->database->prepare(
        "SELECT DISTINCT code FROM item_state WHERE state = 'missing' ORDER BY code");
    while (query.step())
        codes.push_back(query.text(0));
    std::vector<MissingItem> missing;
    for (const std::string& code : codes) {
        const auto item = m_state->registerStore.item(code);
        const StateNow now = m_state->registerStore.stateOf(code, {});
        if (!item || now.state != ItemState::Missing) continue;
        MissingItem entry{code, item->kitType, item->boat, now.since, chainOf(*m_state->database, code, now)};
        for (const ChainLink& link : entry.chain)
            if (link.what == ChainLink::What::Launched) entry.boat = link.where;
        missing.push_back(std::move(entry));
    }
    std::stable_sort(missing.begin(), missing.end(), [](const MissingItem& a, const MissingItem& b) {
        return a.since.value_or(CalendarDay::fromNumber(1)) < b.since.value_or(CalendarDay::fromNumber(1));
    });
    return missing;
}

std::vector<DueRow> ClubAnswers::dueList(CalendarDay today, int days) const {
    const auto types = m_state->registerStore.allKitTypes();
    std::vector<DueRow> rows;
    for (const ItemRecord& record : m_state->registerStore.allRecords()) {
        const auto type = types.find(record.item.kitType);
        if (record.item.state == ItemState::WrittenOff || type == types.end()) continue;
        for (RuleDue& due : dueDatesOf(record, type->second, today))
            if (isListed(due, today, days))
                rows.push_back({record.item.code, record.item.kitType, record.item.size, record.item.boat,
                                std::move(due)});
    }
    const auto order = [](const DueRow& row) {
        return std::tuple(rankOf(row.due), row.due.due ? row.due.due->number() : 0, row.code,
                          row.due.rule.name);
    };
    std::stable_sort(rows.begin(), rows.end(),
                     [&](const DueRow& a, const DueRow& b) { return order(a) < order(b); });
    return rows;
}

} // namespace core
