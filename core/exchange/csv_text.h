#pragma once

#include "core/base/error.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core {

/// One record of a CSV text. Rows are counted from 1; a blank line keeps its number but gives no record.
struct CsvRecord {
    int row = 0;
    std::vector<std::string> cells;
};

/// The records up to the end or the first fault in the quoting.
struct CsvText {
    std::vector<CsvRecord> records;
    int faultRow = 0;               ///< 0: no fault
    std::optional<ErrorCode> fault; ///< in the quoting: CsvQuoteInCell or CsvQuoteOpen
};

/// Strict RFC 4180: comma, quotes doubled inside quotes, line breaks inside quotes, blanks are data. Records
/// end with CRLF, LF or CR. A byte-order mark is skipped. A row of empty cells only, as spreadsheets leave
/// them behind, is a blank line. Bytes are not looked at otherwise.
CsvText readCsv(std::string_view bytes);

/// The cell as RFC 4180 writes it: in quotes where needed.
std::string csvCell(std::string_view text);

} // namespace core
