#include "core/answers/event_tally.h"

#include "core/register/sheets.h"

#include <algorithm>
#include <map>
#include <set>

namespace core {
namespace {

/// Who went, or at least who signed.
std::vector<std::string> peopleOf(const SignOff& signOff, const std::vector<std::string>& named) {
    return named.empty() ? std::vector<std::string>{signOff.by} : named;
}

class TallyOfTrips {
public:
    void add(const Trip& trip) {
        const std::string& boat = trip.launch.location.name;
        BoatTally& tally = m_boats[foldName(boat)];
        tally.boat = boat;
        if (!tally.launchedAt) {
            tally.launchedAt = trip.launch.at;
            tally.launchedBy = peopleOf(trip.launch, trip.launchPeople);
        }
        const bool isBack = trip.next && trip.next->phase == Phase::Return;
        tally.returnedAt = isBack ? std::optional(trip.next->at) : std::nullopt;
        tally.returnSignedBy = isBack ? trip.next->by : std::string();
        tally.returnedBy = isBack ? peopleOf(*trip.next, trip.nextPeople) : std::vector<std::string>();
        for (const TripItem& item : trip.kit)
            addItem(tally, item);
    }

    std::vector<BoatTally> boats() const {
        std::vector<BoatTally> all;
        for (const auto& [key, tally] : m_boats) {
            all.push_back(tally);
            for (auto* items : {&all.back().out, &all.back().back, &all.back().notReturned})
                std::ranges::sort(*items, {}, &ItemName::id);
        }
        return all;
    }

    /// Pairs first: of two things of a kind that went opposite ways, the one that went out first names the
    /// pair.
    std::vector<Swap> swaps() const {
        std::vector<Swap> pairs, alone;
        std::set<std::string> told;
        for (const Swap& each : m_swaps) {
            if (!told.insert(each.item.id).second) continue;
            const auto other = std::ranges::find_if(m_swaps, [&](const Swap& candidate) {
                return isOppositeOf(each, candidate) && !told.contains(candidate.item.id);
            });
            if (other == m_swaps.end()) {
                alone.push_back(each);
                continue;
            }
            told.insert(other->item.id);
            pairs.push_back(each);
            pairs.back().against = other->item;
        }
        pairs.insert(pairs.end(), alone.begin(), alone.end());
        return pairs;
    }

    bool wentOut(const std::string& item) const { return m_out.contains(item); }

private:
    void addItem(BoatTally& tally, const TripItem& item) {
        m_out.insert(item.item.id);
        for (auto* items : {&tally.out, &tally.back, &tally.notReturned}) // a later trip decides
            std::erase(*items, item.item);
        tally.out.push_back(item.item);
        if (item.backOn == tally.boat)
            tally.back.push_back(item.item);
        else if (!item.backOn.empty())
            m_swaps.push_back({item.item, item.kitType, tally.boat, item.backOn, {}});
        else if (tally.returnedAt && !item.seenSince)
            tally.notReturned.push_back(item.item);
    }

    static bool isOppositeOf(const Swap& a, const Swap& b) {
        return a.kitType == b.kitType && a.wentOutOn == b.cameBackOn && a.cameBackOn == b.wentOutOn;
    }

    std::map<std::string, BoatTally> m_boats; // by folded name
    std::vector<Swap> m_swaps;
    std::set<std::string> m_out;
};

} // namespace

EventTally tallyOf(const std::string& event, const std::vector<Trip>& trips,
                   const std::vector<MissingItem>& missing) {
    TallyOfTrips tally;
    for (const Trip& trip : trips)
        tally.add(trip);
    EventTally answer{event, tally.boats(), tally.swaps(), missing};
    std::erase_if(answer.missing, [&](const MissingItem& item) { return !tally.wentOut(item.item.id); });
    return answer;
}

std::vector<CheckRun> openedOn(CalendarDay day, std::vector<CheckRun> runs) {
    std::erase_if(runs, [&](const CheckRun& run) { return run.openedAt.localDay() != day; });
    return runs;
}

} // namespace core
