#include "core/store/check_store.h"

#include "core/store/check_acts.h"
#include "core/store/item_states.h"
#include "core/store/sign_off_tables.h"

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
    input.location = run.location;
    input.phase = run.phase;
    const std::string& where = run.location.name;
    const auto boat = run.location.isBoat() ? m_register.boat(where) : std::nullopt;
    if (boat) {
        input.boatClass = boat->boatClass;
        input.lines = m_register.manifestOf(*boat);
        for (const BoatPoint& point : m_register.pointsOf(*boat, nameOf(run.phase)))
            input.points.push_back({point, checkActs::pointValue(m_database, run.check, point.name)});
    }
    input.people = peopleOf(run.check);
    std::set<std::string> known;
    for (const Sighting& sighting : checkTables::sightings(m_database, run.check)) {
        if (!known.insert(sighting.code).second)
            addSeenAgain(input, sighting);
        else if (auto record = m_register.record(sighting.code))
            input.seen.push_back(seenItem(std::move(*record), sighting, run));
        else
            input.unknownTags.push_back(sighting.code);
    }
    if (boat) input.logOpen = openOnly(m_register.logOfBoat(boat->name));
    if (input.phase == Phase::Return)
        if (const auto launch = outOn(where)) input.expectedBack = itemsSeenIn(launch->check);
    if (input.phase == Phase::Stocktake) addItemsOfPlace(input);
    addKitTypes(input);
    return input;
}

void CheckStore::addSighting(BoatCheckInput& input, const CheckRun& run, const Sighting& sighting) const {
    auto record = m_register.record(sighting.code);
    if (!record) {
        input.unknownTags.push_back(sighting.code);
        return;
    }
    // An item that was missing is so no longer, wherever it is looked for.
    const auto expected = std::find_if(input.expectedBack.begin(), input.expectedBack.end(),
                                       [&](const ItemRecord& each) { return each.item.id == sighting.code; });
    if (expected != input.expectedBack.end()) *expected = *record;
    input.seen.push_back(seenItem(std::move(*record), sighting, run));
    addKitTypes(input);
}

void CheckStore::dropSighting(BoatCheckInput& input, const std::string& code) const {
    std::erase(input.unknownTags, code);
    const auto gone =
        std::erase_if(input.seen, [&](const SeenItem& each) { return each.record.item.id == code; });
    if (gone == 0) return;
    // An item that was missing before it was seen is so again.
    for (ItemRecord& expected : input.expectedBack)
        if (expected.item.id == code)
            if (auto record = m_register.record(code)) expected = std::move(*record);
}

/// It may have been marked missing in between.
void CheckStore::addSeenAgain(BoatCheckInput& input, const Sighting& sighting) const {
    for (SeenItem& seen : input.seen)
        if (seen.record.item.id == sighting.code)
            seen.wasMissing = seen.wasMissing || wasMissingBefore(seen.record, sighting);
}

bool CheckStore::wasMissingBefore(const ItemRecord& record, const Sighting& sighting) const {
    return itemStates::now(m_database, record.item.id, record.services, sighting.stamp).state ==
           ItemState::Missing;
}

SeenItem CheckStore::seenItem(ItemRecord record, const Sighting& first, const CheckRun& run) const {
    SeenItem seen;
    const std::string& code = record.item.id;
    seen.wasMissing = wasMissingBefore(record, first);
    seen.logOpen = openOnly(m_register.logOfItem(code));
    seen.print = checkTables::printGrade(m_database, code);
    if (run.phase == Phase::Return)
        if (const auto launch = signOffTables::newestLaunchOf(m_database, code)) {
            seen.lastLaunchedOn = launch->location.name;
            seen.cameBackSince =
                signOffTables::cameBackOn(m_database, seen.lastLaunchedOn, code, launch->stamp);
        }
    seen.record = std::move(record);
    return seen;
}

std::optional<SignOff> CheckStore::outOn(const std::string& boat) const {
    const auto newest = signOffTables::newestSignOff(m_database, boat);
    return newest && newest->phase == Phase::Launch ? newest : std::nullopt;
}

std::vector<Person> CheckStore::peopleOf(const std::string& check) const {
    std::vector<Person> people;
    for (const std::string& name : checkActs::names(m_database, check))
        if (auto person = m_register.person(name)) people.push_back(std::move(*person));
    return people;
}

std::vector<ItemRecord> CheckStore::itemsSeenIn(const std::string& check) const {
    std::vector<ItemRecord> records;
    for (const Sighting& sighting : firstOfEachTag(checkTables::sightings(m_database, check)))
        if (auto record = m_register.record(sighting.code)) records.push_back(std::move(*record));
    return records;
}

void CheckStore::addItemsOfPlace(BoatCheckInput& input) const {
    for (const Cells& cells : m_register.where(SheetId::Items, "place", input.location.name)) {
        auto record = m_register.record(cells[0]);
        if (!record) continue;
        const std::string& code = record->item.id;
        const auto launch = signOffTables::newestLaunchOf(m_database, code);
        const auto out = launch ? outOn(launch->location.name) : std::nullopt;
        if (out && out->check == launch->check) input.outOnBoats.insert(code);
        input.expectedBack.push_back(std::move(*record));
    }
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
