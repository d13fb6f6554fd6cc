#include "core/store/check_store.h"

#include <algorithm>
#include <set>

namespace core {
namespace {

std::vector<Sighting> firstOfEachTag(const std::vector<Sighting>& sightings) {
    std::set<std::string> known;
    std::vector<Sighting> first;
    for (const Sighting& sighting : sightings)
        if (known.insert(sighting.code).second) first.push_back(sighting);
    return first;
}

} // namespace

BoatCheckInput CheckStore::inputOf(const CheckRun& run, CalendarDay today) const {
    BoatCheckInput input{.today = today};
    input.boat = run.boat;
    input.phase = phaseOf(run.phase);
    const auto boat = input.phase == Phase::Stocktake
                          ? std::nullopt
                          : m_register.boat(run.boat); // a place may have its name
    if (boat) {
        input.lines = m_register.manifestOf(*boat);
        for (const BoatPoint& point : m_register.pointsOf(*boat, run.phase))
            input.points.push_back({point, checkTables::pointValue(m_database, run.check, point.name)});
    }
    for (const std::string& name : checkTables::names(m_database, run.check))
        if (auto person = m_register.person(name)) input.people.push_back(std::move(*person));
    for (const Sighting& sighting : firstOfEachTag(checkTables::sightings(m_database, run.check))) {
        if (auto record = m_register.record(sighting.code))
            input.seen.push_back(seenItem(std::move(*record), sighting, run));
        else
            input.unknownTags.push_back(sighting.code);
    }
    if (boat) input.logOpen = openOnly(m_register.logOfBoat(boat->name));
    if (input.phase == Phase::Return)
        if (const auto launch = outOn(run.boat)) input.expectedBack = itemsSeenIn(launch->check);
    if (input.phase == Phase::Stocktake) input.expectedBack = itemsOfPlace(run.boat, input.seen);
    addKitTypes(input);
    return input;
}

SeenItem CheckStore::seenItem(ItemRecord record, const Sighting& first, const CheckRun& run) const {
    SeenItem seen;
    const std::string& code = record.item.code;
    const StateNow before = m_register.stateOf(code, record.services, first.stamp);
    seen.wasMissing = before.state == ItemState::Missing;
    seen.logOpen = openOnly(m_register.logOfItem(code));
    if (run.phase == nameOf(Phase::Return))
        if (const auto launch = checkTables::newestLaunchOf(m_database, code)) {
            seen.lastLaunchedOn = launch->boat;
            seen.launchedBoatStillOut = isOutOrCameBackWithout(*launch, code);
        }
    seen.record = std::move(record);
    return seen;
}

bool CheckStore::isOutOrCameBackWithout(const SignOff& launch, const std::string& code) const {
    for (const SignOff& later : checkTables::signOffsOf(m_database, launch.boat, launch.stamp)) {
        if (later.phase != nameOf(Phase::Return)) continue;
        const auto back = checkTables::sightings(m_database, later.check);
        if (std::any_of(back.begin(), back.end(), [&](const Sighting& s) { return s.code == code; }))
            return false;
    }
    return true;
}

std::optional<SignOff> CheckStore::outOn(const std::string& boat) const {
    const auto newest = checkTables::newestSignOff(m_database, boat);
    return newest && newest->phase == nameOf(Phase::Launch) ? newest : std::nullopt;
}

std::vector<ItemRecord> CheckStore::itemsSeenIn(const std::string& check) const {
    std::vector<ItemRecord> records;
    for (const Sighting& sighting : firstOfEachTag(checkTables::sightings(m_database, check)))
        if (auto record = m_register.record(sighting.code)) records.push_back(std::move(*record));
    return records;
}

std::vector<ItemRecord> CheckStore::itemsOfPlace(const std::string& place,
                                                 const std::vector<SeenItem>& seen) const {
    const auto isSeen = [&](const std::string& code) {
        return std::any_of(seen.begin(), seen.end(),
                           [&](const SeenItem& each) { return each.record.item.code == code; });
    };
    std::vector<ItemRecord> records;
    for (const Cells& cells : m_register.where(SheetId::Items, "place", place)) {
        auto record = m_register.record(cells[0]);
        const bool gone = !record || record->item.state == ItemState::Missing ||
                          record->item.state == ItemState::WrittenOff ||
                          (isOut(record->item.code) && !isSeen(record->item.code));
        if (!gone) records.push_back(std::move(*record));
    }
    return records;
}

bool CheckStore::isOut(const std::string& code) const {
    const auto launch = checkTables::newestLaunchOf(m_database, code);
    const auto out = launch ? outOn(launch->boat) : std::nullopt;
    return out && out->check == launch->check;
}

void CheckStore::addKitTypes(BoatCheckInput& input) const {
    const auto add = [&](const std::string& name) {
        if (input.kitTypes.contains(name)) return;
        if (auto type = m_register.kitType(name)) input.kitTypes.emplace(name, std::move(*type));
    };
    for (const ManifestLine& line : input.lines) {
        add(line.kitType);
        std::for_each(line.substitutes.begin(), line.substitutes.end(), add);
    }
    for (const SeenItem& seen : input.seen)
        add(seen.record.item.kitType);
    for (const ItemRecord& record : input.expectedBack)
        add(record.item.kitType);
}

} // namespace core
