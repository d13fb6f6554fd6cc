#include "core/check/place_matching.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace core {
namespace {

/// The sets of items that best matchings use are the bases of a matroid (the greatest values of the valuated
/// matroid of a weighted bipartite graph: Murota, Discrete Convex Analysis, 2003), so the greedy rule finds
/// the best one: take the items from the best to the worst, and keep each that some best matching can use
/// beside those kept already.
class Preference {
public:
    Preference(PlaceMatching& matching, const AssignmentTask& task)
        : m_matching(matching)
        , m_items(task.items)
        , m_kept(task.items.size(), false)
        , m_from(task.places.size(), unseen) {}

    void run() {
        for (int item : fromBestToWorst())
            m_kept[item] = m_matching.placeOf[item] >= 0 || bringIn(item);
    }

private:
    static constexpr int unseen = -2;
    static constexpr int first = -1;

    std::vector<int> fromBestToWorst() const {
        std::vector<int> order(m_items.size());
        std::iota(order.begin(), order.end(), 0);
        const auto rank = [this](int i) { return std::tuple(!m_items[i].ownBoat, m_items[i].due, i); };
        std::ranges::sort(order, {}, rank);
        return order;
    }

    bool canLeave(int item) const { return !m_kept[item] && !m_matching.itemNeeded[item]; }

    /// Searches a chain of exchanges from the unused item to a used one that may leave. Places where a search
    /// failed stay marked: they lead only to items that are kept for good, so no later search can succeed
    /// through them.
    bool bringIn(int item) {
        std::vector<int> queue;
        const auto spread = [&](int via, int from) {
            for (int place : m_matching.tightPlaces[via])
                if (m_from[place] == unseen) {
                    m_from[place] = from;
                    queue.push_back(place);
                }
        };
        spread(item, first);
        for (std::size_t next = 0; next < queue.size(); ++next) {
            const int holder = queue[next];
            const int held = m_matching.itemOf[holder];
            if (held < 0) continue; // cannot be: an unused item beside an empty place would have been used
            if (canLeave(held)) {
                exchange(item, holder);
                for (int place : queue)
                    m_from[place] = unseen;
                return true;
            }
            spread(held, holder);
        }
        return false;
    }

    void exchange(int item, int last) {
        m_matching.placeOf[m_matching.itemOf[last]] = -1;
        for (int place = last; place != first; place = m_from[place]) {
            const int taken = m_from[place] == first ? item : m_matching.itemOf[m_from[place]];
            m_matching.itemOf[place] = taken;
            m_matching.placeOf[taken] = place;
        }
    }

    PlaceMatching& m_matching;
    const std::vector<AssignmentItem>& m_items;
    std::vector<bool> m_kept;
    std::vector<int> m_from; // per place: the place whose item would move here
};

} // namespace

void preferItems(PlaceMatching& matching, const AssignmentTask& task) {
    Preference(matching, task).run();
}

} // namespace core
