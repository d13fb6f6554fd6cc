#include "core/record/row_of_facts.h"

#include "core/register/typed_rows.h"

#include <algorithm>

namespace core {

void overlay(const RowWritten& written, const std::string& stamp, StoredRow& row) {
    const Sheet& sheet = core::sheet(written.sheet);
    row.stamp = stamp;
    row.isGone = written.isGone;
    row.cells.resize(sheet.columns.size());
    std::copy(written.keyCells.begin(), written.keyCells.end(), row.cells.begin());
    for (const auto& [column, text] : written.set)
        row.cells[static_cast<std::size_t>(column)] = text;
    row.position = written.order.value_or(row.position);
    // Another machine may have changed a cell of it, not knowing that it is gone: that makes no row anew.
    if (sheet.losesRows && lacksNeededCell(sheet, row.cells)) row.isGone = true;
    if (row.isGone && !sheet.staysWhileNamed) row.cells.assign(sheet.columns.size(), {});
}

} // namespace core
