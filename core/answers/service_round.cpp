#include "core/answers/service_round.h"

#include "core/upkeep/anchor.h"
#include "core/upkeep/due_date.h"
#include "core/upkeep/same_name.h"
#include "core/upkeep/service_state.h"

#include <algorithm>
#include <set>

namespace core {
namespace {

using Refusal = ServiceRound::Refusal;

bool hasPart(const ItemRecord& record, const std::string& name) {
    const auto isIt = [&](const Part& part) { return sameName(part.name, name); };
    return name.empty() || std::ranges::any_of(record.parts, isIt);
}

bool isOf(const ServiceRecord& record, const LifeRule& rule, CalendarDay day) {
    return record.day == day && sameName(record.part, rule.part) && sameName(record.rule, rule.name);
}

/// A failed record may have been put right while a log entry held the item, or have been told after one that
/// passed later. It holds the item still, until its rule passes again.
bool isHeldByRecords(const ItemBeforeRound& before, const ServiceRecord& record) {
    const StateApart& was = before.apart;
    if (was.state != ItemState::Unserviceable || !was.byFailedRecord) return false;
    if (failedSince(before.record.services)) return true;
    return sameName(was.rule, record.rule) && (!was.since || *was.since <= record.day);
}

class Round {
public:
    explicit Round(const ServiceRoundInput& input)
        : m_input(input)
        , m_order(input.order) {
        if (m_order.day == input.moment.today) m_at = input.moment.at;
    }

    ServiceRoundAnswer answer() && {
        std::set<std::string> taken;
        for (std::size_t scan = 0; scan < m_order.scans.size(); ++scan)
            if (const auto& code = m_input.codes[scan]; !code)
                addUnread(m_order.scans[scan]);
            else if (taken.insert(*code).second)
                take(*code);
        return std::move(m_answer);
    }

private:
    void addUnread(const std::string& text) {
        auto& unread = m_answer.round.unread;
        if (std::ranges::find(unread, text) == unread.end()) unread.push_back(text);
    }

    void take(const std::string& code) {
        const auto known = m_input.items.find(code);
        if (known == m_input.items.end()) return refuse({code, code}, {}, Refusal::UnknownTag);
        const ItemBeforeRound& before = known->second;
        const ItemName name = before.record.item.name();
        const std::string& kitType = before.record.item.kitType;
        if (before.apart.state == ItemState::WrittenOff) return refuse(name, kitType, Refusal::WrittenOff);
        auto rules = rulesFitting(before.record);
        if (rules.empty()) return refuse(name, kitType, Refusal::NoSuchRule);
        std::erase_if(rules, [&](const LifeRule& rule) { return isDone(before.record, rule); });
        if (rules.empty()) return refuse(name, kitType, Refusal::DoneAlready);
        record(before, std::move(rules));
    }

    void refuse(const ItemName& item, const std::string& kitType, Refusal why) {
        m_answer.round.refused.push_back({item, kitType, why});
    }

    std::vector<LifeRule> rulesFitting(const ItemRecord& record) const {
        std::vector<LifeRule> rules;
        if (const auto type = m_input.kitTypes.find(record.item.kitType); type != m_input.kitTypes.end())
            for (const LifeRule& rule : type->second.rules)
                if (sameName(rule.name, m_order.rule) && hasPart(record, rule.part)) rules.push_back(rule);
        return rules;
    }

    /// A record that stands already is written once more where that says something new: that a missing thing
    /// is here, or that what happened since was looked at.
    bool isDone(const ItemRecord& record, const LifeRule& rule) const {
        if (record.item.state == ItemState::Missing || settlesWhatHappened(record, rule)) return false;
        return std::ranges::any_of(record.services, [&](const ServiceRecord& done) {
            return isOf(done, rule, m_order.day) && done.passed == m_order.passed;
        });
    }

    bool settlesWhatHappened(const ItemRecord& record, const LifeRule& rule) const {
        if (rule.kind != RuleKind::AfterEvent || openEventOf(rule, record) == nullptr) return false;
        ItemRecord after = record;
        write(rule, after.services);
        return openEventOf(rule, after) == nullptr;
    }

    void record(const ItemBeforeRound& before, std::vector<LifeRule> rules) {
        ItemRecord after = before.record;
        for (const LifeRule& rule : rules)
            write(rule, after.services);
        const auto state =
            stateByRecord(before, after.services, {{}, m_order.rule, m_order.day, m_at, m_order.passed});
        const Item& item = after.item;
        for (const LifeRule& rule : rules)
            m_answer.round.recorded.push_back(
                {item.name(), item.kitType, rule.part, nextDue(after, rule), isReleased(before, state)});
        m_answer.entries.push_back({item.id, std::move(rules), m_at, state});
    }

    /// A rule has one record a day: another takes its place.
    void write(const LifeRule& rule, std::vector<ServiceRecord>& services) const {
        std::erase_if(services, [&](const ServiceRecord& record) { return isOf(record, rule, m_order.day); });
        services.push_back({rule.part, rule.name, m_order.day, m_at, m_order.passed});
    }

    static bool isReleased(const ItemBeforeRound& before, const std::optional<StateApart>& state) {
        return before.apart.state == ItemState::Unserviceable && state &&
               state->state == ItemState::Serviceable;
    }

    std::optional<CalendarDay> nextDue(const ItemRecord& after, const LifeRule& rule) const {
        std::optional<CalendarDay> next;
        const KitType& type = m_input.kitTypes.at(after.item.kitType);
        for (const RuleDue& due : dueDatesOf(after, type, m_input.moment.today))
            if (due.rule.name == rule.name && due.rule.part == rule.part) next = due.due;
        return next;
    }

    const ServiceRoundInput& m_input;
    const ServiceOrder& m_order;
    std::optional<Instant> m_at;
    ServiceRoundAnswer m_answer;
};

} // namespace

const char* nameOf(ServiceRound::Refusal why) {
    switch (why) {
    case ServiceRound::Refusal::NoSuchRule:
        return "no-such-rule";
    case ServiceRound::Refusal::WrittenOff:
        return "written-off";
    case ServiceRound::Refusal::DoneAlready:
        return "done-already";
    default:
        return "unknown-tag";
    }
}

bool isRuleOfClub(const std::string& rule, const std::map<std::string, KitType>& kitTypes) {
    return std::ranges::any_of(kitTypes, [&](const auto& type) {
        return std::ranges::any_of(type.second.rules,
                                   [&](const LifeRule& each) { return sameName(each.name, rule); });
    });
}

ServiceRoundAnswer serviceRoundOf(const ServiceRoundInput& input) {
    return Round(input).answer();
}

std::optional<StateApart> stateByRecord(const ItemBeforeRound& before,
                                        const std::vector<ServiceRecord>& services,
                                        const ServiceRecord& record) {
    if (!record.passed) {
        if (before.apart.state != ItemState::Serviceable) return std::nullopt;
        return StateApart{ItemState::Unserviceable, record.day, {}, true, record.rule};
    }
    if (!isHeldByRecords(before, record) || failedSince(services) || isHeldByLog(before.logOpen))
        return std::nullopt;
    return StateApart{ItemState::Serviceable, record.day, {}, false, record.rule};
}

bool isHeldByLog(const std::vector<LogEntry>& open) {
    return std::ranges::any_of(open, [](const LogEntry& entry) { return entry.severity == Severity::Stop; });
}

} // namespace core
