#include "core/spreadsheet/table_builder.h"

#include "core/base/given_text.h"
#include "core/base/plain_text.h"
#include "core/spreadsheet/spreadsheet_fault.h"

#include <algorithm>
#include <utility>

namespace core {
namespace {

auto cellFrom(auto& cells, int column) {
    return std::lower_bound(cells.begin(), cells.end(), column,
                            [](const auto& each, int wanted) { return each.first < wanted; });
}

auto rowFrom(std::vector<TableRow>& rows, int number) {
    return std::lower_bound(rows.begin(), rows.end(), number,
                            [](const TableRow& row, int wanted) { return row.number < wanted; });
}

} // namespace

const SheetCell& TableRow::at(int column) const {
    static const SheetCell nothing;
    const auto found = cellFrom(cells, column);
    return found != cells.end() && found->first == column ? found->second : nothing;
}

TableBuilder::TableBuilder(std::string name, TableBudget& budget)
    : m_budget(budget) {
    m_table.name = isUtf8(name) ? std::move(name) : visibleText(name);
}

void TableBuilder::spend(const SheetCell& cell) {
    if (m_budget.cells == 0 || m_budget.bytes < cell.text.size())
        refuse(ErrorCode::SpreadsheetTooManyCells, {std::to_string(mostTableCells)});
    --m_budget.cells;
    m_budget.bytes -= cell.text.size();
}

void TableBuilder::add(int row, int column, SheetCell cell) {
    if (cell.kind == SheetCell::Kind::Text && withoutOuterBlanks(cell.text).empty()) return;
    if (cell.isEmpty()) return;
    if (cell.text.size() > longestCell) refuse(ErrorCode::SpreadsheetUnreadable);
    if (row > mostTableRows)
        refuse(ErrorCode::SpreadsheetTooLong, {shown(m_table.name), std::to_string(mostTableRows)});
    if (column >= mostTableColumns)
        refuse(ErrorCode::SpreadsheetTooWide, {shown(m_table.name), std::to_string(mostTableColumns)});
    if (!isUtf8(cell.text)) cell.text = visibleText(cell.text);
    spend(cell);
    std::vector<TableRow>& rows = m_table.rows;
    if (rows.empty() || rows.back().number < row) rows.push_back({row, {}});
    auto& cells = rows.back().cells;
    if (rows.back().number != row || (!cells.empty() && cells.back().first >= column))
        refuse(ErrorCode::SpreadsheetUnreadable);
    cells.emplace_back(column, std::move(cell));
}

void TableBuilder::merge(int row, int column, int rows, int columns) {
    if (rows < 1 || columns < 1 || m_merges.size() == mostTableCells)
        refuse(ErrorCode::SpreadsheetUnreadable);
    m_merges.push_back({row, column, rows, columns});
}

/// Only rows that have something else in them get the value.
void TableBuilder::spread(int row, int column, int rows, int columns) {
    auto at = rowFrom(m_table.rows, row);
    if (at == m_table.rows.end() || at->number != row) return;
    const auto first = cellFrom(at->cells, column);
    if (first == at->cells.end() || first->first != column) return;
    first->second.columns = std::max(1, std::min(columns, mostTableColumns - column));
    const SheetCell value = first->second;
    for (++at; at != m_table.rows.end() && at->number - row < rows; ++at) {
        if (m_budget.steps-- == 0)
            refuse(ErrorCode::SpreadsheetTooManyCells, {std::to_string(mostTableCells)});
        const auto place = cellFrom(at->cells, column);
        if (place != at->cells.end() && place->first == column) continue;
        spend(value);
        at->cells.emplace(place, column, value);
    }
}

SheetTable TableBuilder::take() {
    for (const Merge& merge : m_merges)
        spread(merge.row, merge.column, merge.rows, merge.columns);
    return std::move(m_table);
}

} // namespace core
