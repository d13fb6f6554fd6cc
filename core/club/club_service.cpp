#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_state.h"
#include "core/register/item.h"
#include "core/register/kit_type.h"
#include "core/upkeep/due_date.h"

#include "core/club/scanned_code.h"
#include "core/upkeep/service_round.h"
#include "core/upkeep/service_state.h"

#include <algorithm>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace core {
namespace {

using Refusal = ServiceRound::Refusal;

bool hasPart(const ItemRecord& record, const std::string& name) {
    return name.empty() || std::any_of(record.parts.begin(), record.parts.end(), [&](const Part& part) {
               return foldName(part.name) == foldName(name);
           });
}

std::vector<LifeRule> rulesFitting(const ItemRecord& record, const KitType& type, const std::string& name) {
    std::vector<LifeRule> rules;
    for (const LifeRule& rule : type.rules)
        if (foldName(rule.name) == foldName(name) && hasPart(record, rule.part)) rules.push_back(rule);
    return rules;
}

bool isDone(const ItemRecord& record, const LifeRule& rule, const ServiceOrder& order) {
    return std::any_of(record.services.begin(), record.services.end(), [&](const ServiceRecord& done) {
        return done.part == rule.part && foldName(done.rule) == foldName(rule.name) &&
               done.day == order.day && done.passed == order.passed;
    });
}

/// Writes one service round, item by item, in the caller's transaction.
class Round {
public:
    Round(ClubState& state, const ServiceOrder& order, Moment moment)
        : m_state(state)
        , m_order(order)
        , m_moment(moment)
        , m_types(state.registerStore.allKitTypes()) {}

    bool knowsRule() const {
        return std::any_of(m_types.begin(), m_types.end(), [&](const auto& each) {
            return std::any_of(each.second.rules.begin(), each.second.rules.end(), [&](const LifeRule& rule) {
                return foldName(rule.name) == foldName(m_order.rule);
            });
        });
    }

    void take(const std::string& text) {
        const auto code = scannedCode(text, *m_state.database, m_state.registerStore, m_moment.today.year());
        if (!code || code->tagClass() != TagClass::Kit) {
            if (std::find(m_round.unread.begin(), m_round.unread.end(), text) == m_round.unread.end())
                m_round.unread.push_back(text);
            return;
        }
        if (std::find(m_taken.begin(), m_taken.end(), code->text()) != m_taken.end()) return;
        m_taken.push_back(code->text());
        takeItem(code->text());
    }

    ServiceRound result() && { return std::move(m_round); }

private:
    void takeItem(const std::string& code) {
        const auto record = m_state.registerStore.record(code);
        const auto refuse = [&](Refusal why) {
            m_round.refused.push_back({code, record ? record->item.kitType : std::string(), why});
        };
        if (!record) return refuse(Refusal::UnknownTag);
        if (record->item.state == ItemState::WrittenOff) return refuse(Refusal::WrittenOff);
        const auto type = m_types.find(record->item.kitType);
        auto rules = type == m_types.end() ? std::vector<LifeRule>()
                                           : rulesFitting(*record, type->second, m_order.rule);
        if (rules.empty()) return refuse(Refusal::NoSuchRule);
        std::erase_if(rules, [&](const LifeRule& rule) { return isDone(*record, rule, m_order); });
        if (rules.empty()) return refuse(Refusal::DoneAlready);
        for (const LifeRule& rule : rules)
            write(code, rule);
        settleState(*record);
        report(code, type->second, rules);
    }

    void write(const std::string& code, const LifeRule& rule) {
        auto body =
            rowBody(SheetId::Services,
                    {{"code", code}, {"part", rule.part}, {"rule", rule.name}, {"day", m_order.day.iso()}},
                    {{"passed", m_order.passed ? "yes" : "no"}, {"by", m_order.by}, {"note", m_order.note}});
        // The day may be an earlier one than today's: then only the day is known.
        if (m_order.day == m_moment.today) body["at"] = m_moment.at.iso();
        m_state.ledger.append("service", body, m_order.by);
    }

    /// A failed record withdraws the item; a passed one releases it when a failed record was all that held
    /// it.
    void settleState(const ItemRecord& before) {
        const Item& item = before.item;
        if (!m_order.passed) {
            if (item.state == ItemState::Serviceable)
                m_state.ledger.append("item", stateBody(item.code, "unserviceable", m_order.day, {}, {}),
                                      m_order.by);
            return;
        }
        if (item.state != ItemState::Unserviceable || !failedSince(before.services)) return;
        const auto after = m_state.registerStore.record(item.code);
        if (!after || failedSince(after->services)) return;
        for (const LogEntry& entry : openOnly(m_state.registerStore.logOfItem(item.code)))
            if (entry.severity == Severity::Stop) return;
        m_state.ledger.append("item", stateBody(item.code, "serviceable", m_order.day, {}, {}), m_order.by);
        m_released = true;
    }

    void report(const std::string& code, const KitType& type, const std::vector<LifeRule>& rules) {
        const auto after = m_state.registerStore.record(code);
        for (const LifeRule& rule : rules) {
            ServiceRound::Recorded done{code, type.name, rule.part, {}, m_released};
            for (const RuleDue& due : dueDatesOf(*after, type, m_moment.today))
                if (due.rule.name == rule.name && due.rule.part == rule.part) done.nextDue = due.due;
            m_round.recorded.push_back(std::move(done));
        }
        m_released = false;
    }

    ClubState& m_state;
    const ServiceOrder& m_order;
    Moment m_moment;
    std::map<std::string, KitType> m_types;
    std::vector<std::string> m_taken;
    bool m_released = false;
    ServiceRound m_round;
};

} // namespace

Result<ServiceRound> ClubKit::recordService(const ServiceOrder& given, Moment moment) {
    return guarded([&]() -> Result<ServiceRound> {
        ServiceOrder order = given;
        if (order.day > moment.today)
            return Error{ErrorKind::BadInput,
                         fmt::format("{} is after today, {}", order.day.iso(), moment.today.iso()),
                         {},
                         "give the day on which it was done"};
        const auto person = m_state->registerStore.person(order.by);
        if (!person)
            return notFound(fmt::format("there is no '{}' among the club's people", order.by),
                            "give a name as it stands in people.csv");
        order.by = person->name;
        Transaction transaction(*m_state->database);
        Round round(*m_state, order, moment);
        if (!round.knowsRule())
            return notFound(fmt::format("no kit type of this club has a rule '{}'", order.rule),
                            "name a rule as it stands in life_rules.csv");
        for (const std::string& text : order.scans)
            round.take(text);
        transaction.commit();
        return std::move(round).result();
    });
}

} // namespace core
