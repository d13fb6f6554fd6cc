#include "app/paper/csv_rows.h"

#include "core/base/plain_text.h"
#include "core/exchange/csv_cell.h"
#include "core/exchange/csv_text.h"

namespace app {

std::string csvRow(const std::vector<std::string>& cells) {
    std::string row;
    for (std::size_t i = 0; i < cells.size(); ++i)
        row += (i == 0 ? "" : ",") + core::csvCell(cells[i]);
    return row + "\r\n";
}

std::string csvText(const std::string& text) {
    return core::withFormulaGuard(core::visibleText(text));
}

} // namespace app
