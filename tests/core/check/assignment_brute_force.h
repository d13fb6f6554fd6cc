#pragma once

#include "core/check/assignment.h"

#include <algorithm>
#include <limits>
#include <tuple>
#include <vector>

namespace core {

/// Tries every assignment and keeps the first in the order of the design, word by word: written for being
/// obviously right, not for speed.
class BruteForce {
public:
    explicit BruteForce(const AssignmentTask& task)
        : m_task(task)
        , m_itemOf(task.places.size(), -1)
        , m_used(task.items.size(), false) {}

    std::vector<int> best() {
        tryFrom(0);
        return m_best;
    }

private:
    using Key = std::tuple<int, int, int, int, long long, std::vector<int>, std::vector<int>>;

    void tryFrom(std::size_t place) {
        if (place == m_task.places.size()) {
            const Key key = keyNow();
            if (m_best.empty() || key < m_bestKey) {
                m_bestKey = key;
                m_best = m_itemOf;
            }
            return;
        }
        tryFrom(place + 1);
        for (const AssignmentChoice& choice : m_task.places[place].choices) {
            if (m_used[choice.item]) continue;
            m_used[choice.item] = true;
            m_itemOf[place] = choice.item;
            tryFrom(place + 1);
            m_itemOf[place] = -1;
            m_used[choice.item] = false;
        }
    }

    /// Less is better in every part.
    Key keyNow() const {
        int required = 0, other = 0, ownType = 0, ownBoat = 0;
        long long dueSum = 0;
        std::vector<int> codes, byPlace;
        for (std::size_t p = 0; p < m_itemOf.size(); ++p) {
            const int item = m_itemOf[p];
            byPlace.push_back(item < 0 ? std::numeric_limits<int>::max() : item);
            if (item < 0) continue;
            const auto& choices = m_task.places[p].choices;
            const auto chosen = std::find_if(choices.begin(), choices.end(),
                                             [&](const AssignmentChoice& c) { return c.item == item; });
            (m_task.places[p].required ? required : other) += 1;
            ownType += chosen->ownType ? 1 : 0;
            ownBoat += m_task.items[item].ownBoat ? 1 : 0;
            dueSum += m_task.items[item].due;
            codes.push_back(item);
        }
        std::sort(codes.begin(), codes.end());
        return {-required, -other, -ownType, -ownBoat, dueSum, codes, byPlace};
    }

    const AssignmentTask& m_task;
    std::vector<int> m_itemOf;
    std::vector<bool> m_used;
    std::vector<int> m_best;
    Key m_bestKey;
};

inline std::vector<int> bruteForceAssignment(const AssignmentTask& task) {
    return BruteForce(task).best();
}

} // namespace core
