#pragma once

#include "core/store/database.h"

#include <string>
#include <vector>

/// What machines are called: as the computer was, or as somebody named them since. All throw StoreFailure.
namespace core::machineNames {

/// The name that was given last holds.
void put(Database& database, const std::string& machine, const std::string& stamp, const std::string& name);
/// Empty: nobody named it.
std::string given(Database& database, const std::string& machine);
/// The same, or what the computer was called when the machine began. Empty: unknown.
std::string of(Database& database, const std::string& machine);

/// Names of the tables that facts are applied to, for comparing a rebuild.
const std::vector<std::string>& tables();

} // namespace core::machineNames
