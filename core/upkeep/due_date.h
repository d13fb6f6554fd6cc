#pragma once

#include "core/register/item.h"
#include "core/register/kit_type.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// Where a rule stands on a day. Undated: the day it counts from is not known.
enum class DueState { Later, DueSoon, WithinTolerance, Passed, Undated, Last = Undated };

/// What a due day was counted from.
enum class Anchor { None, Made, FirstUse, Stamped, Registered, Service, Event, Last = Event };

/// One rule applied to one item, with its explanation. Due days are the last day on which the thing still
/// counts, whatever `strict` says; `lastGoodDay` is a day earlier for a strict rule.
struct RuleDue {
    LifeRule rule;
    std::optional<CalendarDay> due; ///< empty: due without a day, not due, or undated
    std::optional<CalendarDay> lastGoodDay;
    DueState state = DueState::Later;
    Severity severity =
        Severity::Stop; ///< as it stands today: a remark within tolerance; of `undated` when undated
    Anchor anchor = Anchor::None;
    std::optional<CalendarDay> anchorDay;
    std::string event;             ///< of after_event: the latest open event
    std::optional<double> counted; ///< hours or launches since the last record; without one: ever
    std::optional<double> limit;   ///< that `counted` is held against: of the step that the item's age is in

    bool isPassedStop() const {
        return (state == DueState::Passed || state == DueState::Undated) && severity == Severity::Stop;
    }
};

/// All rules of the kit type that apply to the item or to parts that it has, in the kit type's order. A rule
/// that is undated and ignores that gives no entry. Design: rules 1 and 2. Pure.
std::vector<RuleDue> dueDatesOf(const ItemRecord& record, const KitType& kitType, CalendarDay today);

/// Whether a rule of that kind ends a thing's life: once it is due the thing is replaced, not serviced
/// (design: rules 3 and 9). Only what is stamped on it, or its age, does.
bool endsLife(RuleKind kind);

/// The entry with the earliest due day; null if none has a day. Ties: the first.
const RuleDue* earliestOf(const std::vector<RuleDue>& dues);

} // namespace core
