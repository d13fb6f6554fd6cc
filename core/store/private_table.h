#pragma once

#include "core/record/private_cells.h"
#include "core/store/database.h"

#include <optional>
#include <string>
#include <vector>

/// Private cells, which stand beside the facts.
namespace core::privateTable {

void put(Database& database, const std::string& fact, const std::vector<PrivateCell>& cells);
std::optional<PrivateCell> find(Database& database, const std::string& fact, const std::string& column);
std::vector<PrivateCell> of(Database& database, const std::string& fact);
int cellsOf(Database& database, const std::string& fact); ///< how many are there
/// Cells that stand there for facts that are not, or for columns that those do not seal: "fact column". And
/// facts that are told not to have theirs here, and have: "fact".
std::vector<std::string> strays(Database& database);

/// Takes the cells of that fact out, and keeps them out. `stamp`: of the fact that says so.
void erase(Database& database, const std::string& fact, const std::string& stamp);
bool isErased(Database& database, const std::string& fact);

/// The cells of that fact were not handed on to this file; they may come later.
void noteNotHere(Database& database, const std::string& fact);
bool isNotHere(Database& database, const std::string& fact);
std::vector<std::string> notHere(Database& database); ///< ids of such facts
/// They came.
void putWhatWasNotHere(Database& database, const std::string& fact, const std::vector<PrivateCell>& cells);

/// Puts the cells that are still there among what the row sets; one that was erased is empty.
void open(Database& database, const std::string& fact, RowWritten& row);

/// Names of the tables that facts are applied to, for comparing a rebuild.
const std::vector<std::string>& tables();

} // namespace core::privateTable
