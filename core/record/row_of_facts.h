#pragma once

#include "core/record/facts.h"

#include <string>

namespace core {

/// A row of a register table.
struct StoredRow {
    std::string stamp; ///< of the newest fact that wrote it; empty: no such row yet
    int position = 0;
    Cells cells;
    bool isGone = false; ///< the newest fact took it away; its cells are empty, unless it may be back
};

/// Lays what one fact wrote over the row of the register that the older facts made. A fact that takes the row
/// away leaves nothing of it, and a later one begins it anew; but of a sheet whose rows stay while they are
/// named it only says that it is gone, and a later one brings it back whole.
void overlay(const RowWritten& written, const std::string& stamp, StoredRow& row);

} // namespace core
