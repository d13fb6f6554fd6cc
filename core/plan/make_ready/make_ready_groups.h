#pragma once

#include "core/plan/make_ready/make_ready_problem.h"

#include <vector>

namespace core {

/// Boats that are alike but for the kit aboard: the same lines and the same weight. How many of them are
/// complete, and how many of those have an other line filled, is all that goals 1 to 3 depend on.
struct BoatGroup {
    std::vector<int> boats;

    int count() const { return static_cast<int>(boats.size()); }
};

std::vector<BoatGroup> likeBoats(const MakeReadyProblem& problem);
std::vector<BoatGroup> singleBoats(const MakeReadyProblem& problem);

/// How many boats of each group are complete, and on how many of them each of their lines is filled (by group
/// and number of the line within the boat; for a required line as many as are complete).
struct GroupCounts {
    std::vector<int> boats;
    std::vector<std::vector<int>> lines;
};

GroupCounts countsOf(const MakeReadyProblem& problem, const std::vector<BoatGroup>& groups,
                     const FilledLines& filled);

/// Boats and lines by those counts; of like boats those that have the most of their own kit at home.
FilledLines spread(const MakeReadyProblem& problem, const std::vector<BoatGroup>& groups,
                   const GroupCounts& counts);

} // namespace core
