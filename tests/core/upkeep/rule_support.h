#pragma once

#include "core/upkeep/due_date.h"
#include "tests/core/base/days.h"

#include <string>
#include <utility>

namespace core {

/// A rule with the defaults of the register: a stop, lead 30 days, no tolerance, undated a remark.
inline LifeRule ruleOf(RuleKind kind, double n = 0) {
    LifeRule rule;
    rule.name = "rule";
    rule.kind = kind;
    rule.n = n;
    return rule;
}

inline std::vector<RuleDue> duesOf(const LifeRule& rule, const ItemRecord& record, const std::string& today) {
    KitType kitType;
    kitType.rules = {rule};
    return dueDatesOf(record, kitType, day(today));
}

/// The one entry of the one rule.
inline RuleDue dueOf(const LifeRule& rule, const ItemRecord& record, const std::string& today) {
    return duesOf(rule, record, today).at(0);
}

inline ItemRecord madeOn(const std::string& made) {
    ItemRecord record;
    record.item.made = known(made);
    return record;
}

inline ItemRecord stampedWith(const std::string& expiry) {
    ItemRecord record;
    record.item.stamped = known(expiry);
    return record;
}

inline ServiceRecord recordOn(const std::string& recorded, bool passed = true) {
    return {"", "rule", day(recorded), std::nullopt, passed};
}

inline ItemRecord servicedOn(const std::string& recorded) {
    ItemRecord record;
    record.services = {recordOn(recorded)};
    return record;
}

} // namespace core
