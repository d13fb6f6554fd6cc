#pragma once

#include <string_view>

namespace core {

/// Whether the texts differ by one slip of the hand: a character left out, put in, another one, or two
/// neighbours exchanged (Damerau–Levenshtein distance 1, from memory). Equal texts are no slip. Bytes, so
/// give folded or plain ASCII text.
bool isOneSlip(std::string_view a, std::string_view b);

/// Whether two folded names are one slip apart and hardly meant to be two: names of a series ("class 1",
/// "class 2", "size S") differ by a character and are meant, and of two letters nothing can be said.
bool isLikelySlip(std::string_view a, std::string_view b);

} // namespace core
