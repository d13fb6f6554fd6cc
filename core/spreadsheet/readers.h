#pragma once

#include "core/spreadsheet/packed_file.h"
#include "core/spreadsheet/workbook.h"

#include <string>
#include <string_view>
#include <vector>

namespace core {

// The kinds of files. Each throws SpreadsheetFault, or what the XML parser throws; tables may be empty.

std::vector<SheetTable> readXlsx(const PackedFile& file); ///< ECMA-376, SpreadsheetML
std::vector<SheetTable> readOds(const PackedFile& file);  ///< OpenDocument 1.3

/// Cells separated by commas, semicolons or tabs, whichever makes the most even rows; the line `sep=;` that
/// some programs write first says it. UTF-8, UTF-16 or Windows-1252.
SheetTable readDelimited(std::string_view bytes, const std::string& name);

/// UTF-8 of a text that is UTF-8, UTF-16 or, failing those, Windows-1252; without a byte-order mark. Throws
/// for what is no text.
std::string decodedText(std::string_view bytes);

} // namespace core
