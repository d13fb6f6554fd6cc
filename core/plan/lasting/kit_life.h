#pragma once

#include "core/plan/lasting/survival_curve.h"
#include "core/plan/lasting/weibull.h"
#include "core/register/item.h"
#include "core/register/kit_type.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace core {

/// What a rule of the type allows, beside what the record says of that age.
struct AllowedLife {
    std::string rule;
    RuleKind kind = RuleKind::FromMade;
    int months = 0;                     ///< the rule's own; of year_end_from_made at least so long
    std::optional<SurvivalStep> record; ///< the curve at that age; empty: nothing is known to be that old
};

/// How long kit of one type really lasted here (design: rules 9).
struct KitLife {
    std::string kitType;
    int lives = 0;     ///< items whose life is known
    int lost = 0;      ///< of these, missing or written off as lost
    int wornOut = 0;   ///< written off for another reason than lost or expired, or for none given
    int expired = 0;   ///< written off as expired: the rule ended it, so it lasted at least so long
    int stillHere = 0; ///< serviceable or unserviceable today
    int leftOut = 0;   ///< neither first use, made nor registration is known, or not the day of the end
    SurvivalCurve curve = SurvivalCurve({});
    std::optional<Weibull> weibull; ///< in days; with at least five endings
    std::vector<AllowedLife> allowed;

    int endings() const { return lost + wornOut; }
};

/// One for each kit type with items, by name; what was registered by mistake is none. A life runs from first
/// use, else made, else registration (as rules count that were never recorded) to the end of service or
/// today. What ended on its first day counts as a day for the fit. Pure.
std::vector<KitLife> kitLivesOf(const std::map<std::string, KitType>& kitTypes,
                                const std::vector<ItemRecord>& items, CalendarDay today);

} // namespace core
