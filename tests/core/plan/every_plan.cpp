#include "tests/core/plan/every_plan.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace support {
namespace {

using core::ManifestLine;

struct Place {
    const core::BoatToPlan* boat;
    const ManifestLine* line;
};

/// Fewest substitutes, then fewest away, as substitutes · 1000 + away; negative: the items do not do.
int cheapestFilling(const core::MakeReadyTask& task, const std::vector<Place>& places) {
    constexpr int impossible = 1 << 20;
    if (places.size() > task.kit.size()) return -1;
    std::vector<int> cost(1U << task.kit.size(), impossible); // by the set of items used
    cost[0] = 0;
    for (std::size_t used = 0; used < cost.size(); ++used) {
        const auto filled = static_cast<std::size_t>(__builtin_popcountll(used));
        if (cost[used] == impossible || filled >= places.size()) continue;
        const Place& place = places[filled];
        for (std::size_t i = 0; i < task.kit.size(); ++i) {
            const core::KitOnHand& item = task.kit[i];
            const auto& others = place.line->substitutes;
            const bool own = item.kitType == place.line->kitType;
            if ((used >> i & 1U) ||
                (!own && std::find(others.begin(), others.end(), item.kitType) == others.end()))
                continue;
            const bool away = !item.homeBoat.empty() && item.homeBoat != place.boat->boat;
            int& next = cost[used | std::size_t(1) << i];
            next = std::min(next, cost[used] + (own ? 0 : 1000) + (away ? 1 : 0));
        }
    }
    int best = impossible;
    for (std::size_t used = 0; used < cost.size(); ++used)
        if (static_cast<std::size_t>(__builtin_popcountll(used)) == places.size())
            best = std::min(best, cost[used]);
    return best == impossible ? -1 : best;
}

std::vector<Place> linesOf(const core::MakeReadyTask& task, unsigned boats, bool required) {
    std::vector<Place> lines;
    for (std::size_t b = 0; b < task.boats.size(); ++b)
        if (boats >> b & 1U)
            for (const ManifestLine& line : task.boats[b].lines)
                if (line.required == required) lines.push_back({&task.boats[b], &line});
    return lines;
}

void addPlaces(std::vector<Place>& places, const Place& line) {
    places.insert(places.end(), static_cast<std::size_t>(line.line->quantity), line);
}

} // namespace

GoalVector bestOfEveryPlan(const core::MakeReadyTask& task) {
    GoalVector best{-1, 0, 0, 0}; // the last three negative, so that larger is better
    for (unsigned boats = 0; boats < 1U << task.boats.size(); ++boats) {
        long weight = 0;
        for (std::size_t b = 0; b < task.boats.size(); ++b)
            if (boats >> b & 1U) weight += std::lround(task.boats[b].priority * 1000);
        const auto others = linesOf(task, boats, false);
        for (unsigned chosen = 0; chosen < 1U << others.size(); ++chosen) {
            const int lines = __builtin_popcount(chosen);
            if (std::pair(weight, lines) < std::pair(std::get<0>(best), std::get<1>(best))) continue;
            std::vector<Place> places;
            for (const Place& line : linesOf(task, boats, true))
                addPlaces(places, line);
            for (std::size_t i = 0; i < others.size(); ++i)
                if (chosen >> i & 1U) addPlaces(places, others[i]);
            const int cost = cheapestFilling(task, places);
            if (cost >= 0) best = std::max(best, GoalVector{weight, lines, -(cost / 1000), -(cost % 1000)});
        }
    }
    return {std::get<0>(best), std::get<1>(best), -std::get<2>(best), -std::get<3>(best)};
}

} // namespace support
