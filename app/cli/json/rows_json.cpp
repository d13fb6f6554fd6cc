#include "app/cli/json/rows_json.h"

#include "app/cli/json/json_parts.h"

#include <algorithm>

namespace app {
namespace {

Json changeOf(const core::RowChange& change) {
    const core::Sheet& sheet = core::sheet(change.sheet);
    Json cells = Json::object();
    for (const auto& [column, value] : change.set)
        cells[std::string(sheet.columns[static_cast<std::size_t>(column)].name)] = orNull(value);
    Json key = Json::object();
    for (std::size_t i = 0; i < change.keyCells.size(); ++i)
        key[std::string(sheet.columns[i].name)] = orNull(change.keyCells[i]);
    return {{"key", key}, {"new", change.isNew}, {"set", cells}};
}

Json thereOf(const std::optional<core::KitAtHome>& kit) {
    return kit ? Json{{"wanted", kit->wanted}, {"there", kit->there}} : Json();
}

Json conditionOf(const std::optional<core::BoatCondition>& boat) {
    return boat ? Json(core::nameOf(boat->kind)) : Json();
}

Json dueOf(const std::optional<core::RuleDue>& due) {
    return due ? orNull(due->due) : Json();
}

Json effectsOf(const core::OutlookChange& change) {
    return {{"kit", listOf(change.kit,
                           [](const core::KitAtHomeChange& each) {
                               return Json{{"boat", each.boat},
                                           {"kit_type", each.kitType},
                                           {"before", thereOf(each.before)},
                                           {"after", thereOf(each.after)}};
                           })},
            {"boats", listOf(change.boats,
                             [](const core::ConditionChange& each) {
                                 return Json{{"boat", each.boat},
                                             {"before", conditionOf(each.before)},
                                             {"after", conditionOf(each.after)}};
                             })},
            {"due", listOf(change.due, [](const core::DueChange& each) {
                 const core::LifeRule& rule = (each.after ? *each.after : *each.before).rule;
                 return Json{{"code", each.item.id},         {"kit_type", each.kitType},
                             {"part", orNull(rule.part)},    {"rule", rule.name},
                             {"before", dueOf(each.before)}, {"after", dueOf(each.after)}};
             })}};
}

} // namespace

const std::string& rowWarned(const core::RejectedRow& warning, const std::vector<std::string>& rows) {
    return rows.at(static_cast<std::size_t>(std::clamp(warning.row, 1, static_cast<int>(rows.size())) - 1));
}

std::string rowsJson(core::SheetId sheet, const core::EditPlan& plan, const RowReport& report) {
    return written({{"sheet", core::sheet(sheet).name()},
                    {"rows", report.rows},
                    {"dry_run", report.isDryRun},
                    {"changes", listOf(plan.changes, changeOf)},
                    {"warnings", listOf(plan.warnings,
                                        [&](const core::RejectedRow& each) {
                                            return warningJson(rowWarned(each, report.rows), each.reason);
                                        })},
                    {"effects", effectsOf(report.effects)}});
}

} // namespace app
