#pragma once

#include "core/exchange/club_sheet/club_sheet.h"
#include "core/register/sheets.h"
#include "core/spreadsheet/workbook.h"

#include <optional>
#include <string>

namespace core {

/// What a cell of a club's own spreadsheet says to a column of the register.
struct CellMeaning {
    std::string text; ///< as the register's CSV would have it, to be read by readCell; empty: says nothing
    std::optional<ErrorCode> fault = std::nullopt; ///< DayAmbiguous, CellOfFault, CellUnsaved
};

/// Days in any order, words that are not ours, numbers with a comma or a unit. A word that is not known stays
/// as it is, so that readCell refuses it. A dash, "n/a" and the like say nothing.
CellMeaning meaningOf(const SheetCell& cell, const Column& column, std::optional<DayOrder> days);

/// One line of text: line breaks, tabs and no-break blanks are blanks; outer ones are off.
std::string oneLine(std::string_view text);

/// Whether a word means one of the column's choices by itself; a mere yes or no does not.
bool isChoiceWord(const Column& column, std::string_view word);

} // namespace core
