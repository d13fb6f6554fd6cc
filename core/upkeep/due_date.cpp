#include "core/upkeep/due_date.h"

#include "core/upkeep/anchor.h"

#include <algorithm>

namespace core {
namespace {

/// A number of months or years as it is given, never more: half a month is not counted.
int wholePeriods(double n) {
    constexpr double longest = 120000; // months from 0001 to 9999 and more
    return static_cast<int>(std::clamp(n, -longest, longest));
}

/// n by the age of the item on `day`; the item's age also for a rule of a part (design: rules 2, steps).
double nAt(const LifeRule& rule, const Item& item, std::optional<CalendarDay> day) {
    const auto& born = item.made ? item.made : item.firstUse;
    double n = rule.n;
    if (!born || !day) return n;
    int reached = -1;
    for (const RuleStep& step : rule.steps)
        if (step.ageMonths > reached && born->firstDay().plusMonths(step.ageMonths) <= *day) {
            reached = step.ageMonths;
            n = step.n;
        }
    return n;
}

CalendarDay dueDayFrom(const LifeRule& rule, const Item& item, CalendarDay anchor) {
    if (rule.kind == RuleKind::Stamped) return anchor;
    const int n = wholePeriods(nAt(rule, item, anchor));
    if (rule.kind == RuleKind::YearEndFromMade)
        return CalendarDay::from(std::clamp(anchor.year() + n, 1, 9999), 12, 31).value();
    return anchor.plusMonths(n);
}

bool isTolerated(const LifeRule& rule, CalendarDay due, CalendarDay today) {
    switch (rule.tolerance.kind) {
    case Tolerance::Kind::Days:
        return today <= due.plusDays(rule.tolerance.days);
    case Tolerance::Kind::EndOfMonth:
        return today <= due.lastOfMonth();
    default:
        return false;
    }
}

DueState stateOf(const LifeRule& rule, CalendarDay due, CalendarDay today) {
    const bool passed = rule.strict ? today >= due : today > due;
    if (passed) return isTolerated(rule, due, today) ? DueState::WithinTolerance : DueState::Passed;
    return daysBetween(today, due) <= rule.leadDays ? DueState::DueSoon : DueState::Later;
}

void setDated(RuleDue& entry, const Item& item, CalendarDay today) {
    entry.due = dueDayFrom(entry.rule, item, *entry.anchorDay);
    entry.lastGoodDay = entry.rule.strict ? entry.due->plusDays(-1) : *entry.due;
    entry.state = stateOf(entry.rule, *entry.due, today);
    if (entry.state == DueState::WithinTolerance) entry.severity = Severity::Remark;
}

void setUndated(RuleDue& entry) {
    entry.state = DueState::Undated;
    entry.severity = entry.rule.undated == Undated::Stop ? Severity::Stop : Severity::Remark;
}

/// Hours or launches since the last record; all of them when there is none.
double usedSince(const LifeRule& rule, const ItemRecord& record, const ServiceRecord* last) {
    double sum = 0;
    for (const Use& use : record.use)
        if (!last || use.day > last->day) sum += rule.kind == RuleKind::EveryHours ? use.hours : use.launches;
    return sum;
}

void setCounted(RuleDue& entry, const ItemRecord& record) {
    // Ten times a tenth of an hour is an hour, though not in binary fractions.
    constexpr double roundingOfSums = 1e-9;
    const double n = nAt(entry.rule, record.item, entry.anchorDay);
    entry.limit = n;
    entry.counted = usedSince(entry.rule, record, lastRecordOf(entry.rule, record));
    entry.state = *entry.counted >= n - roundingOfSums ? DueState::Passed : DueState::Later;
    if (entry.anchor == Anchor::Service) return;
    // What was never recorded counts since ever, from no day.
    entry.anchor = Anchor::None;
    entry.anchorDay.reset();
}

void setEvent(RuleDue& entry, const ItemRecord& record) {
    const Happening* open = openEventOf(entry.rule, record);
    entry.anchor = open ? Anchor::Event : Anchor::None;
    entry.anchorDay = open ? std::optional(open->day) : std::nullopt;
    entry.event = open ? open->event : std::string();
    entry.state = open ? DueState::Passed : DueState::Later;
}

RuleDue entryOf(const LifeRule& rule, const ItemRecord& record, const Part* part, CalendarDay today) {
    RuleDue entry;
    entry.rule = rule;
    entry.severity = rule.severity;
    if (const auto anchor = anchorOf(rule, record, part)) {
        entry.anchor = anchor->anchor;
        entry.anchorDay = anchor->day;
    }
    if (rule.kind == RuleKind::AfterEvent)
        setEvent(entry, record);
    else if (rule.kind == RuleKind::EveryHours || rule.kind == RuleKind::EveryUses)
        setCounted(entry, record);
    else if (entry.anchorDay)
        setDated(entry, record.item, today);
    else
        setUndated(entry);
    return entry;
}

} // namespace

std::vector<RuleDue> dueDatesOf(const ItemRecord& record, const KitType& kitType, CalendarDay today) {
    std::vector<RuleDue> dues;
    dues.reserve(kitType.rules.size());
    for (const LifeRule& rule : kitType.rules) {
        const Part* part = rule.part.empty() ? nullptr : partOf(record, rule);
        if (!rule.part.empty() && !part) continue;
        RuleDue entry = entryOf(rule, record, part, today);
        if (entry.state != DueState::Undated || rule.undated != Undated::Ignore)
            dues.push_back(std::move(entry));
    }
    return dues;
}

bool endsLife(RuleKind kind) {
    return kind == RuleKind::Stamped || kind == RuleKind::FromMade || kind == RuleKind::FromFirstUse ||
           kind == RuleKind::YearEndFromMade;
}

const RuleDue* earliestOf(const std::vector<RuleDue>& dues) {
    const RuleDue* earliest = nullptr;
    for (const RuleDue& entry : dues)
        if (entry.due && (!earliest || *entry.due < *earliest->due)) earliest = &entry;
    return earliest;
}

} // namespace core
