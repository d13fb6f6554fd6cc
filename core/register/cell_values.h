#pragma once

#include "core/register/kit_type.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core {

// What a cell of the register holds, apart from days and names; empty when the text is not in the contract's
// form.

std::optional<double> numberFrom(std::string_view text); ///< `-2.5`: digits, one full stop, no exponent
std::optional<int> countFrom(std::string_view text);     ///< `12`: a whole number from 0 to 1,000,000
/// How a number that was counted up is written: at most four decimals, no exponent. Of hours that is a third
/// of a second, far below what a crew tells, and nothing is left of sums that come to nothing.
std::string numberText(double number);
std::optional<std::vector<RuleStep>>
stepsFrom(std::string_view text);                              ///< `108:12;120:6`, by rising age, n above 0
std::optional<Tolerance> toleranceFrom(std::string_view text); ///< `none`, `end_of_month`, `14d`
std::vector<std::string> namesFrom(std::string_view text);     ///< `a;b`: outer blanks and empty parts off

} // namespace core
