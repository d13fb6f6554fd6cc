#pragma once

#include "core/exchange/club_sheet/club_sheet.h"

#include <QString>

namespace app {

// A spreadsheet's import in a person's words.

QString rowKindInWords(core::SheetId sheet); ///< what one row is: "a piece of kit"
/// What a column means: "serial number", "boat or place"; empty meaning: "leave out".
QString meaningInWords(core::SheetId sheet, const std::string& meaning);
/// "Kit: 25 new, 3 changed, 10 as they are." for each kind of rows; what would be new or changed, or was.
QString planInWords(const core::ImportPlan& plan);
/// "Your words: “helm” → driver, 3 rows." Empty: none was of the club's own.
QString wordsAppliedInWords(core::SheetId sheet, const std::vector<core::WordApplied>& applied);
/// Why a row is refused; what may be ticked here to be made is named so.
QString refusalInWords(core::SheetId sheet, const core::Error& reason);
/// Rows that are taken and may not be meant so, each with its number, on a line of its own: from the one in
/// place `first` on, after the last those before it; at most so many, then how many more.
QString warnedRowsInWords(const std::vector<core::RejectedRow>& warnings, std::size_t first, int most);
/// Why nothing can be said of the rows yet, and what to choose.
QString hindranceInWords(core::SheetId sheet, const core::Error& error);

} // namespace app
