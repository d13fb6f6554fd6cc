#pragma once

#include "core/store/check_tables.h"
#include "core/store/database.h"

#include <optional>
#include <string>
#include <vector>

/// Events, and the checks filed under them. All throw StoreFailure.
namespace core::tripTables {

std::vector<std::string> events(Database& database); ///< each name once, the one given last first
/// Checks filed under an event, as they were opened. `key`: the event's folded name.
std::vector<CheckRun> runsOfEvent(Database& database, const std::string& key);
/// Checks opened from one instant up to before another (ISO texts), as they were opened.
std::vector<CheckRun> runsBetween(Database& database, const std::string& from, const std::string& to);

/// An event that holds from `at` to `until`; without a name what held is over.
struct HeldRow {
    std::string id; ///< of the fact
    std::string stamp;
    std::string event;
    Instant at;
    Instant until;
    std::string by;
};
void putHeld(Database& database, const HeldRow& row);
/// What was said last of that instant, whether it still holds or not. Empty: nothing was.
std::optional<HeldRow> heldAt(Database& database, Instant at);

/// Names of the tables that facts are applied to, for comparing a rebuild.
const std::vector<std::string>& tables();

} // namespace core::tripTables
