#pragma once

#include "core/register/operation.h"
#include "core/store/check_tables.h"
#include "core/store/database.h"

#include <optional>
#include <string>
#include <vector>

namespace core::tripTables {

/// `key`: the event's folded name.
void putEvent(Database& database, const std::string& check, const std::string& stamp, const std::string& key,
              const std::string& event);
std::string eventOf(Database& database, const std::string& check); ///< empty: filed under none
std::vector<std::string> events(Database& database); ///< each name once, the one given last first
/// Checks filed under an event, as they were opened.
std::vector<CheckRun> runsOfEvent(Database& database, const std::string& key);
/// Checks opened from one instant up to before another (ISO texts), as they were opened.
std::vector<CheckRun> runsBetween(Database& database, const std::string& from, const std::string& to);

/// `body`: JSON, see core/record/documents.h.
void putOperation(Database& database, const std::string& check, const std::string& stamp,
                  const std::string& boat, const std::string& body);
std::optional<Operation> operation(Database& database, const std::string& check);

void clear(Database& database);
const std::vector<std::string>& tables();

} // namespace core::tripTables
