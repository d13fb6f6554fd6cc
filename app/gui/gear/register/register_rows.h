#pragma once

#include "app/gui/widgets/plain_table_model.h"
#include "core/register/sheets.h"

#include <map>
#include <vector>

namespace core {
class ClubRegister;
}

namespace app {

/// The rows of the sheets that the page Register shows, as they are stored.
using RegisterSheets = std::map<core::SheetId, std::vector<core::Cells>>;

RegisterSheets readSheets(const core::ClubRegister& register_); ///< on the club's thread

/// A row of the register as a row of the page's table.
struct RegisterRow {
    core::SheetId sheet;
    core::Cells cells;
    TableRow shown;
};

/// Of boats, people or places their rows; of kit types each with its sizes and life rules beneath.
std::vector<RegisterRow> rowsOf(const RegisterSheets& sheets, core::SheetId shown);
std::vector<TableColumn> columnsOf(core::SheetId shown);
/// Key of a row in the table.
QString keyOfRow(core::SheetId sheet, const core::Cells& cells);
/// "Dabchick", "life jacket, size M", "life jacket: float test": what a row's form is headed with.
QString headingOf(core::SheetId sheet, const core::Cells& cells);
/// "inspect every 12 months, a stop": a life rule in short.
QString ruleInShort(const core::Cells& rule);

} // namespace app
