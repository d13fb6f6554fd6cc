#include "app/cli/json/plan_json.h"

#include "app/cli/json/json_parts.h"
#include "core/register/typed_rows.h"

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
            {"budget_year", row.budgetYear ? Json(*row.budgetYear) : Json()},
            {"spares_advised", row.sparesAdvised},
            {"p_short", listOf(row.chances, chance)}};
}

Json budgetYear(const core::BudgetYear& year) {
    return {{"year", year.year}, {"cost", year.cost}, {"unpriced", year.unpriced}};
}

Json step(const core::SurvivalStep& step) {
    return {{"age_days", step.days},   {"at_risk", step.atRisk}, {"endings", step.endings},
            {"lasting", step.lasting}, {"error", step.error},    {"low", step.low},
            {"high", step.high}};
}

Json allowed(const core::AllowedLife& allowed) {
    const auto& record = allowed.record;
    const bool hasBand = record && record->lasting < 1;
    return {{"rule", allowed.rule},
            {"kind", core::nameOf(allowed.kind)},
            {"months", allowed.months},
            {"lasting", record ? Json(record->lasting) : Json()},
            {"low", hasBand ? Json(record->low) : Json()},
            {"high", hasBand ? Json(record->high) : Json()},
            {"at_risk", record ? Json(record->atRisk) : Json(0)}};
}

Json fit(const core::Weibull& weibull) {
    return {{"shape", weibull.shape},
            {"scale_years", weibull.scale / core::daysOfYear},
            {"tenth_ended_years", weibull.timeOfShareEnded(.1) / core::daysOfYear},
            {"half_ended_years", weibull.timeOfShareEnded(.5) / core::daysOfYear}};
}

Json life(const core::KitLife& life) {
    return {{"kit_type", life.kitType},
            {"lives", life.lives},
            {"endings", life.endings()},
            {"lost", life.lost},
            {"worn_out", life.wornOut},
            {"expired", life.expired},
            {"still_here", life.stillHere},
            {"left_out", life.leftOut},
            {"median_days", numberOrNull(life.curve.medianDays())},
            {"weibull", life.weibull ? fit(*life.weibull) : Json()},
            {"rules", listOf(life.allowed, allowed)},
            {"curve", listOf(life.curve.steps(), step)}};
}

} // namespace

std::string lastingJson(const std::vector<core::KitLife>& lives, core::CalendarDay today) {
    return written({{"today", today.iso()}, {"kit", listOf(lives, life)}});
}

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
