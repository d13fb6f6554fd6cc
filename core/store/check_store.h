#pragma once

#include "core/check/boat_check.h"
#include "core/store/check_tables.h"
#include "core/store/database.h"
#include "core/store/register_store.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// Puts together what the rules of a check need, from the register and the record. Reads only what the check
/// touches, so its cost does not grow with the club's history. Throws StoreFailure.
class CheckStore {
public:
    explicit CheckStore(Database& database)
        : m_database(database)
        , m_register(database) {}

    /// Of a check that exists; its boat may since have left the register (then lines and points are empty).
    BoatCheckInput inputOf(const CheckRun& run, CalendarDay today) const;

    /// Adds the first sighting of a tag, which was recorded after `input` was read. Reads that item alone.
    void addSighting(BoatCheckInput& input, const CheckRun& run, const Sighting& sighting) const;
    /// The same for one that was taken back; `code`: that of the tag. Not for a stocktake.
    void dropSighting(BoatCheckInput& input, const std::string& code) const;

    /// The signed launch check that the boat is out on: its newest launch, unless a return was signed after
    /// it.
    std::optional<SignOff> outOn(const std::string& boat) const;

    /// The people that a check named, as far as the register has them, in their order.
    std::vector<Person> peopleOf(const std::string& check) const;

    /// Records of the items seen in a check, each once, in the order of the first sighting.
    std::vector<ItemRecord> itemsSeenIn(const std::string& check) const;

private:
    /// What has its home at the place of a stocktake, and which of that a boat has out.
    void addItemsOfPlace(BoatCheckInput& input) const;
    void addSeenAgain(BoatCheckInput& input, const Sighting& sighting) const;
    bool wasMissingBefore(const ItemRecord& record, const Sighting& sighting) const;
    SeenItem seenItem(ItemRecord record, const Sighting& first, const CheckRun& run) const;
    void addKitTypes(BoatCheckInput& input) const;

    Database& m_database;
    RegisterStore m_register;
};

} // namespace core
