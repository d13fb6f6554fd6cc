#pragma once

#include "core/spreadsheet/workbook.h"

#include <optional>
#include <string>
#include <string_view>

namespace core {

/// What a number format shows of a day.
enum class DayShown { None, Year, Month, Day };

/// Of a format code as .xlsx holds it (ECMA-376 part 1, 18.8.31).
DayShown dayShownBy(std::string_view formatCode);
/// Of a built-in format (ECMA-376 part 1, 18.8.30); nothing: it is not built in.
std::optional<DayShown> dayShownBy(int builtInFormat);

/// The day of a day number: of the system that begins with 1900-01-01 as 1 and counts the 29 February 1900
/// that never was, or of the one that begins with 1904-01-01 as 0 (ECMA-376 part 1, 18.17.4.1). Empty: none
/// of 1900 to 9999.
std::optional<std::string> isoDayOf(double dayNumber, bool from1904);

/// A day as it is shown: `2027-03` for 2027-03-01 in a format that shows month and year, and so on.
std::string asShown(const std::string& isoDay, DayShown shown);

/// The number without an exponent and without needless digits; with zeros before it where the format is made
/// of nothing else, as 00000.
std::string numberAsShown(double number, std::string_view zeros = {});

} // namespace core
