#include "core/check/place_matching.h"

#include <algorithm>

namespace core {
namespace {

/// Two best matchings that use the same items differ by rings of exchange among places, an empty place
/// counting as one that holds nothing. A place gets an item exactly when such a ring through it avoids the
/// places settled before.
class PlaceOrder {
public:
    explicit PlaceOrder(PlaceMatching& matching)
        : m_matching(matching)
        , m_before(matching.itemOf.size(), -1)
        , m_seenIn(matching.itemOf.size(), -1)
        , m_takesIn(matching.itemOf.size(), -1) {}

    void run() {
        const int count = static_cast<int>(m_matching.itemOf.size());
        for (m_place = 0; m_place < count; ++m_place)
            settle();
    }

private:
    bool isFree(int place) const { return place > m_place; }

    void settle() {
        markTakers();
        for (int item : m_matching.tightItems[m_place]) {
            if (item == m_matching.itemOf[m_place]) return;
            const int holder = m_matching.placeOf[item];
            if (!isFree(holder)) continue; // nor is -1: nobody holds it
            const int last = findTaker(holder);
            if (last < 0) continue;
            rotate(holder, last);
            return;
        }
    }

    /// Marks the places that could take what this place holds now.
    void markTakers() {
        const int held = m_matching.itemOf[m_place];
        if (held >= 0)
            for (int place : m_matching.tightPlaces[held])
                m_takesIn[place] = m_place;
    }

    bool takesWhatIsLeft(int place) const {
        return m_matching.itemOf[m_place] >= 0 ? m_takesIn[place] == m_place : !m_matching.placeNeeded[place];
    }

    /// Follows exchanges from `holder` to a place that takes what this place holds; -1 if none does. What was
    /// seen in vain for this place is not searched again.
    int findTaker(int holder) {
        std::vector<int> stack;
        visit(holder, -1, stack);
        while (!stack.empty()) {
            const int place = stack.back();
            stack.pop_back();
            if (takesWhatIsLeft(place)) return place;
            for (int item : m_matching.tightItems[place])
                visit(m_matching.placeOf[item], place, stack);
            if (!m_matching.placeNeeded[place]) visitEmpty(place, stack);
        }
        return -1;
    }

    /// A place that may stay empty takes the emptiness of any other. One visit marks them all.
    void visitEmpty(int before, std::vector<int>& stack) {
        if (m_emptySeenIn == m_place) return;
        m_emptySeenIn = m_place;
        for (int place = m_place + 1; place < static_cast<int>(m_before.size()); ++place)
            if (m_matching.itemOf[place] < 0) visit(place, before, stack);
    }

    void visit(int place, int before, std::vector<int>& stack) {
        if (!isFree(place) || m_seenIn[place] == m_place) return;
        m_seenIn[place] = m_place;
        m_before[place] = before;
        stack.push_back(place);
    }

    /// `last` takes what this place holds, each place before it what the next one held, this place what
    /// `holder` held.
    void rotate(int holder, int last) {
        int carried = m_matching.itemOf[m_place];
        put(m_place, m_matching.itemOf[holder]);
        for (int place = last; place >= 0; place = m_before[place]) {
            const int held = m_matching.itemOf[place];
            put(place, carried);
            carried = held;
        }
    }

    void put(int place, int item) {
        m_matching.itemOf[place] = item;
        if (item >= 0) m_matching.placeOf[item] = place;
    }

    PlaceMatching& m_matching;
    int m_place = 0;
    int m_emptySeenIn = -1;
    std::vector<int> m_before;  // the place before on the way of exchange
    std::vector<int> m_seenIn;  // the place for which it was searched
    std::vector<int> m_takesIn; // the place whose item it could take
};

} // namespace

void orderPlaces(PlaceMatching& matching) {
    PlaceOrder(matching).run();
}

} // namespace core
