#pragma once

#include "core/exchange/club_sheet/club_sheet.h"

#include <optional>
#include <string>
#include <string_view>

namespace core {

/// What a text says as a day.
struct WrittenDay {
    std::string text;         ///< YYYY-MM-DD, YYYY-MM or YYYY; empty: it says none
    bool isAmbiguous = false; ///< day first or month first, and no order was chosen
};

/// Days as people write them: 2026-03-14, 14.3.2026, 14/03/26, 14 March 2026, März 2026, 03.2027, 2027, with
/// a time of day behind, which is let be. Where day and month are numbers, `order` says which comes first;
/// without it, the one above 12 is the day, and before full stops the day comes first (DIN 5008). Of years
/// with two digits 69 to 99 are of the last century (POSIX, strptime, %y).
WrittenDay dayAsWritten(std::string_view text, std::optional<DayOrder> order);

/// A month and year that a spreadsheet took for a number: 3.2027, and 10.202 for 10.2020.
std::optional<std::string> monthOfNumber(std::string_view number);

} // namespace core
