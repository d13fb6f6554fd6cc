#include "core/record/row_of_facts.h"

#include <algorithm>

namespace core {

void overlay(const RowWritten& written, const std::string& stamp, StoredRow& row) {
    const std::size_t columns = sheet(written.sheet).columns.size();
    row.stamp = stamp;
    row.isGone = written.isGone;
    if (row.isGone) {
        row.cells.assign(columns, {});
        return;
    }
    row.cells.resize(columns);
    std::copy(written.keyCells.begin(), written.keyCells.end(), row.cells.begin());
    for (const auto& [column, text] : written.set)
        row.cells[static_cast<std::size_t>(column)] = text;
    row.position = written.order.value_or(row.position);
}

} // namespace core
