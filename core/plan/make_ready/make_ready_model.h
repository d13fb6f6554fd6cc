#pragma once

#include "core/plan/make_ready/make_ready_groups.h"
#include "core/plan/whole_number_program.h"

#include <optional>
#include <vector>

namespace core {

enum class PlanGoal { PriorityWeight, OtherLines, Substitutes, Away };

/// The mixed-integer program of a make-ready plan. Whole are only the numbers of boats and of other lines;
/// once they are given, laying the kit is a flow, which is whole by itself.
class MakeReadyModel {
public:
    /// With `single` groups the goal Away may be asked for too; it needs each boat by itself.
    enum class Groups { Like, Single };
    MakeReadyModel(const MakeReadyProblem& problem, Groups groups);

    struct Answer {
        std::optional<FilledLines> filled; ///< none when nothing was found in time
        long long bound = 0;
        bool proven = false;
    };
    /// `start`: a plan that is known, and what it reaches of the goal.
    Answer best(PlanGoal goal, double seconds, const FilledLines& start, long long startValue) const;
    /// From now on that goal is no worse than `value`.
    void keep(PlanGoal goal, long long value);
    int columns() const { return m_program.columns(); }

private:
    void addGroup(int group);
    void addSupply();
    void addOwnKit();
    long long limitOf(PlanGoal goal) const;
    const Terms& termsOf(PlanGoal goal) const { return m_terms[static_cast<int>(goal)]; }
    Terms& termsOf(PlanGoal goal) { return m_terms[static_cast<int>(goal)]; }
    FilledLines filledBy(const std::vector<double>& values) const;

    const MakeReadyProblem& m_problem;
    std::vector<BoatGroup> m_groups;
    WholeNumberProgram m_program;
    Terms m_terms[4];
    std::vector<int> m_boats; // column per group: boats complete
    std::vector<std::vector<int>>
        m_lines;               // column per group and line: lines filled (the boats' for required)
    std::vector<Terms> m_used; // per type: places filled by it
    std::vector<std::vector<std::pair<int, Terms>>> m_usedBy; // per group: type and places filled by it
};

} // namespace core
