#pragma once

#include "core/record/fact.h"
#include "core/store/database.h"

#include <string>
#include <vector>

namespace core::history {

/// Every fact about an item, a boat or a person, in any order, some of them twice: what wrote its rows, its
/// checks, sightings and those undone, signatures and log entries. Names in the register's spelling.
std::vector<Fact> ofItem(Database& database, const std::string& code);
std::vector<Fact> ofBoat(Database& database, const std::string& boat);
std::vector<Fact> ofPerson(Database& database, const std::string& person);

} // namespace core::history
