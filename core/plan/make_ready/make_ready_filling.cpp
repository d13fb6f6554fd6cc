#include "core/plan/make_ready/make_ready_filling.h"

#include <algorithm>
#include <deque>
#include <numeric>

namespace core {

LineFilling::LineFilling(const MakeReadyProblem& problem, std::vector<int> supply)
    : m_problem(problem)
    , m_free(std::move(supply))
    , m_placesOf(m_free.size()) {}

int LineFilling::fill(int line) {
    int filled = 0;
    while (filled < m_problem.lines[line].quantity && fillOne(line))
        ++filled;
    return filled;
}

bool LineFilling::fillWhole(const std::vector<int>& lines) {
    for (const int line : lines)
        if (fill(line) < m_problem.lines[line].quantity) {
            std::for_each(lines.begin(), lines.end(), [this](int each) { clear(each); });
            return false;
        }
    return true;
}

void LineFilling::clear(int line) {
    for (const int type : m_problem.lines[line].types)
        if (const auto places = m_placesOf[type].find(line); places != m_placesOf[type].end()) {
            m_free[type] += places->second;
            m_placesOf[type].erase(places);
        }
}

/// One more place of the line: along the path each line takes the next type and gives up the one before.
bool LineFilling::fillOne(int line) {
    std::map<int, std::pair<int, int>> cameBy; // type: by which line, and which type that line gives up
    const auto last = freeTypeFrom(line, cameBy);
    if (!last) return false;
    --m_free[*last];
    for (int type = *last; type >= 0;) {
        const auto [taker, givenUp] = cameBy.at(type);
        ++m_placesOf[type][taker];
        if (givenUp >= 0 && --m_placesOf[givenUp][taker] == 0) m_placesOf[givenUp].erase(taker);
        type = givenUp;
    }
    return true;
}

std::optional<int> LineFilling::freeTypeFrom(int line, std::map<int, std::pair<int, int>>& cameBy) const {
    std::deque<int> open;
    const auto reach = [&](int taker, int givenUp) {
        for (const int type : m_problem.lines[taker].types)
            if (cameBy.emplace(type, std::pair(taker, givenUp)).second) open.push_back(type);
    };
    reach(line, -1);
    for (; !open.empty(); open.pop_front()) {
        const int type = open.front();
        if (m_free[type] > 0) return type;
        for (const auto& [holder, places] : m_placesOf[type])
            reach(holder, type);
    }
    return std::nullopt;
}

namespace {

std::vector<int> linesOf(const MakeReadyProblem& problem, int boat, bool required) {
    std::vector<int> lines;
    for (const int line : problem.linesOf[boat])
        if (problem.lines[line].required == required) lines.push_back(line);
    return lines;
}

std::vector<int> weightiestFirst(const MakeReadyProblem& problem) {
    std::vector<int> boats(problem.weights.size());
    std::iota(boats.begin(), boats.end(), 0);
    std::stable_sort(boats.begin(), boats.end(),
                     [&](int a, int b) { return problem.weights[a] > problem.weights[b]; });
    return boats;
}

} // namespace

FilledLines greedyFilling(const MakeReadyProblem& problem, const std::vector<bool>& allowed) {
    FilledLines filled{std::vector<bool>(problem.weights.size(), false),
                       std::vector<bool>(problem.lines.size(), false)};
    LineFilling filling(problem, problem.supply);
    const auto boats = weightiestFirst(problem);
    for (const int boat : boats) {
        const auto lines = linesOf(problem, boat, true);
        filled.boats[boat] = allowed[boat] && filling.fillWhole(lines);
        for (const int line : lines)
            filled.lines[line] = filled.boats[boat];
    }
    for (const int boat : boats)
        if (filled.boats[boat])
            for (const int line : linesOf(problem, boat, false))
                filled.lines[line] = filling.fillWhole({line});
    return filled;
}

FilledLines toppedUp(const MakeReadyProblem& problem, FilledLines filled) {
    LineFilling filling(problem, problem.supply);
    for (int line = 0; line < static_cast<int>(filled.lines.size()); ++line)
        if (filled.lines[line]) filling.fill(line);
    for (const int boat : weightiestFirst(problem)) {
        if (filled.boats[boat]) continue;
        const auto lines = linesOf(problem, boat, true);
        filled.boats[boat] = filling.fillWhole(lines);
        for (const int line : lines)
            filled.lines[line] = filled.boats[boat];
    }
    return filled;
}

} // namespace core
