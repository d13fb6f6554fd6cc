#pragma once

#include "core/record/fact.h"
#include "core/register/sheets.h"

#include <nlohmann/json_fwd.hpp>
#include <string>

namespace core {

/// A row of a register table.
struct StoredRow {
    std::string stamp; ///< of the newest fact that wrote it; empty: no such row yet
    int position = 0;
    Cells cells;
    bool isGone = false; ///< the newest fact took it away; its cells are empty
};

/// Lays one fact over the row of the register that the older facts made. `body`: the fact's, read already;
/// with "gone" it takes the row away, and a later fact begins it anew.
void overlay(const Sheet& sheet, const Fact& fact, const nlohmann::json& body, StoredRow& row);

} // namespace core
