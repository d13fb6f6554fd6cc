#pragma once

#include "core/plan/make_ready/make_ready.h"

#include <fmt/format.h>

#include <random>

namespace support {

/// Makes make-ready tasks, the same for the same seed on every machine.
class RandomTasks {
public:
    explicit RandomTasks(unsigned seed)
        : m_random(seed) {}

    int below(int end) { return static_cast<int>(m_random() % static_cast<unsigned>(end)); }
    bool oneIn(int n) { return below(n) == 0; }

    /// So few boats, lines and items that all plans can be tried.
    core::MakeReadyTask tiny() {
        core::MakeReadyTask task;
        const int boats = 1 + below(3);
        const int types = 2 + below(3);
        static constexpr double priorities[] = {1, 1, 2, 3, 0.1, 0.2, 0.3, 1.5};
        for (int i = 0; i < boats; ++i) {
            core::BoatToPlan boat{"boat " + std::to_string(i), priorities[below(8)], {}};
            for (int type = 0; type < types; ++type)
                if (!oneIn(3)) boat.lines.push_back(line(type, types, 3, 2));
            task.boats.push_back(boat);
        }
        const int items = 2 + below(6);
        for (int i = 0; i < items; ++i)
            addItem(task, below(types), oneIn(4) ? "" : boatName(boats, 6), whereabouts(boats, 2));
        return task;
    }

    /// Boats of a few classes with kit for all but a share of their places; some of it lies elsewhere.
    core::MakeReadyTask fleet(int boats, int classes, int percentScarce, bool ownLines) {
        constexpr int types = 36;
        std::vector<std::vector<core::ManifestLine>> manifests(static_cast<std::size_t>(classes));
        for (auto& manifest : manifests)
            for (int type = 0; type < types; ++type)
                if (type < 4 || !oneIn(4)) manifest.push_back(line(type, types, 4, 4));
        core::MakeReadyTask task;
        for (int i = 0; i < boats; ++i) {
            core::BoatToPlan boat{"boat " + std::to_string(i), 1.0 + below(3),
                                  manifests[static_cast<std::size_t>(below(classes))]};
            if (ownLines && oneIn(3)) ++boat.lines[static_cast<std::size_t>(below(12))].quantity;
            task.boats.push_back(boat);
        }
        for (const core::BoatToPlan& boat : task.boats)
            for (const core::ManifestLine& each : boat.lines)
                for (int place = 0; place < each.quantity; ++place)
                    if (below(100) >= percentScarce)
                        addItem(task, std::stoi(each.kitType.substr(5)), oneIn(20) ? "" : boat.boat,
                                oneIn(4) ? whereabouts(boats, 1 + boats / 10)
                                         : core::Location::boat(boat.boat));
        return task;
    }

private:
    core::ManifestLine line(int type, int types, int requiredOf, int substituteOf) {
        core::ManifestLine made;
        made.kitType = "type " + std::to_string(type);
        made.quantity = oneIn(3) ? 2 : 1;
        made.required = !oneIn(requiredOf);
        if (oneIn(substituteOf))
            made.substitutes.push_back("type " + std::to_string((type + 1 + below(2)) % types));
        return made;
    }

    std::string boatName(int boats, int foreignOf) {
        return oneIn(foreignOf) ? "a boat of others" : "boat " + std::to_string(below(boats));
    }

    core::Location whereabouts(int boats, int places) {
        if (oneIn(2)) return core::Location::place("place " + std::to_string(below(places)));
        return core::Location::boat("boat " + std::to_string(below(boats)));
    }

    void addItem(core::MakeReadyTask& task, int type, const std::string& home, const core::Location& at) {
        const std::string code = fmt::format("K{:05}", task.kit.size());
        task.kit.push_back({{code, code}, "type " + std::to_string(type), home, at, {}});
    }

    std::mt19937 m_random;
};

} // namespace support
