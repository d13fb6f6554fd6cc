#pragma once

#include "core/plan/make_ready/make_ready_problem.h"

#include <map>
#include <optional>
#include <vector>

namespace core {

/// Lines filled with kit types one after the other, by augmenting paths: what fills a place may change later,
/// but a place once filled stays filled, and a place that stays empty could not have been filled.
class LineFilling {
public:
    /// `supply`: items per type.
    LineFilling(const MakeReadyProblem& problem, std::vector<int> supply);

    /// Fills as many places of the line as can be; how many.
    int fill(int line);
    /// All places of the lines, none of which was filled before; or none of them.
    bool fillWhole(const std::vector<int>& lines);

private:
    void clear(int line);
    bool fillOne(int line);
    std::optional<int> freeTypeFrom(int line, std::map<int, std::pair<int, int>>& cameBy) const;

    const MakeReadyProblem& m_problem;
    std::vector<int> m_free;                    // per type
    std::vector<std::map<int, int>> m_placesOf; // per type: line and how many of its places
};

/// Boat after boat of those allowed, the weightiest first, is completed where the kit does; then other lines
/// of those boats.
FilledLines greedyFilling(const MakeReadyProblem& problem, const std::vector<bool>& allowed);

/// The same, and what the kit left over completes besides: a search that was cut short may leave it lying.
FilledLines toppedUp(const MakeReadyProblem& problem, FilledLines filled);

} // namespace core
