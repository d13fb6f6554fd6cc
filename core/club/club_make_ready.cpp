#include "core/answers/kit_on_hand.h"
#include "core/base/result.h"
#include "core/club/club_plans.h"
#include "core/club/club_register.h"
#include "core/club/club_state.h"
#include "core/register/typed_rows.h"
#include "core/store/item_states.h"

#include <algorithm>

namespace core {
namespace {

Error noPlace(const std::string& name, const std::vector<std::string>& places) {
    std::string known;
    for (const std::string& place : places)
        known += (known.empty() ? "" : ", ") + place;
    return noSuchPlace(name, known);
}

bool isGone(const Location& location, const KitOnHandQuestion& question) {
    return std::ranges::find(question.gone, location) != question.gone.end();
}

/// NotFound for a boat or place that the register does not have, or that is no longer here.
Outcome addAsked(const MakeReadyQuestion& asked, ClubState& state, KitOnHandQuestion& question) {
    for (const std::string& name : asked.boats) {
        const auto boat = ClubRegister(state).boat(name);
        if (!boat) return boat.error();
        if (isGone(Location::boat(boat->name), question))
            return stillHere(boat->name, boat->until, question.today);
        question.askedBoats.insert(boat->name);
    }
    for (const std::string& name : asked.places) {
        if (const auto gone = state.registerStore.find(SheetId::Places, foldName(name));
            gone && isGone(Location::place(gone->front()), question))
            return stillHere(gone->front(), placeFrom(*gone).until, question.today);
        const auto place = std::ranges::find_if(
            question.places, [&](const std::string& each) { return foldName(each) == foldName(name); });
        if (place == question.places.end()) return noPlace(name, question.places);
        question.askedPlaces.insert(*place);
    }
    return Done{};
}

/// A boat that is out is the club's until it is back.
KitOnHandQuestion readClub(ClubState& state, CalendarDay today) {
    KitOnHandQuestion question{.kitTypes = state.registerStore.allKitTypes(), .today = today};
    for (const Cells& cells : state.registerStore.all(SheetId::Places))
        if (const ClubPlace place = placeFrom(cells); isHere(place.until, today))
            question.places.push_back(place.name);
        else
            question.gone.push_back(Location::place(place.name));
    for (const Boat& boat : ClubRegister(state).boats()) {
        const bool isOut = state.checkStore.outOn(boat.name).has_value();
        if (isOut || isHere(boat.until, today))
            question.boats.push_back(
                {{boat.name, boat.priority, state.registerStore.manifestOf(boat)}, isOut});
        else
            question.gone.push_back(Location::boat(boat.name));
    }
    return question;
}

ItemSeenLast readSeen(const ClubState& state, ItemRecord record, const KitOnHandQuestion& question) {
    ItemSeenLast item{.record = std::move(record)};
    const std::string& code = item.record.item.id;
    auto seen = checkTables::lastSeen(*state.database, code);
    if (!seen) return item;
    const auto home = homeOf(item.record.item, question);
    if (home && *home != seen->location) item.homeStamp = itemStates::homeGivenAt(*state.database, code);
    item.seenAt = std::move(seen->location);
    item.seenStamp = std::move(seen->stamp);
    return item;
}

Result<KitOnHandAnswer> readOnHand(ClubState& state, const MakeReadyQuestion& asked, CalendarDay today) {
    const ReadSnapshot asOfNow(*state.database);
    KitOnHandQuestion question = readClub(state, today);
    if (const Outcome good = addAsked(asked, state, question); !good) return good.error();
    std::vector<ItemSeenLast> items;
    for (ItemRecord& record : worthPlacing(state.registerStore.allRecords(), question))
        items.push_back(readSeen(state, std::move(record), question));
    return kitOnHand(question, items);
}

} // namespace

Result<MakeReadyPlan> ClubPlans::makeReady(const MakeReadyQuestion& asked, CalendarDay today) const {
    return guarded([&]() -> Result<MakeReadyPlan> {
        auto onHand = readOnHand(*m_state, asked, today); // the plan takes its time, and needs no file
        if (!onHand) return onHand.error();
        MakeReadyPlan plan = planMakeReady({std::move(onHand->boats), std::move(onHand->kit), asked.seconds});
        plan.boatsOut = std::move(onHand->boatsOut);
        plan.notPlaced = std::move(onHand->notPlaced);
        return plan;
    });
}

} // namespace core
