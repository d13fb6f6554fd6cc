#include "core/plan/make_ready/make_ready_steps.h"

#include "core/plan/make_ready/make_ready_filling.h"

#include <algorithm>
#include <tuple>

namespace core {
namespace {

struct PlannedMove {
    Location from;
    int line = 0;
    const KitOnHand* item = nullptr;
};

/// Of one class: what stays aboard comes first, so that it is what is due first.
std::vector<KitUse> inOrder(const MakeReadyProblem& problem, std::vector<KitUse> uses) {
    const auto rank = [&](const KitUse& use) {
        const bool moves = problem.classes[use.kitClass].movesTo(problem.lines[use.line].boat);
        return std::tuple(use.kitClass, moves, use.line);
    };
    std::sort(uses.begin(), uses.end(), [&](const KitUse& a, const KitUse& b) { return rank(a) < rank(b); });
    return uses;
}

std::vector<PlannedMove> plannedMoves(const MakeReadyTask& task, const MakeReadyProblem& problem,
                                      const std::vector<KitUse>& uses) {
    std::vector<PlannedMove> moves;
    std::vector<int> taken(problem.classes.size(), 0);
    for (const KitUse& use : inOrder(problem, uses)) {
        const KitClass& kit = problem.classes[use.kitClass];
        for (int i = 0; i < use.count; ++i) {
            const int item = kit.items[taken[use.kitClass]++];
            if (kit.movesTo(problem.lines[use.line].boat))
                moves.push_back({problem.whereabouts[kit.at], use.line, &task.kit[item]});
        }
    }
    const auto rank = [](const PlannedMove& move) {
        return std::tuple(move.from, move.line, move.item->item.id); // lines are numbered boat by boat
    };
    std::sort(moves.begin(), moves.end(),
              [&](const PlannedMove& a, const PlannedMove& b) { return rank(a) < rank(b); });
    return moves;
}

std::vector<int> leftOver(const MakeReadyProblem& problem, const std::vector<KitUse>& uses) {
    std::vector<int> left = problem.supply;
    for (const KitUse& use : uses)
        left[problem.classes[use.kitClass].type] -= use.count;
    return left;
}

/// Lines of the boat that stay unfilled, though what is left over is laid to them.
std::vector<ShortLine> shortOf(const MakeReadyProblem& problem, int boat, bool required,
                               const FilledLines& filled, LineFilling& rest) {
    std::vector<ShortLine> lines;
    for (const int number : problem.linesOf[boat]) {
        const PlanLine& line = problem.lines[number];
        if (line.required != required || filled.lines[number]) continue;
        const int have = rest.fill(number);
        // Of a complete boat any other line that the plan leaves is told, even one that could be had.
        if (have < line.quantity || filled.boats[boat])
            lines.push_back({problem.types[line.types.front()], line.quantity, have});
    }
    return lines;
}

} // namespace

std::vector<KitMove> movesOf(const MakeReadyTask& task, const MakeReadyProblem& problem,
                             const std::vector<KitUse>& uses) {
    std::vector<KitMove> moves;
    for (const PlannedMove& move : plannedMoves(task, problem, uses)) {
        const BoatToPlan& boat = task.boats[problem.lines[move.line].boat];
        moves.push_back({move.item->item, move.item->kitType, move.from, boat.boat,
                         boat.lines[problem.lines[move.line].manifestLine].kitType});
    }
    return moves;
}

std::vector<BoatPlan> boatPlansOf(const MakeReadyTask& task, const MakeReadyProblem& problem,
                                  const FilledLines& filled, const std::vector<KitUse>& uses) {
    const std::vector<int> left = leftOver(problem, uses);
    std::vector<BoatPlan> plans;
    for (int boat = 0; boat < problem.boats(); ++boat) {
        BoatPlan plan{task.boats[boat].boat, task.boats[boat].priority, filled.boats[boat], {}, {}};
        LineFilling rest(problem, left);
        plan.shortLines = shortOf(problem, boat, true, filled, rest); // before what is not required
        plan.unfilledOther = shortOf(problem, boat, false, filled, rest);
        plans.push_back(std::move(plan));
    }
    return plans;
}

} // namespace core
