#include "core/check/place_matching.h"

#include <algorithm>
#include <functional>
#include <limits>
#include <queue>

namespace core {
namespace {

using Weight = std::int64_t;

struct Edge {
    int item;
    Weight weight;
};

/// Maximum-weight bipartite matching by successive shortest augmenting paths with dual prices (Kuhn 1955,
/// Munkres 1957; the place-by-place form of Jonker and Volgenant 1987), in whole numbers throughout. A place
/// may stay empty.
///
/// The three counts are one number of base places + 1: no sum of a lower count can reach one of a higher
/// count, so the greatest number is the first vector in lexicographic order.
class Matcher {
public:
    explicit Matcher(const AssignmentTask& task)
        : m_edges(task.places.size())
        , m_placePrice(task.places.size(), 0)
        , m_itemPrice(task.items.size(), 0)
        , m_itemOf(task.places.size(), -1)
        , m_placeOf(task.items.size(), -1)
        , m_distance(task.items.size(), unreached)
        , m_from(task.items.size(), -1) {
        const auto base = static_cast<Weight>(task.places.size()) + 1;
        for (std::size_t p = 0; p < task.places.size(); ++p)
            for (const AssignmentChoice& choice : task.places[p].choices)
                m_edges[p].push_back(
                    {choice.item, (task.places[p].required ? base * base : base) + (choice.ownType ? 1 : 0)});
    }

    PlaceMatching solve() {
        for (int place = 0; place < placeCount(); ++place)
            insert(place);
        return withProof();
    }

private:
    static constexpr Weight unreached = std::numeric_limits<Weight>::max();

    int placeCount() const { return static_cast<int>(m_edges.size()); }

    Weight slack(int place, const Edge& edge) const {
        return m_placePrice[place] + m_itemPrice[edge.item] - edge.weight;
    }

    /// Finds the best way to bring the place in: a chain of exchanges that ends at a free item or leaves a
    /// place empty.
    void insert(int start) {
        for (const Edge& edge : m_edges[start])
            m_placePrice[start] = std::max(m_placePrice[start], edge.weight - m_itemPrice[edge.item]);
        m_end = {m_placePrice[start], start, -1};
        m_scanned.clear();
        m_reached.clear();
        m_heap = {};
        scan(start, 0);
        while (!m_heap.empty() && m_heap.top().first < m_end.distance) {
            const auto [distance, item] = m_heap.top();
            m_heap.pop();
            if (distance == m_distance[item]) scan(m_placeOf[item], distance);
        }
        reprice();
        exchange(start);
        for (int item : m_reached)
            m_distance[item] = unreached;
    }

    void scan(int place, Weight distance) {
        m_scanned.emplace_back(place, distance);
        offerEnd({distance + m_placePrice[place], place, -1});
        for (const Edge& edge : m_edges[place]) {
            if (m_end.distance <= distance) return; // nothing can be nearer
            const Weight there = distance + slack(place, edge);
            if (there >= m_distance[edge.item]) continue;
            if (m_placeOf[edge.item] < 0)
                offerEnd({there, place, edge.item});
            else
                reach(edge.item, place, there);
        }
    }

    void reach(int item, int place, Weight distance) {
        if (m_distance[item] == unreached) m_reached.push_back(item);
        m_distance[item] = distance;
        m_from[item] = place;
        m_heap.emplace(distance, item);
    }

    struct End {
        Weight distance;
        int place; ///< takes `item`, or stays empty when that is -1
        int item;
    };

    void offerEnd(const End& end) {
        if (end.distance < m_end.distance) m_end = end;
    }

    /// Keeps every slack at 0 or more and the slacks of the matching at 0.
    void reprice() {
        for (const auto& [place, distance] : m_scanned) {
            const Weight change = m_end.distance - distance;
            if (change <= 0) continue;
            m_placePrice[place] -= change;
            if (m_itemOf[place] >= 0) m_itemPrice[m_itemOf[place]] += change;
        }
    }

    void exchange(int start) {
        int place = m_end.place;
        int item = m_end.item;
        for (;;) {
            const int left = m_itemOf[place];
            m_itemOf[place] = item;
            if (item >= 0) m_placeOf[item] = place;
            if (place == start) return;
            item = left;
            place = m_from[item];
        }
    }

    PlaceMatching withProof() {
        PlaceMatching matching{std::move(m_itemOf), std::move(m_placeOf), {}, {}, {}, {}};
        matching.tightItems.resize(m_edges.size());
        matching.tightPlaces.resize(m_itemPrice.size());
        for (int place = 0; place < placeCount(); ++place) {
            for (const Edge& edge : m_edges[place])
                if (slack(place, edge) == 0) {
                    matching.tightItems[place].push_back(edge.item);
                    matching.tightPlaces[edge.item].push_back(place);
                }
            std::sort(matching.tightItems[place].begin(), matching.tightItems[place].end());
        }
        for (Weight price : m_placePrice)
            matching.placeNeeded.push_back(price > 0);
        for (Weight price : m_itemPrice)
            matching.itemNeeded.push_back(price > 0);
        return matching;
    }

    std::vector<std::vector<Edge>> m_edges; // per place
    std::vector<Weight> m_placePrice;
    std::vector<Weight> m_itemPrice;
    std::vector<int> m_itemOf;
    std::vector<int> m_placeOf;
    // One search:
    std::vector<Weight> m_distance; // per item
    std::vector<int> m_from;        // per item: the place that would take it
    std::vector<int> m_reached;
    std::vector<std::pair<int, Weight>> m_scanned;
    std::priority_queue<std::pair<Weight, int>, std::vector<std::pair<Weight, int>>, std::greater<>> m_heap;
    End m_end{};
};

} // namespace

PlaceMatching matchPlaces(const AssignmentTask& task) {
    return Matcher(task).solve();
}

} // namespace core
