#include "core/answers/kit_on_hand.h"
#include "core/base/result.h"
#include "core/club/club_plans.h"
#include "core/club/club_register.h"
#include "core/club/club_state.h"

#include <algorithm>

namespace core {
namespace {

Error noPlace(const std::string& name, const std::vector<std::string>& places) {
    std::string known;
    for (const std::string& place : places)
        known += (known.empty() ? "" : ", ") + place;
    return noSuchPlace(name, known);
}

/// NotFound for a boat or place that the register does not have.
Outcome addAsked(const MakeReadyQuestion& asked, const ClubRegister& known, KitOnHandQuestion& question) {
    for (const std::string& name : asked.boats) {
        const auto boat = known.boat(name);
        if (!boat) return boat.error();
        question.askedBoats.insert(boat->name);
    }
    for (const std::string& name : asked.places) {
        const auto place = std::ranges::find_if(
            question.places, [&](const std::string& each) { return foldName(each) == foldName(name); });
        if (place == question.places.end()) return noPlace(name, question.places);
        question.askedPlaces.insert(*place);
    }
    return Done{};
}

KitOnHandQuestion readClub(const ClubState& state, const ClubRegister& known, CalendarDay today) {
    KitOnHandQuestion question{
        .places = known.places(), .kitTypes = state.registerStore.allKitTypes(), .today = today};
    for (const Boat& boat : known.boats())
        question.boats.push_back({{boat.name, boat.priority, state.registerStore.manifestOf(boat)},
                                  state.checkStore.outOn(boat.name).has_value()});
    return question;
}

ItemSeenLast readSeen(const ClubState& state, ItemRecord record, const KitOnHandQuestion& question) {
    ItemSeenLast item{.record = std::move(record)};
    const std::string& code = item.record.item.id;
    auto seen = checkTables::lastSeen(*state.database, code);
    if (!seen) return item;
    const auto home = homeOf(item.record.item, question);
    if (home && *home != seen->location) item.homeStamp = state.registerStore.homeGivenAt(code);
    item.seenAt = std::move(seen->location);
    item.seenStamp = std::move(seen->stamp);
    return item;
}

Result<KitOnHandAnswer> readOnHand(ClubState& state, const MakeReadyQuestion& asked, CalendarDay today) {
    const ReadSnapshot asOfNow(*state.database);
    const ClubRegister known(state);
    KitOnHandQuestion question = readClub(state, known, today);
    if (const Outcome good = addAsked(asked, known, question); !good) return good.error();
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
