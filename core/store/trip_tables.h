#pragma once

#include "core/store/check_tables.h"
#include "core/store/database.h"

#include <string>
#include <vector>

/// Events, and the checks filed under them.
namespace core::tripTables {

std::vector<std::string> events(Database& database); ///< each name once, the one given last first
/// Checks filed under an event, as they were opened. `key`: the event's folded name.
std::vector<CheckRun> runsOfEvent(Database& database, const std::string& key);
/// Checks opened from one instant up to before another (ISO texts), as they were opened.
std::vector<CheckRun> runsBetween(Database& database, const std::string& from, const std::string& to);

} // namespace core::tripTables
