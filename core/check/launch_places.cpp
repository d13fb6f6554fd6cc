#include "core/check/launch_places.h"

#include "core/check/assignment.h"

#include <algorithm>

namespace core {
namespace {

constexpr int dueOfUndated = 3652059; // 9999-12-31

bool isOwnBoat(const BoatCheckInput& input, const Item& item) {
    return item.boat.empty() || item.boat == input.location.name;
}

AssignmentTask taskOf(const BoatCheckInput& input, const LaunchPlaces& launch) {
    AssignmentTask task;
    for (const JudgedItem& item : launch.items) {
        const auto due = item.due();
        task.items.push_back({isOwnBoat(input, item.item()), due ? due->number() : dueOfUndated});
    }
    for (const Place& place : launch.places) {
        const ManifestLine& line = input.lines[place.line];
        AssignmentPlace wanted{line.required, {}};
        for (int i = 0; i < static_cast<int>(launch.items.size()); ++i)
            if (mayFill(input, place, launch.items[i]))
                wanted.choices.push_back({i, launch.items[i].item().kitType == line.kitType});
        task.places.push_back(std::move(wanted));
    }
    return task;
}

AssignmentScore scoreOf(const BoatCheckInput& input, const LaunchPlaces& launch, const AssignmentTask& task) {
    AssignmentScore best;
    for (std::size_t p = 0; p < launch.places.size(); ++p) {
        if (launch.itemAt[p] < 0) continue;
        const ManifestLine& line = input.lines[launch.places[p].line];
        const AssignmentItem& item = task.items[launch.itemAt[p]];
        ++(line.required ? best.required : best.other);
        best.ownType += launch.items[launch.itemAt[p]].item().kitType == line.kitType ? 1 : 0;
        best.ownBoat += item.ownBoat ? 1 : 0;
        best.dueSum += item.due;
    }
    return best;
}

} // namespace

int LaunchPlaces::unfilled(int line) const {
    int empty = 0;
    for (std::size_t p = 0; p < places.size(); ++p)
        if (places[p].line == line && itemAt[p] < 0) ++empty;
    return empty;
}

LaunchPlaces fillPlaces(const BoatCheckInput& input) {
    LaunchPlaces launch;
    launch.items = judgeItems(input);
    launch.places = placesOf(input);
    const AssignmentTask task = taskOf(input, launch);
    launch.itemAt = bestAssignment(task);
    launch.placeOf.assign(launch.items.size(), -1);
    launch.counts.assign(launch.items.size(), false);
    for (std::size_t p = 0; p < launch.places.size(); ++p) {
        if (launch.itemAt[p] >= 0) launch.placeOf[launch.itemAt[p]] = static_cast<int>(p);
        for (const AssignmentChoice& choice : task.places[p].choices)
            launch.counts[choice.item] = true;
    }
    launch.score = scoreOf(input, launch, task);
    return launch;
}

} // namespace core
