#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace core {

/// What stands in a cell of somebody's spreadsheet; of a formula, the value that was saved with it.
struct SheetCell {
    enum class Kind {
        Empty,
        Text,
        Number, ///< digits with a full stop, no exponent; with the zeros that a format like 00000 puts before
        Day,    ///< YYYY-MM-DD; YYYY-MM or YYYY where the format shows no more and the value is the first day
        YesNo,  ///< `yes` or `no`
        Fault,  ///< a formula went wrong: `#N/A` and the like
        Unsaved, ///< a formula whose value the writer did not save
    };

    Kind kind = Kind::Empty;
    std::string text = {}; ///< valid UTF-8
    int columns = 1;       ///< how many columns it covers, when cells were merged

    bool isEmpty() const { return kind == Kind::Empty; }
};

/// A row with something in it: its number as the spreadsheet shows it (from 1), its cells with their columns
/// (from 0), by column.
struct TableRow {
    int number = 0;
    std::vector<std::pair<int, SheetCell>> cells;

    const SheetCell& at(int column) const; ///< an empty cell where there is none
};

/// One sheet of a workbook. A value that is merged over several rows stands in each of them.
struct SheetTable {
    std::string name;
    bool isHidden = false;
    std::vector<TableRow> rows; ///< by number
};

struct Workbook {
    std::vector<SheetTable> tables; ///< those with something in them, in the file's order; at least one
};

// What is read at most. More than that is refused, never cut off.
constexpr std::size_t largestWorkbook = 64U << 20;  ///< bytes of the file
constexpr std::size_t largestUnpacked = 512U << 20; ///< bytes of its parts, and of all texts in cells
constexpr int mostTableRows = 200'000;              ///< the largest number of a row
constexpr int mostTableColumns = 256;
constexpr std::size_t longestCell = 131'072;      ///< bytes; spreadsheet programs have 32,767 characters
constexpr std::size_t mostTableCells = 4'000'000; ///< with something in them, in all sheets

/// Reads .xlsx, .ods, .csv, .tsv or .txt, by what is in the file rather than by its name. FileMissing;
/// BadInput for what cannot be read, is protected, too large or empty, with the file in `where`. Nothing in
/// a file can take more time or memory than follows from the bounds above.
Result<Workbook> readWorkbook(const std::filesystem::path& file);

/// The same of the bytes of a file of that name, which a sheet of a text file is called by.
Result<Workbook> readWorkbook(std::string_view bytes, const std::string& fileName);

/// `B7`: column from 0, row from 1.
std::string cellAddress(int column, int row);
std::string columnLetters(int column); ///< A, Z, AA

} // namespace core
