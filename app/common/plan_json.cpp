#include "app/common/plan_json.h"

#include "app/common/json_parts.h"

#include <cmath>

namespace app {
namespace {

template <class Number>
Json numberOrNull(const std::optional<Number>& number) {
    return number ? Json(*number) : Json();
}

Json chance(const core::ShortChance& chance) {
    return {
        {"day", chance.day.iso()}, {"counting", chance.counting}, {"p", std::round(chance.p * 1e10) / 1e10}};
}

Json row(const core::ReplacementRow& row) {
    return {{"kit_type", row.kitType},
            {"size", orNull(row.size)},
            {"wanted", row.wanted},
            {"stock", row.stock},
            {"losses", row.record.losses},
            {"item_years", row.record.itemYears()},
            {"first_short", orNull(row.firstShort)},
            {"last_good", orNull(row.lastGood)},
            {"order_by", orNull(row.orderBy)},
            {"late", row.late},
            {"quantity", numberOrNull(row.quantity)},
            {"pack", row.pack},
            {"order_lead_days", row.leadDays},
            {"price", numberOrNull(row.price)},
            {"cost", numberOrNull(row.cost)},
            {"budget_year", row.orderBy ? Json(row.orderBy->year()) : Json()},
            {"spares_advised", row.sparesAdvised},
            {"p_short", listOf(row.chances, chance)}};
}

Json budgetYear(const core::BudgetYear& year) {
    return {{"year", year.year}, {"cost", year.cost}, {"unpriced", year.unpriced}};
}

} // namespace

std::string replacementJson(const core::ReplacementPlan& plan) {
    const core::ReplacementQuestion& asked = plan.question;
    return written({{"today", plan.today.iso()},
                    {"months", asked.months},
                    {"confidence", asked.confidence},
                    {"cover", asked.coverMonths},
                    {"margin", asked.marginDays},
                    {"prior", {{"losses", asked.prior.losses}, {"item_years", asked.prior.itemYears}}},
                    {"plan", listOf(plan.rows, row)},
                    {"budget", listOf(plan.budget, budgetYear)}});
}

} // namespace app
