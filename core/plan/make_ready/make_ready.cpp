#include "core/plan/make_ready/make_ready.h"

#include "core/plan/make_ready/make_ready_filling.h"
#include "core/plan/make_ready/make_ready_model.h"
#include "core/plan/make_ready/make_ready_steps.h"

#include <algorithm>
#include <chrono>
#include <tuple>

namespace core {
namespace {

/// The solver prepares that long before it looks at its limit; asked for less, goal 4 is left to the flow.
constexpr double secondsPerColumn = 1e-3;

/// Seconds left of those that were given.
class Stopwatch {
public:
    explicit Stopwatch(double seconds)
        : m_end(Clock::now() + std::chrono::duration_cast<Clock::duration>(
                                   std::chrono::duration<double>(std::clamp(seconds, 0.0, 1e6)))) {}
    double left() const { return std::max(0.0, std::chrono::duration<double>(m_end - Clock::now()).count()); }

private:
    using Clock = std::chrono::steady_clock;
    Clock::time_point m_end;
};

/// Lines filled and the kit that fills them, with what that reaches.
struct Solution {
    FilledLines filled;
    std::vector<KitUse> uses;
    long long reached[4] = {0, 0, 0, 0}; ///< by PlanGoal

    long long of(PlanGoal goal) const { return reached[static_cast<int>(goal)]; }
    auto rank() const { return std::tuple(-reached[0], -reached[1], reached[2], reached[3]); }
};

void count(const MakeReadyProblem& problem, Solution& solution) {
    for (int boat = 0; boat < problem.boats(); ++boat)
        if (solution.filled.boats[boat]) solution.reached[0] += problem.weights[boat];
    for (std::size_t line = 0; line < problem.lines.size(); ++line)
        if (solution.filled.lines[line] && !problem.lines[line].required) ++solution.reached[1];
    for (const KitUse& use : solution.uses) {
        const PlanLine& line = problem.lines[use.line];
        const KitClass& kit = problem.classes[use.kitClass];
        if (kit.type != line.types.front()) solution.reached[2] += use.count;
        if (kit.isAwayOn(line.boat)) solution.reached[3] += use.count;
    }
}

class Planner {
public:
    Planner(const MakeReadyProblem& problem, double seconds)
        : m_problem(problem)
        , m_watch(seconds) {
        adopt(greedyFilling(problem, std::vector<bool>(problem.weights.size(), true)));
    }

    void solve() {
        MakeReadyModel single(m_problem, MakeReadyModel::Groups::Single);
        const bool awayToo = single.columns() * secondsPerColumn <= m_watch.left();
        MakeReadyModel like(m_problem, MakeReadyModel::Groups::Like);
        serve(like, PlanGoal::PriorityWeight, 0.5);
        adopt(toppedUp(m_problem, m_best.filled));
        adopt(greedyFilling(m_problem, m_best.filled.boats)); // a start for the other lines
        serve(like, PlanGoal::OtherLines, awayToo ? 0.6 : 0.85);
        serve(like, PlanGoal::Substitutes, 0.4);
        if (!awayToo) return;
        for (const PlanGoal goal : {PlanGoal::PriorityWeight, PlanGoal::OtherLines, PlanGoal::Substitutes})
            single.keep(goal, m_best.of(goal));
        serve(single, PlanGoal::Away, 0.6);
    }

    double left() const { return m_watch.left(); }
    const Solution& best() const { return m_best; }
    long long boundOf(PlanGoal goal) const { return m_bounds[static_cast<int>(goal)]; }
    int exactGoals() const {
        int exact = 0;
        while (exact < 4 && m_exact[exact])
            ++exact;
        return exact;
    }

private:
    /// A goal may take a share of the time left, so that one without a proof leaves something to the others.
    void serve(MakeReadyModel& model, PlanGoal goal, double share) {
        const auto answer = model.best(goal, share * m_watch.left(), m_best.filled, m_best.of(goal));
        if (answer.filled) adopt(*answer.filled);
        m_bounds[static_cast<int>(goal)] = answer.bound;
        m_exact[static_cast<int>(goal)] = answer.proven && answer.bound == m_best.of(goal);
        model.keep(goal, m_best.of(goal));
    }

    /// Counts in whole numbers what the solver found in floating point, and takes it if it is better.
    void adopt(FilledLines filled) {
        auto uses = cheapestUse(m_problem, filled);
        if (!uses) return;
        Solution found{std::move(filled), std::move(*uses), {}};
        count(m_problem, found);
        if (m_best.filled.boats.empty() || found.rank() < m_best.rank()) m_best = std::move(found);
    }

    const MakeReadyProblem& m_problem;
    Stopwatch m_watch;
    Solution m_best;
    long long m_bounds[4] = {0, 0, 0, 0};
    bool m_exact[4] = {false, false, false, false};
};

/// Then no launch check of it can be complete (design: rules 3), though no required line is unfilled.
bool asksNothing(const BoatToPlan& boat) {
    return std::ranges::none_of(boat.lines,
                                [](const ManifestLine& line) { return line.required && line.quantity > 0; });
}

} // namespace

MakeReadyPlan planMakeReady(const MakeReadyTask& task) {
    const MakeReadyProblem problem = makeReadyProblem(task);
    Planner planner(problem, task.seconds);
    planner.solve();
    const Solution& best = planner.best();
    const auto uses = inFewerTrips(problem, best.uses, [&] { return planner.left() > 0; });
    MakeReadyPlan plan;
    plan.boats = boatPlansOf(task, problem, best.filled, uses);
    for (std::size_t i = 0; i < plan.boats.size(); ++i)
        plan.boats[i].asksNothing = asksNothing(task.boats[i]);
    plan.moves = movesOf(task, problem, uses);
    plan.goals.priorityWeight = problem.priorityOf(best.of(PlanGoal::PriorityWeight));
    plan.goals.otherLines = static_cast<int>(best.of(PlanGoal::OtherLines));
    plan.goals.substitutes = static_cast<int>(best.of(PlanGoal::Substitutes));
    plan.goals.away = static_cast<int>(best.of(PlanGoal::Away));
    plan.goals.trips = tripsOf(problem, uses);
    plan.boundPriorityWeight = problem.priorityOf(planner.boundOf(PlanGoal::PriorityWeight));
    plan.boundOtherLines = static_cast<int>(planner.boundOf(PlanGoal::OtherLines));
    plan.exactGoals = planner.exactGoals();
    return plan;
}

} // namespace core
