#pragma once

#include "core/plan/replacement/loss_rate.h"
#include "core/plan/replacement/shortage.h"
#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/register/kit_type.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace core {

/// What a club wants to know.
struct ReplacementQuestion {
    int months = 36;          ///< of the horizon, from today; 1–1200
    double confidence = 0.95; ///< that no kit runs short; above 0, below 1
    int coverMonths = 12;     ///< how long after the first short day an order must last; 0–1200
    int marginDays = 14;      ///< to order before the last possible day; 0–3650
    LossPrior prior;          ///< both above 0
};

/// One kit type, or one size of a sized type, that boats want.
struct ReplacementRow {
    std::string kitType;
    std::string size; ///< empty: the type has no sizes
    int wanted = 0;
    int stock = 0;                         ///< counting today
    LossRecord record;                     ///< of the type, its sizes together
    LossRate rate;                         ///< the same with the prior
    std::optional<CalendarDay> firstShort; ///< empty: not within the horizon
    std::optional<CalendarDay> lastGood;   ///< the day before
    std::optional<CalendarDay> orderBy;
    bool late = false;             ///< orderBy is past
    std::optional<int> budgetYear; ///< of orderBy, or this year when the order is late
    std::optional<int> quantity;   ///< whole packs; 0: nothing runs short; empty: no quantity can do
    int pack = 1;
    int leadDays = 0;
    std::optional<double> price;
    std::optional<double> cost;
    int sparesAdvised = 0; ///< for the lead time
    std::vector<ShortChance> chances;

    bool runsShort() const { return firstShort.has_value(); }
};

/// What the orders of one calendar year cost, a late one this year's.
struct BudgetYear {
    int year = 0;
    double cost = 0;
    int unpriced = 0; ///< orders without a price or a quantity, not in the cost
};

struct ReplacementPlan {
    CalendarDay today;
    CalendarDay end; ///< the horizon's last day
    ReplacementQuestion question;
    /// What runs short first, by order-by day; then the rest; each by kit type and size.
    std::vector<ReplacementRow> rows;
    std::vector<BudgetYear> budget; ///< years with an order

    bool runsShort() const;
};

/// What is known of a club.
struct ReplacementInput {
    std::map<std::string, KitType> kitTypes;          ///< by name
    std::vector<std::vector<ManifestLine>> manifests; ///< one for each boat
    std::vector<ItemRecord> items;
};

/// Design: rules 9. Pure. The question must be within its ranges.
ReplacementPlan planReplacement(const ReplacementInput& input, const ReplacementQuestion& question,
                                CalendarDay today);

} // namespace core
