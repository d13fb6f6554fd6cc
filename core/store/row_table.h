#pragma once

#include "core/base/instant.h"
#include "core/record/row_of_facts.h"
#include "core/register/sheets.h"
#include "core/store/database.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// A state given to an item.
struct GivenState {
    std::string code;
    std::string stamp;
    std::string id; ///< of the fact
    std::string state;
    std::string since;
    std::string why;
    std::string check; ///< in which it was given, or empty
    std::string rule;  ///< whose failed record withdrew it, or empty
};

/// The register's tables, one a sheet.
namespace rowTable {

std::optional<StoredRow> find(Database& database, const Sheet& sheet, const std::string& key);
void put(Database& database, const Sheet& sheet, const std::string& key, const StoredRow& row);
void remove(Database& database, const Sheet& sheet, const std::string& key);
std::vector<Cells> all(Database& database, const Sheet& sheet);
std::vector<Cells> where(Database& database, const Sheet& sheet, std::string_view column,
                         const std::string& value);

/// The place behind all rows whose `column` holds `value` exactly.
int placeBehind(Database& database, const Sheet& sheet, std::string_view column, const std::string& value);

void putInstant(Database& database, const Sheet& sheet, const std::string& key, const std::string& at);
void removeInstant(Database& database, const Sheet& sheet, const std::string& key);
std::optional<Instant> instantOf(Database& database, const Sheet& sheet, const std::string& key);

void putState(Database& database, const GivenState& state);
void putClubName(Database& database, const std::string& stamp, const std::string& name);
std::string clubName(Database& database);

/// Names of the tables that facts are applied to, for comparing a rebuild.
const std::vector<std::string>& tables();

} // namespace rowTable
} // namespace core
