#pragma once

#include "core/store/database.h"

#include <span>
#include <string_view>

namespace core {

/// One numbered step of the schema. Never edited after a release.
struct Migration {
    int version;
    std::string_view sql;
};

/// The steps from an empty file to the present schema, rising by one. The first makes version 3: those before
/// it were never released.
std::span<const Migration> migrations();

/// Runs what is missing, each script with its version number in one transaction.
void migrate(Database& database, std::span<const Migration> steps);

} // namespace core
