#pragma once

#include "core/record/facts.h"
#include "core/store/database.h"

#include <string>
#include <vector>

/// What is called how now. A fact keeps the name that was used when it was written; the tables know only the
/// names of now. Whatever was ever renamed into each other is one thing, and the newest fact that renamed it
/// says its name; so the order in which facts arrive does not matter.
namespace core::namesNow {

void put(Database& database, const std::string& id, const std::string& stamp, const Renamed& renamed);
/// After the last `put`: what `of` answers from.
void settle(Database& database);

/// The name of now; the same where nothing was renamed. `of`: of a size its kit type, by any of its names.
std::string of(Database& database, Named named, const std::string& name, const std::string& of = {});
std::vector<std::string> of(Database& database, Named named, const std::vector<std::string>& names);

/// A cell of that column with the names of now in it; a size's, which wants its row, stays as it is.
std::string cell(Database& database, const Sheet& sheet, int column, const std::string& cell);
/// The row with all names of now but those of sizes, for which `settleSize` wants the whole row.
RowWritten row(Database& database, RowWritten written);
void settleSize(Database& database, const Sheet& sheet, Cells& cells);

/// Names of the tables that facts are applied to, for comparing a rebuild.
const std::vector<std::string>& tables();

} // namespace core::namesNow
