#include "core/plan/last_good_day.h"

#include "core/upkeep/due_date.h"

#include <algorithm>

namespace core {
bool endsLife(const LifeRule& rule) {
    return endsLife(rule.kind) && rule.part.empty() && rule.severity == Severity::Stop;
}

KitType withLifeEndsOnly(const KitType& kitType) {
    KitType ends = kitType;
    std::erase_if(ends.rules, [](const LifeRule& rule) { return !endsLife(rule); });
    return ends;
}

std::optional<CalendarDay> lastGoodDayOf(const ItemRecord& record, const KitType& lifeEnds) {
    CalendarDay last = endlessDay;
    for (const RuleDue& due : dueDatesOf(record, lifeEnds, CalendarDay::fromNumber(1)))
        if (due.due)
            last = std::min(last, *due.lastGoodDay);
        else if (due.isPassedStop())
            return std::nullopt;
    return last;
}

CalendarDay lastGoodDayOfNew(const KitType& lifeEnds, CalendarDay arrival) {
    ItemRecord bought;
    bought.item.made = bought.item.firstUse = arrival;
    KitType known = lifeEnds;
    std::erase_if(known.rules, [](const LifeRule& rule) { return rule.kind == RuleKind::Stamped; });
    return lastGoodDayOf(bought, known).value_or(endlessDay);
}

} // namespace core
