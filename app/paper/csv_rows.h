#pragma once

#include <string>
#include <vector>

namespace app {

/// One record of a CSV for a spreadsheet (RFC 4180, ended with CRLF).
std::string csvRow(const std::vector<std::string>& cells);

/// A text of the club's, or of a person's, as a cell of it: seen as it is, and no formula (csv_cell.h).
std::string csvText(const std::string& text);

} // namespace app
