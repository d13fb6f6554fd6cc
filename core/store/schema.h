#pragma once

#include "core/store/database.h"

#include <string>
#include <vector>

namespace core {

/// What of the file's schema is not as this program makes it, object by object ("trigger x", "table item"):
/// an added trigger could swallow rows, another view hide them. Empty: nothing.
std::vector<std::string> schemaDifferences(Database& database);

} // namespace core
