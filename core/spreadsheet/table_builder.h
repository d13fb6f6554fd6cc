#pragma once

#include "core/spreadsheet/workbook.h"

#include <cstddef>
#include <string>
#include <vector>

namespace core {

/// What all tables of a workbook may take together.
struct TableBudget {
    std::size_t cells = mostTableCells;
    std::size_t bytes = largestUnpacked;
    std::size_t steps = mostTableCells; ///< rows that merged cells are spread over
};

/// Makes one table of cells that come by row and column. Throws SpreadsheetFault beyond the bounds, naming
/// the sheet, and for cells that come in another order.
class TableBuilder {
public:
    TableBuilder(std::string name, TableBudget& budget);

    void add(int row, int column, SheetCell cell); ///< row from 1, column from 0; empty cells are let be
    void merge(int row, int column, int rows, int columns);
    void hide() { m_table.isHidden = true; }
    SheetTable take();

private:
    void spend(const SheetCell& cell);
    void spread(int row, int column, int rows, int columns);

    struct Merge {
        int row, column, rows, columns;
    };

    SheetTable m_table;
    TableBudget& m_budget;
    std::vector<Merge> m_merges;
};

} // namespace core
