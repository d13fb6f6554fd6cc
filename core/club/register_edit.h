#pragma once

#include "core/answers/outlook.h"
#include "core/exchange/csv_import.h"
#include "core/record/facts.h"
#include "core/register/sheets.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// One row as a person writes it. Cells as the CSV contract spells them, by column name; an empty text clears
/// its cell, a column that is not named keeps what it holds.
struct RowEdit {
    CellTexts key;             ///< the row's key cells, as it is stored; empty: a new row
    CellTexts cells;           ///< of a new row with its key
    std::optional<Cells> seen; ///< the row as it was looked at: refused when it holds something else by now
};

/// Rows of one sheet that are written together: all or none.
struct RegisterEdit {
    SheetId sheet = SheetId::Places;
    std::vector<RowEdit> rows;
};

/// What an edit would do, or did. With `rejected` cells nothing was written; `row` of one counts the edit's
/// rows from 1.
struct EditPlan {
    std::vector<RejectedRow> rejected;
    /// What is taken and may not be meant so; an import of the rows tells it, too.
    std::vector<RejectedRow> warnings;
    std::vector<RowChange> changes; ///< only cells that truly differ; empty: it stands so already
    OutlookChange effects;          ///< only of a plan
};

} // namespace core
