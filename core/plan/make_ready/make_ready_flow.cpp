#include "core/plan/make_ready/make_ready_steps.h"

#include <lemon/network_simplex.h>
#include <lemon/smart_graph.h>

#include <algorithm>
#include <map>
#include <numeric>

namespace core {
namespace {

using Graph = lemon::SmartDigraph;

/// Classes of kit on one side, filled lines on the other. What is carried from anywhere goes through one node
/// for each type; what lies at home or aboard already has arcs of its own, which cost less. So the number of
/// arcs grows with the classes and not with their pairs.
class FillingFlow {
public:
    FillingFlow(const MakeReadyProblem& problem, const FilledLines& filled)
        : m_problem(problem)
        , m_filled(filled)
        , m_supply(m_graph)
        , m_capacity(m_graph)
        , m_cost(m_graph) {
        long long places = 0;
        for (std::size_t line = 0; line < problem.lines.size(); ++line)
            if (filled.lines[line]) places += problem.lines[line].quantity;
        m_away = places + 1; // a move costs 1
        m_substitute = m_away * (places + 1);
        addNodes();
        addArcs();
    }

    std::optional<std::vector<KitUse>> solve() {
        lemon::NetworkSimplex<Graph, int, long long> simplex(m_graph);
        simplex.supplyMap(m_supply).upperMap(m_capacity).costMap(m_cost);
        if (simplex.run() != lemon::NetworkSimplex<Graph, int, long long>::OPTIMAL) return std::nullopt;
        return usesOf(simplex);
    }

private:
    struct LineArc {
        Graph::Arc arc;
        int line;
    };

    void addNodes() {
        int spare = 0;
        for (const KitClass& kit : m_problem.classes) {
            m_classNodes.push_back(addNode(kit.count()));
            spare += kit.count();
        }
        for (std::size_t type = 0; type < m_problem.types.size(); ++type)
            m_typeNodes.push_back(addNode(0));
        for (std::size_t line = 0; line < m_problem.lines.size(); ++line) {
            const int places = m_filled.lines[line] ? m_problem.lines[line].quantity : 0;
            m_lineNodes.push_back(places > 0 ? addNode(-places) : Graph::Node(lemon::INVALID));
            spare -= places;
        }
        m_unused = addNode(-spare);
    }

    void addArcs() {
        m_direct.resize(m_problem.classes.size());
        for (int i = 0; i < static_cast<int>(m_problem.classes.size()); ++i) {
            const KitClass& kit = m_problem.classes[i];
            addArc(m_classNodes[i], m_unused, kit.count(), 0);
            m_toType.push_back(addArc(m_classNodes[i], m_typeNodes[kit.type], kit.count(),
                                      1 + (kit.home != KitClass::noHome ? m_away : 0)));
            if (kit.home >= 0) addDirect(i, kit.home);
            if (kit.at < m_problem.boats() && kit.at != kit.home) addDirect(i, kit.at);
        }
        m_fromType.resize(m_problem.types.size());
        for (int line = 0; line < static_cast<int>(m_problem.lines.size()); ++line) {
            if (!m_filled.lines[line]) continue;
            const PlanLine& wanted = m_problem.lines[line];
            for (const int type : wanted.types)
                if (m_problem.supply[type] > 0)
                    m_fromType[type].push_back({addArc(m_typeNodes[type], m_lineNodes[line], wanted.quantity,
                                                       costOfType(wanted, type)),
                                                line});
        }
    }

    void addDirect(int kitClass, int boat) {
        const KitClass& kit = m_problem.classes[kitClass];
        const long long cost = (kit.isAwayOn(boat) ? m_away : 0) + (kit.movesTo(boat) ? 1 : 0);
        for (const int line : m_problem.linesOf[boat]) {
            const PlanLine& wanted = m_problem.lines[line];
            if (!m_filled.lines[line] ||
                std::find(wanted.types.begin(), wanted.types.end(), kit.type) == wanted.types.end())
                continue;
            m_direct[kitClass].push_back({addArc(m_classNodes[kitClass], m_lineNodes[line], kit.count(),
                                                 cost + costOfType(wanted, kit.type)),
                                          line});
        }
    }

    long long costOfType(const PlanLine& line, int type) const {
        return type == line.types.front() ? 0 : m_substitute;
    }

    template <class Simplex>
    std::vector<KitUse> usesOf(const Simplex& simplex) const {
        std::map<std::pair<int, int>, int> counts;
        std::vector<std::vector<int>> through(m_problem.types.size()); // lines, once for each place
        for (std::size_t type = 0; type < m_fromType.size(); ++type)
            for (const LineArc& each : m_fromType[type])
                through[type].insert(through[type].end(), static_cast<std::size_t>(simplex.flow(each.arc)),
                                     each.line);
        for (int i = 0; i < static_cast<int>(m_problem.classes.size()); ++i) {
            for (const LineArc& each : m_direct[i])
                if (const int count = simplex.flow(each.arc); count > 0) counts[{i, each.line}] += count;
            std::vector<int>& lines = through[m_problem.classes[i].type];
            for (int count = simplex.flow(m_toType[i]); count > 0; --count, lines.pop_back())
                ++counts[{i, lines.back()}];
        }
        std::vector<KitUse> uses;
        for (const auto& [key, count] : counts)
            uses.push_back({key.first, key.second, count});
        return uses;
    }

    Graph::Node addNode(int supply) {
        const Graph::Node node = m_graph.addNode();
        m_supply[node] = supply;
        return node;
    }

    Graph::Arc addArc(Graph::Node from, Graph::Node to, int capacity, long long cost) {
        const Graph::Arc arc = m_graph.addArc(from, to);
        m_capacity[arc] = capacity;
        m_cost[arc] = cost;
        return arc;
    }

    const MakeReadyProblem& m_problem;
    const FilledLines& m_filled;
    Graph m_graph;
    Graph::NodeMap<int> m_supply;
    Graph::ArcMap<int> m_capacity;
    Graph::ArcMap<long long> m_cost;
    long long m_away = 0;
    long long m_substitute = 0;
    std::vector<Graph::Node> m_classNodes, m_typeNodes, m_lineNodes;
    Graph::Node m_unused;
    std::vector<Graph::Arc> m_toType;             // per class
    std::vector<std::vector<LineArc>> m_direct;   // per class
    std::vector<std::vector<LineArc>> m_fromType; // per type
};

} // namespace

std::optional<std::vector<KitUse>> cheapestUse(const MakeReadyProblem& problem, const FilledLines& filled) {
    return FillingFlow(problem, filled).solve();
}

} // namespace core
