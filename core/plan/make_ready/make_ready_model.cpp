#include "core/plan/make_ready/make_ready_model.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace core {
namespace {

constexpr double infinite = std::numeric_limits<double>::max();
// Room for the solver's rounding. What is made of whole columns cannot use it; the places of a type are whole
// only when no other row holds them, and half a substitute must not be had.
constexpr double wholeSlack = 0.5;
constexpr double flowSlack = 1e-5;
constexpr double boundSlack = 1e-3;

Aim aimOf(PlanGoal goal) {
    return goal == PlanGoal::PriorityWeight || goal == PlanGoal::OtherLines ? Aim::Most : Aim::Least;
}

} // namespace

MakeReadyModel::MakeReadyModel(const MakeReadyProblem& problem, Groups groups)
    : m_problem(problem)
    , m_groups(groups == Groups::Like ? likeBoats(problem) : singleBoats(problem))
    , m_used(problem.types.size())
    , m_usedBy(m_groups.size()) {
    for (int group = 0; group < static_cast<int>(m_groups.size()); ++group)
        addGroup(group);
    addSupply();
    if (groups == Groups::Single) addOwnKit();
}

void MakeReadyModel::addGroup(int group) {
    const int boat = m_groups[group].boats.front();
    const double count = m_groups[group].count();
    const int boats = m_program.addColumn(count, true);
    m_boats.push_back(boats);
    termsOf(PlanGoal::PriorityWeight).emplace_back(boats, static_cast<double>(m_problem.weights[boat]));
    std::map<int, Terms> usedBy;
    m_lines.emplace_back();
    for (const int number : m_problem.linesOf[boat]) {
        const PlanLine& line = m_problem.lines[number];
        int filled = boats;
        if (!line.required) {
            filled = m_program.addColumn(count, true);
            m_program.addRow({{boats, 1.0}, {filled, -1.0}}, 0, infinite);
            termsOf(PlanGoal::OtherLines).emplace_back(filled, 1.0);
        }
        m_lines.back().push_back(filled);
        Terms places{{filled, -static_cast<double>(line.quantity)}};
        for (const int type : line.types) {
            if (m_problem.supply[type] == 0) continue;
            const int used = m_program.addColumn(count * line.quantity, false);
            places.emplace_back(used, 1.0);
            m_used[type].emplace_back(used, 1.0);
            usedBy[type].emplace_back(used, 1.0);
            if (type != line.types.front()) termsOf(PlanGoal::Substitutes).emplace_back(used, 1.0);
        }
        m_program.addRow(std::move(places), 0, 0);
    }
    m_usedBy[group].assign(usedBy.begin(), usedBy.end());
}

void MakeReadyModel::addSupply() {
    for (std::size_t type = 0; type < m_used.size(); ++type)
        if (!m_used[type].empty()) m_program.addRow(m_used[type], 0, m_problem.supply[type]);
}

/// Of each type: what is used beyond the boats' own and what has no home is used away from home.
void MakeReadyModel::addOwnKit() {
    std::map<std::pair<int, int>, int> own; // by boat and type
    std::vector<int> homeless(m_used.size(), 0);
    for (const KitClass& kit : m_problem.classes) {
        if (kit.home >= 0) own[{kit.home, kit.type}] += kit.count();
        if (kit.home == KitClass::noHome) homeless[kit.type] += kit.count();
    }
    std::vector<Terms> beyond = m_used;
    for (std::size_t group = 0; group < m_groups.size(); ++group)
        for (const auto& [type, used] : m_usedBy[group]) {
            const auto found = own.find({m_groups[group].boats.front(), type});
            if (found == own.end()) continue;
            const int atHome = m_program.addColumn(found->second, false);
            Terms row = used;
            row.emplace_back(atHome, -1.0);
            m_program.addRow(std::move(row), 0, infinite);
            beyond[type].emplace_back(atHome, -1.0);
        }
    for (std::size_t type = 0; type < beyond.size(); ++type) {
        if (beyond[type].empty()) continue;
        const int away = m_program.addColumn(m_problem.supply[type], false);
        beyond[type].emplace_back(away, -1.0);
        m_program.addRow(std::move(beyond[type]), -infinite, homeless[type]);
        termsOf(PlanGoal::Away).emplace_back(away, 1.0);
    }
}

void MakeReadyModel::keep(PlanGoal goal, long long value) {
    const double whole = static_cast<double>(value);
    if (aimOf(goal) == Aim::Most)
        m_program.addRow(termsOf(goal), whole - wholeSlack, infinite);
    else
        m_program.addRow(termsOf(goal), -infinite, whole + flowSlack);
}

/// What no plan can surpass, whatever the kit: all boats, all other lines, no substitute, nothing away.
long long MakeReadyModel::limitOf(PlanGoal goal) const {
    if (aimOf(goal) == Aim::Least) return 0;
    long long limit = 0;
    for (int boat = 0; boat < m_problem.boats(); ++boat)
        if (goal == PlanGoal::PriorityWeight) limit += m_problem.weights[boat];
    for (const PlanLine& line : m_problem.lines)
        if (goal == PlanGoal::OtherLines && !line.required) ++limit;
    return limit;
}

MakeReadyModel::Answer MakeReadyModel::best(PlanGoal goal, double seconds, const FilledLines& start,
                                            long long startValue) const {
    std::vector<double> values(static_cast<std::size_t>(m_program.columns()), 0.0);
    const GroupCounts counts = countsOf(m_problem, m_groups, start);
    for (std::size_t g = 0; g < m_groups.size(); ++g) {
        values[m_boats[g]] = counts.boats[g];
        for (std::size_t i = 0; i < m_lines[g].size(); ++i)
            if (m_lines[g][i] != m_boats[g]) values[m_lines[g][i]] = counts.lines[g][i];
    }
    if (startValue == limitOf(goal)) return {start, startValue, true};
    const auto found = m_program.solve(termsOf(goal), aimOf(goal), seconds, values);
    Answer answer;
    const double margin = boundSlack + 1e-9 * std::abs(found.bound);
    answer.bound = static_cast<long long>(aimOf(goal) == Aim::Most ? std::floor(found.bound + margin)
                                                                   : std::ceil(found.bound - margin));
    if (found.values.empty()) return answer;
    answer.filled = filledBy(found.values);
    answer.proven = found.proven && margin < wholeSlack;
    return answer;
}

FilledLines MakeReadyModel::filledBy(const std::vector<double>& values) const {
    GroupCounts counts;
    for (std::size_t g = 0; g < m_groups.size(); ++g) {
        counts.boats.push_back(static_cast<int>(std::lround(values[m_boats[g]])));
        counts.lines.emplace_back();
        for (const int column : m_lines[g])
            counts.lines.back().push_back(static_cast<int>(std::lround(values[column])));
    }
    return spread(m_problem, m_groups, counts);
}

} // namespace core
