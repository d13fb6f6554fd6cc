#include "core/answers/kit_on_hand.h"

#include "core/upkeep/due_date.h"
#include "core/upkeep/same_name.h"

#include <algorithm>
#include <functional>

namespace core {
namespace {

/// The club's spelling of a name; the name itself when the club has none like it.
template <class Known, class NameOf>
std::string spelled(const std::string& name, const std::vector<Known>& known, NameOf nameOf) {
    const auto found = std::ranges::find_if(known, [&](const Known& k) { return sameName(nameOf(k), name); });
    return found == known.end() ? name : nameOf(*found);
}

Location spelled(const Location& location, const KitOnHandQuestion& question) {
    if (location.isBoat())
        return Location::boat(spelled(location.name, question.boats,
                                      [](const BoatInShed& b) -> const std::string& { return b.boat.boat; }));
    return Location::place(spelled(location.name, question.places, std::identity()));
}

bool isAsked(const BoatInShed& boat, const KitOnHandQuestion& question) {
    return question.askedBoats.empty() || question.askedBoats.contains(boat.boat.boat);
}

bool isPlanned(const BoatInShed& boat, const KitOnHandQuestion& question) {
    return isAsked(boat, question) && !boat.isOut;
}

std::set<std::string> wantedTypes(const KitOnHandQuestion& question) {
    std::set<std::string> types;
    for (const BoatInShed& boat : question.boats) {
        if (!isPlanned(boat, question)) continue;
        for (const ManifestLine& line : boat.boat.lines) {
            types.insert(line.kitType);
            types.insert(line.substitutes.begin(), line.substitutes.end());
        }
    }
    return types;
}

std::vector<RuleDue> duesOf(const ItemRecord& record, const KitOnHandQuestion& question) {
    const auto type = question.kitTypes.find(record.item.kitType);
    return type == question.kitTypes.end() ? std::vector<RuleDue>()
                                           : dueDatesOf(record, type->second, question.today);
}

bool isSound(const ItemRecord& record, const KitOnHandQuestion& question) {
    return record.item.state == ItemState::Serviceable &&
           std::ranges::none_of(duesOf(record, question), &RuleDue::isPassedStop);
}

std::optional<CalendarDay> earliestDue(const ItemRecord& record, const KitOnHandQuestion& question) {
    const auto dues = duesOf(record, question);
    const RuleDue* earliest = earliestOf(dues);
    return earliest ? earliest->due : std::nullopt;
}

/// Where it was seen last, unless its home was given later; else its home. Empty also for what is gone.
std::optional<Location> whereabouts(const ItemSeenLast& item, const KitOnHandQuestion& question) {
    auto at = homeOf(item.record.item, question);
    if (item.seenAt && !(at && item.homeStamp > item.seenStamp)) at = spelled(*item.seenAt, question);
    const bool isGone = at && std::ranges::any_of(question.gone, [&](const Location& gone) {
                            return gone.isBoat() == at->isBoat() && sameName(gone.name, at->name);
                        });
    return isGone ? std::nullopt : at;
}

} // namespace

std::optional<Location> homeOf(const Item& item, const KitOnHandQuestion& question) {
    if (!item.boat.empty()) return spelled(Location::boat(item.boat), question);
    if (!item.place.empty()) return spelled(Location::place(item.place), question);
    return std::nullopt;
}

std::vector<ItemRecord> worthPlacing(std::vector<ItemRecord> kit, const KitOnHandQuestion& question) {
    const std::set<std::string> wanted = wantedTypes(question);
    std::erase_if(kit, [&](const ItemRecord& record) {
        return !wanted.contains(record.item.kitType) || !isSound(record, question);
    });
    return kit;
}

KitOnHandAnswer kitOnHand(const KitOnHandQuestion& question, const std::vector<ItemSeenLast>& items) {
    KitOnHandAnswer answer;
    std::set<std::string> planned;
    for (const BoatInShed& boat : question.boats) {
        if (!isAsked(boat, question)) continue;
        if (boat.isOut) {
            answer.boatsOut.push_back(boat.boat.boat);
            continue;
        }
        answer.boats.push_back(boat.boat);
        planned.insert(boat.boat.boat);
    }
    // A boat that is not planned keeps its kit, and so does one that is out.
    const auto isOnHand = [&](const Location& at) {
        if (at.isBoat()) return planned.contains(at.name);
        return question.askedPlaces.empty() || question.askedPlaces.contains(at.name);
    };
    for (const ItemSeenLast& each : items) {
        const Item& item = each.record.item;
        const auto at = whereabouts(each, question);
        if (!at)
            answer.notPlaced.push_back(item.name());
        else if (isOnHand(*at))
            answer.kit.push_back({item.name(), item.kitType,
                                  spelled(Location::boat(item.boat), question).name, *at,
                                  earliestDue(each.record, question)});
    }
    return answer;
}

} // namespace core
