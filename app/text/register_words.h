#pragma once

#include "core/register/sheets.h"

#include <QString>

namespace app {

// The register's columns and choices in a person's words, once for all forms and tables. docs/register-csv.md
// says what each of them means.

/// "to be ordered ahead": the label of a cell.
QString columnInWords(core::SheetId sheet, std::string_view column);
/// "kg", "days"; empty: none. Of a life rule's `n` by its kind, see `countedBy`.
QString unitOf(core::SheetId sheet, std::string_view column);
/// How the cell is written, where that does not go without saying; empty: it does.
QString hintOf(core::SheetId sheet, std::string_view column);
/// One of the column's choices, or a default, in words; another text as it is. Yes and no, too.
QString choiceInWords(const core::Column& column, const std::string& choice);
/// Why something is written off, in words; another text as it is.
QString writtenOffAs(const std::string& why);
/// "months", "years", "hours", "launches": what `n` of a rule of that kind counts; empty: nothing.
QString countedBy(const std::string& ruleKind);
/// "boats", "kit types": the rows of a sheet.
QString rowsInWords(core::SheetId sheet);

} // namespace app
