#include "app/cli/json/plan_json.h"

#include "app/cli/json/json_parts.h"

namespace app {
namespace {

Json shortLine(const core::ShortLine& line) {
    return {{"kit_type", line.kitType}, {"wanted", line.wanted}, {"have", line.have}};
}

Json boatPlan(const core::BoatPlan& plan) {
    return {{"boat", plan.boat},
            {"priority", plan.priority},
            {"complete", plan.complete},
            {"short", listOf(plan.shortLines, shortLine)},
            {"other_short", listOf(plan.unfilledOther, shortLine)},
            {"asks_nothing", plan.asksNothing}};
}

Json move(const core::KitMove& move) {
    return {{"code", move.item.id},   {"kit_type", move.kitType},
            {"from", move.from.name}, {"from_boat", move.from.isBoat()},
            {"to", move.to},          {"for_kit_type", move.forKitType}};
}

Json exactGoals(int count) {
    static constexpr const char* names[] = {"priority_weight", "other_lines", "substitutes", "away"};
    Json list = Json::array();
    for (int goal = 0; goal < count; ++goal)
        list.push_back(names[goal]);
    return list;
}

} // namespace

std::string makeReadyJson(const core::MakeReadyPlan& plan) {
    return written(
        {{"boats", listOf(plan.boats, boatPlan)},
         {"moves", listOf(plan.moves, move)},
         {"goals",
          {{"priority_weight", plan.goals.priorityWeight},
           {"other_lines", plan.goals.otherLines},
           {"substitutes", plan.goals.substitutes},
           {"away", plan.goals.away},
           {"trips", plan.goals.trips}}},
         {"bounds", {{"priority_weight", plan.boundPriorityWeight}, {"other_lines", plan.boundOtherLines}}},
         {"proven", plan.proven()},
         {"exact", exactGoals(plan.exactGoals)},
         {"out", plan.boatsOut},
         {"not_placed", idsOf(plan.notPlaced)}});
}

} // namespace app
