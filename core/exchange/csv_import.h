#pragma once

#include "core/base/calendar_day.h"
#include "core/base/result.h"
#include "core/register/sheets.h"
#include "core/tag/tag_code.h"

#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace core {

/// Why one row of a file cannot be imported. Rows count records, not lines (a quoted cell may hold line
/// breaks); the header is row 1, and a blank line is no record but keeps its number. Row 0: the file as a
/// whole.
struct RejectedRow {
    std::string file;
    int row = 0;
    std::string column;    ///< empty: the row as a whole
    Error reason;          ///< what is wrong; its `where` stays empty
    std::string cell = {}; ///< `B7`, of a club's own spreadsheet; its sheet is the file then
};

/// What an import would do. With `rejected` rows there are no changes: all or nothing.
struct ImportPlan {
    std::vector<std::pair<std::string, int>>
        accepted;                      ///< file and its good rows, in the contract's order of files
    std::vector<RejectedRow> rejected; ///< in the contract's order of files, then by row and column
    std::vector<RejectedRow> warnings; ///< rows that are taken and may not be meant so; likewise ordered
    std::vector<RowChange> changes;    ///< only cells that truly differ from the register
};

/// Reads the CSV files of `folder` against the register. Nothing is written. Error only when the folder is
/// missing or cannot be read, or holds no CSV file; everything else is a rejected row. Files that do not end
/// in .csv are ignored. `mintTag` gives a fresh code, for what is new and has none; it is asked again when
/// that code is taken.
/// `progress` may be empty.
Result<ImportPlan> planImport(const std::filesystem::path& folder, const RegisterRows& current,
                              CalendarDay today, const MintTag& mintTag,
                              const std::function<void(int done, int of)>& progress = {});

/// The same for the text of one file of the contract, as a row that a person changed.
ImportPlan planSheet(const Sheet& sheet, std::string_view csv, const RegisterRows& current, CalendarDay today,
                     const MintTag& mintTag);

/// The CSV text of rows, header and all: of each only the columns given, by name. An empty text clears its
/// cell.
std::string sheetOfRows(const Sheet& sheet, const std::vector<CellTexts>& rows);
/// planSheet of them. Without `mintTag` of a sheet whose rows get no tags.
ImportPlan planRows(const Sheet& sheet, const std::vector<CellTexts>& rows, const RegisterRows& current,
                    CalendarDay today, const MintTag& mintTag = {});

} // namespace core
