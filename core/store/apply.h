#pragma once

#include "core/record/fact.h"
#include "core/store/database.h"

namespace core {

/// Applies one fact to the tables. Order-free: whatever the order in which the facts of several machines
/// arrive, the tables come out the same. Needs the fact in the fact table (an old fact of a row makes the row
/// be built anew).
void apply(Database& database, const Fact& fact);

/// Empties `target`'s tables and applies all facts of `source` to them in the order of their stamps. The two
/// may be one.
void rebuildTables(Database& source, Database& target);

} // namespace core
