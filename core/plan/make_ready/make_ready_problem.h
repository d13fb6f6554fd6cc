#pragma once

#include "core/plan/make_ready/make_ready.h"

#include <string>
#include <vector>

namespace core {

/// A line of one boat, by numbers. Lines of quantity 0 are left out.
struct PlanLine {
    int boat = 0;
    int manifestLine = 0; ///< index into the boat's lines
    int quantity = 1;
    bool required = true;
    std::vector<int> types; ///< that fill its places, its own first
};

/// Items that are alike for every goal: same type, same home, same whereabouts.
struct KitClass {
    static constexpr int noHome = -1;      ///< `home`: no boat is its home
    static constexpr int foreignHome = -2; ///< `home`: a boat that is not planned

    int type = 0;
    int home = noHome;      ///< planned boat
    int at = 0;             ///< index into MakeReadyProblem::whereabouts
    std::vector<int> items; ///< index into the task's kit; what is due first comes first, then by id

    int count() const { return static_cast<int>(items.size()); }
    /// Whether it is used away from its home when it is used on that boat.
    bool isAwayOn(int boat) const { return home != noHome && home != boat; }
    /// Whether it must be carried to be used on that boat.
    bool movesTo(int boat) const { return at != boat; }
};

/// A make-ready task in numbers. Boats and lines are numbered as the task has them; whereabouts 0 to boats -
/// 1 are aboard the planned boats, then come the others.
struct MakeReadyProblem {
    std::vector<std::string> types;
    std::vector<long long>
        weights;               ///< of the boats, whole, at least 1, multiples of the scale but for priority 0
    long long weightScale = 1; ///< more than there are boats of priority 0, each of which weighs 1
    long long weightFactor = 1; ///< millionths of priority in a weight of one scale
    std::vector<PlanLine> lines;
    std::vector<std::vector<int>> linesOf; ///< per boat, in the manifest's order
    std::vector<Location> whereabouts;
    std::vector<KitClass> classes;
    std::vector<int> supply; ///< items per type

    int boats() const { return static_cast<int>(weights.size()); }
    double priorityOf(long long weight) const {
        return static_cast<double>(weight / weightScale * weightFactor) / 1e6;
    }
};

MakeReadyProblem makeReadyProblem(const MakeReadyTask& task);

/// How many places of a class's items fill a line.
struct KitUse {
    int kitClass = 0;
    int line = 0;
    int count = 0;
};

/// Which boats are complete, and which lines are filled: the required ones of those boats, and others of
/// theirs.
struct FilledLines {
    std::vector<bool> boats;
    std::vector<bool> lines;
};

} // namespace core
