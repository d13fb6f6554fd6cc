#pragma once

#include "core/base/error.h"
#include "core/base/given_text.h" // shown, by which an error names a cell
#include "core/register/sheets.h"

#include <optional>
#include <string>
#include <string_view>

namespace core {

/// What a cell of an import says: leave the old value (neither), clear it (text is empty) or set it. With a
/// fault the text is empty and says nothing.
struct CellReading {
    std::optional<std::string> text; ///< canonical; names and lists of names still as they were written
    std::optional<Error> fault;
};

/// Sentences, in which blanks at the ends are the writer's own; all other texts are names of a kind.
bool isProse(const Column& column);

/// Reads one cell as its column's type has it. References are not looked up here.
CellReading readCell(const Column& column, std::string_view raw);

/// The cell's text as an export writes it, before CSV quoting; readCell gives `stored` back.
std::string writtenCell(const Column& column, const std::string& stored);

/// A leading `'` before what a spreadsheet would run as a formula: = + - @, TAB, CR, LF and their full-width
/// forms (OWASP, "CSV Injection"). A text that already looks guarded gets one more, so that taking one off
/// gives it back.
std::string withFormulaGuard(std::string_view text);
std::string_view withoutFormulaGuard(std::string_view text);

} // namespace core
