#include "core/plan/make_ready/make_ready_groups.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>

namespace core {
namespace {

using LineKey = std::tuple<int, bool, std::vector<int>>;
using BoatKey = std::pair<long long, std::vector<LineKey>>;

BoatKey keyOf(const MakeReadyProblem& problem, int boat) {
    BoatKey key{problem.weights[boat], {}};
    for (const int line : problem.linesOf[boat]) {
        const PlanLine& wanted = problem.lines[line];
        key.second.emplace_back(wanted.quantity, wanted.required, wanted.types);
    }
    return key;
}

/// Places of each line that the boat's own kit can fill, each line by itself.
class OwnKit {
public:
    explicit OwnKit(const MakeReadyProblem& problem)
        : m_problem(problem) {
        for (const KitClass& kit : problem.classes)
            if (kit.home >= 0) m_own[{kit.home, kit.type}] += kit.count();
    }

    int ofLine(int line) const {
        const PlanLine& wanted = m_problem.lines[line];
        int own = 0;
        for (const int type : wanted.types)
            if (const auto found = m_own.find({wanted.boat, type}); found != m_own.end())
                own += found->second;
        return std::min(own, wanted.quantity);
    }

    int ofBoat(int boat) const {
        int own = 0;
        for (const int line : m_problem.linesOf[boat])
            if (m_problem.lines[line].required) own += ofLine(line);
        return own;
    }

private:
    const MakeReadyProblem& m_problem;
    std::map<std::pair<int, int>, int> m_own;
};

template <class Rank>
std::vector<int> firstOf(std::vector<int> boats, int count, Rank rank) {
    std::stable_sort(boats.begin(), boats.end(), [&](int a, int b) { return rank(a) > rank(b); });
    boats.resize(static_cast<std::size_t>(count));
    return boats;
}

} // namespace

std::vector<BoatGroup> likeBoats(const MakeReadyProblem& problem) {
    std::map<BoatKey, std::size_t> known;
    std::vector<BoatGroup> groups;
    for (int boat = 0; boat < problem.boats(); ++boat) {
        const auto [found, isNew] = known.emplace(keyOf(problem, boat), groups.size());
        if (isNew) groups.emplace_back();
        groups[found->second].boats.push_back(boat);
    }
    return groups;
}

std::vector<BoatGroup> singleBoats(const MakeReadyProblem& problem) {
    std::vector<BoatGroup> groups;
    for (int boat = 0; boat < problem.boats(); ++boat)
        groups.push_back({{boat}});
    return groups;
}

GroupCounts countsOf(const MakeReadyProblem& problem, const std::vector<BoatGroup>& groups,
                     const FilledLines& filled) {
    GroupCounts counts;
    for (const BoatGroup& group : groups) {
        int boats = 0;
        std::vector<int> lines(problem.linesOf[group.boats.front()].size(), 0);
        for (const int boat : group.boats) {
            boats += filled.boats[boat] ? 1 : 0;
            for (std::size_t i = 0; i < lines.size(); ++i)
                lines[i] += filled.lines[problem.linesOf[boat][i]] ? 1 : 0;
        }
        counts.boats.push_back(boats);
        counts.lines.push_back(std::move(lines));
    }
    return counts;
}

FilledLines spread(const MakeReadyProblem& problem, const std::vector<BoatGroup>& groups,
                   const GroupCounts& counts) {
    FilledLines filled{std::vector<bool>(problem.weights.size(), false),
                       std::vector<bool>(problem.lines.size(), false)};
    const OwnKit own(problem);
    for (std::size_t g = 0; g < groups.size(); ++g) {
        const auto boats =
            firstOf(groups[g].boats, counts.boats[g], [&](int boat) { return own.ofBoat(boat); });
        for (const int boat : boats)
            filled.boats[boat] = true;
        for (std::size_t i = 0; i < counts.lines[g].size(); ++i) {
            const auto lineOf = [&](int boat) { return problem.linesOf[boat][i]; };
            for (const int boat :
                 firstOf(boats, counts.lines[g][i], [&](int each) { return own.ofLine(lineOf(each)); }))
                filled.lines[lineOf(boat)] = true;
        }
    }
    return filled;
}

} // namespace core
