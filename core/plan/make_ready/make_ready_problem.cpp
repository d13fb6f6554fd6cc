#include "core/plan/make_ready/make_ready_problem.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <tuple>

namespace core {
namespace {

/// A boat without priority counts less than all that has one, however many there are: it is planned after all
/// others (design: rules 8).
void weighTheWeightless(MakeReadyProblem& problem) {
    problem.weightScale = 1 + std::ranges::count(problem.weights, 0);
    for (long long& weight : problem.weights)
        weight = weight == 0 ? 1 : weight * problem.weightScale;
}

/// Priorities as whole numbers without a common factor, so that equal sums are equal.
void weigh(MakeReadyProblem& problem, const std::vector<BoatToPlan>& boats) {
    long long factor = 0;
    for (const BoatToPlan& boat : boats) {
        problem.weights.push_back(std::llround(std::clamp(boat.priority, 0.0, 1e9) * 1e6));
        factor = std::gcd(factor, problem.weights.back());
    }
    if (factor == 0) factor = 1;
    for (long long& weight : problem.weights)
        weight /= factor;
    problem.weightFactor = factor;
    weighTheWeightless(problem);
}

template <class Key>
class Numbers {
public:
    explicit Numbers(std::vector<Key>& keys)
        : m_keys(keys) {}
    int of(const Key& key) {
        const auto [found, isNew] = m_numbers.emplace(key, static_cast<int>(m_keys.size()));
        if (isNew) m_keys.push_back(key);
        return found->second;
    }
    bool has(const Key& key) const { return m_numbers.contains(key); }

private:
    std::vector<Key>& m_keys;
    std::map<Key, int> m_numbers;
};

void numberLines(MakeReadyProblem& problem, const std::vector<BoatToPlan>& boats,
                 Numbers<std::string>& types) {
    problem.linesOf.resize(boats.size());
    for (int boat = 0; boat < problem.boats(); ++boat) {
        const std::vector<ManifestLine>& manifest = boats[boat].lines;
        for (int i = 0; i < static_cast<int>(manifest.size()); ++i) {
            if (manifest[i].quantity < 1) continue;
            PlanLine line{boat, i, manifest[i].quantity, manifest[i].required, {}};
            line.types.push_back(types.of(manifest[i].kitType));
            for (const std::string& substitute : manifest[i].substitutes)
                if (const int type = types.of(substitute);
                    std::find(line.types.begin(), line.types.end(), type) == line.types.end())
                    line.types.push_back(type);
            problem.linesOf[boat].push_back(static_cast<int>(problem.lines.size()));
            problem.lines.push_back(std::move(line));
        }
    }
}

void classify(MakeReadyProblem& problem, const MakeReadyTask& task, Numbers<std::string>& types) {
    std::map<std::string, int> boats;
    Numbers<Location> whereabouts(problem.whereabouts);
    for (const BoatToPlan& boat : task.boats)
        boats[boat.boat] = whereabouts.of(Location::boat(boat.boat));
    std::map<std::tuple<int, int, int>, std::vector<int>> classes;
    for (int i = 0; i < static_cast<int>(task.kit.size()); ++i) {
        const KitOnHand& item = task.kit[i];
        if (!types.has(item.kitType)) continue; // no line takes it
        const auto home = boats.find(item.homeBoat);
        const int homeNumber = item.homeBoat.empty() ? KitClass::noHome
                               : home != boats.end() ? home->second
                                                     : KitClass::foreignHome;
        classes[{types.of(item.kitType), homeNumber, whereabouts.of(item.at)}].push_back(i);
    }
    for (auto& [key, items] : classes) {
        std::sort(items.begin(), items.end(), [&](int a, int b) {
            const auto rank = [&](const KitOnHand& item) {
                return std::tuple(!item.due, item.due.value_or(CalendarDay::fromNumber(1)), item.item.id);
            };
            return rank(task.kit[a]) < rank(task.kit[b]);
        });
        problem.classes.push_back({std::get<0>(key), std::get<1>(key), std::get<2>(key), std::move(items)});
    }
    problem.supply.assign(problem.types.size(), 0);
    for (const KitClass& kit : problem.classes)
        problem.supply[kit.type] += kit.count();
}

} // namespace

MakeReadyProblem makeReadyProblem(const MakeReadyTask& task) {
    MakeReadyProblem problem;
    weigh(problem, task.boats);
    Numbers<std::string> types(problem.types);
    numberLines(problem, task.boats, types);
    classify(problem, task, types);
    return problem;
}

} // namespace core
