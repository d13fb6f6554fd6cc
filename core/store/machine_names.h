#pragma once

#include "core/store/database.h"

#include <map>
#include <string>
#include <vector>

/// What machines are called: as the computer was, or as somebody named them since. All throw StoreFailure.
namespace core::machineNames {

/// The name that was given last holds.
void put(Database& database, const std::string& machine, const std::string& stamp, const std::string& name);
std::string of(Database& database, const std::string& machine); ///< empty: unknown
std::map<std::string, std::string> all(Database& database);     ///< by machine

/// Names of the tables that facts are applied to, for comparing a rebuild.
const std::vector<std::string>& tables();

} // namespace core::machineNames
