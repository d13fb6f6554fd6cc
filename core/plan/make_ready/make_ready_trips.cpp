#include "core/plan/make_ready/make_ready_steps.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <utility>

namespace core {
namespace {

using Trip = std::pair<int, int>; // from whereabouts to boat

class TripSearch {
public:
    TripSearch(const MakeReadyProblem& problem, const std::vector<KitUse>& uses)
        : m_problem(problem)
        , m_placesOf(problem.classes.size())
        , m_tripsTo(problem.weights.size()) {
        for (int i = 0; i < static_cast<int>(problem.classes.size()); ++i) {
            m_classesAt[{problem.classes[i].type, problem.classes[i].at}].push_back(i);
            m_spare.push_back(problem.classes[i].count());
        }
        for (const KitUse& use : uses)
            for (int i = 0; i < use.count; ++i) {
                m_places.push_back({use.kitClass, use.line});
                put(static_cast<int>(m_places.size()) - 1, use.kitClass);
            }
    }

    std::vector<KitUse> search(const std::function<bool()>& goOn) {
        while (dropTrips(goOn)) {
        }
        std::map<std::pair<int, int>, int> counts;
        for (const Place& place : m_places)
            ++counts[{place.kitClass, place.line}];
        std::vector<KitUse> uses;
        for (const auto& [key, count] : counts)
            uses.push_back({key.first, key.second, count});
        return uses;
    }

private:
    struct Place {
        int kitClass;
        int line;
    };
    /// What a place got instead, to be taken back if the trip cannot be dropped. `other` < 0: spare kit.
    struct Change {
        int place;
        int other;
        int before;
        int after;
    };

    int boatOf(int place) const { return m_problem.lines[m_places[place].line].boat; }
    bool isAway(int kitClass, int boat) const { return m_problem.classes[kitClass].isAwayOn(boat); }

    void put(int place, int kitClass) {
        m_places[place].kitClass = kitClass;
        --m_spare[kitClass];
        m_placesOf[kitClass].insert(place);
        if (m_problem.classes[kitClass].movesTo(boatOf(place))) {
            m_trips[{m_problem.classes[kitClass].at, boatOf(place)}].insert(place);
            m_tripsTo[boatOf(place)].insert(m_problem.classes[kitClass].at);
        }
    }

    void take(int place) {
        const int kitClass = m_places[place].kitClass;
        ++m_spare[kitClass];
        m_placesOf[kitClass].erase(place);
        const Trip trip{m_problem.classes[kitClass].at, boatOf(place)};
        if (const auto found = m_trips.find(trip); found != m_trips.end()) {
            found->second.erase(place);
            if (!found->second.empty()) return;
            m_trips.erase(found);
            m_tripsTo[trip.second].erase(trip.first);
        }
    }

    /// Whether kit of that class gets to the boat without a new trip and without the one being dropped.
    bool isOnTheWay(int kitClass, int boat, const Trip& dropped) const {
        const KitClass& kit = m_problem.classes[kitClass];
        const Trip trip{kit.at, boat};
        return !kit.movesTo(boat) || (trip != dropped && m_trips.contains(trip));
    }

    /// Trips of few moves first. Whether any could be dropped.
    bool dropTrips(const std::function<bool()>& goOn) {
        std::vector<std::pair<std::size_t, Trip>> order;
        for (const auto& [trip, places] : m_trips)
            order.emplace_back(places.size(), trip);
        std::sort(order.begin(), order.end());
        bool any = false;
        for (const auto& [size, trip] : order)
            if (goOn() && m_trips.contains(trip) && drop(trip)) any = true;
        return any && goOn();
    }

    bool drop(const Trip& trip) {
        const std::set<int> places = m_trips.at(trip);
        std::vector<Change> changes;
        for (const int place : places) {
            const auto change = changeFor(place, trip);
            if (!change) {
                for (; !changes.empty(); changes.pop_back())
                    revert(changes.back());
                return false;
            }
            apply(*change);
            changes.push_back(*change);
        }
        return true;
    }

    std::optional<Change> changeFor(int place, const Trip& trip) const {
        const int boat = boatOf(place);
        if (const auto change = changeFrom(boat, place, trip)) return change;
        for (const int at : m_tripsTo[boat])
            if (at != trip.first)
                if (const auto change = changeFrom(at, place, trip)) return change;
        return std::nullopt;
    }

    /// Like kit that lies there instead: spare, or in exchange.
    std::optional<Change> changeFrom(int at, int place, const Trip& trip) const {
        const int before = m_places[place].kitClass;
        const int boat = boatOf(place);
        const auto there = m_classesAt.find({m_problem.classes[before].type, at});
        if (there == m_classesAt.end()) return std::nullopt;
        for (const int after : there->second) {
            if (m_spare[after] > 0 && isAway(after, boat) <= isAway(before, boat))
                return Change{place, -1, before, after};
            for (const int other : m_placesOf[after])
                if (isFairSwap(place, other, before, after, trip)) return Change{place, other, before, after};
        }
        return std::nullopt;
    }

    bool isFairSwap(int place, int other, int before, int after, const Trip& trip) const {
        const int boat = boatOf(place);
        const int otherBoat = boatOf(other);
        return boat != otherBoat && isOnTheWay(before, otherBoat, trip) &&
               isAway(after, boat) + isAway(before, otherBoat) <=
                   isAway(before, boat) + isAway(after, otherBoat);
    }

    void apply(const Change& change) {
        take(change.place);
        if (change.other >= 0) take(change.other);
        put(change.place, change.after);
        if (change.other >= 0) put(change.other, change.before);
    }

    void revert(const Change& change) { apply({change.place, change.other, change.after, change.before}); }

    const MakeReadyProblem& m_problem;
    std::map<std::pair<int, int>, std::vector<int>> m_classesAt; // by type and whereabouts
    std::vector<int> m_spare;                                    // per class
    std::vector<Place> m_places;
    std::vector<std::set<int>> m_placesOf; // per class
    std::map<Trip, std::set<int>> m_trips; // places that it brings kit to
    std::vector<std::set<int>> m_tripsTo;  // whereabouts from which trips are made, per boat
};

} // namespace

int tripsOf(const MakeReadyProblem& problem, const std::vector<KitUse>& uses) {
    std::set<Trip> trips;
    for (const KitUse& use : uses) {
        const int boat = problem.lines[use.line].boat;
        if (problem.classes[use.kitClass].movesTo(boat))
            trips.emplace(problem.classes[use.kitClass].at, boat);
    }
    return static_cast<int>(trips.size());
}

std::vector<KitUse> inFewerTrips(const MakeReadyProblem& problem, const std::vector<KitUse>& uses,
                                 const std::function<bool()>& goOn) {
    return TripSearch(problem, uses).search(goOn);
}

} // namespace core
