#pragma once

#include "core/ledger/fact.h"
#include "core/store/row_table.h"

#include <nlohmann/json_fwd.hpp>

namespace core {

/// Lays one fact over the row of the register that the older facts made. `body`: the fact's, read already;
/// with "gone" it takes the row away, and a later fact begins it anew.
void overlay(const Sheet& sheet, const Fact& fact, const nlohmann::json& body, StoredRow& row);

} // namespace core
