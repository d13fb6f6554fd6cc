#pragma once

#include "core/base/error.h"
#include "core/base/result.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace core {

// What a person gives to be kept, in the window, on the command line or in a file: looked at once, on its way
// into the record. BadInput, and nothing is changed, for what is no UTF-8, for a character that is not seen
// (isUnseen) and for too many characters. `where` of the error is what it was given as.

constexpr std::size_t longestName = 200;   ///< characters (code points) in normal form C
constexpr std::size_t longestProse = 2000; ///< likewise

/// A name of whatever kind, or another short text that a thing is known by: a serial, a maker, a unit. As it
/// was given, in normal form C.
Result<std::string> nameFrom(std::string_view text, std::string_view where = {});

/// A note, a reason, the text of a log entry: one paragraph. Line breaks and tabs become blanks; else as it
/// was given, in normal form C.
Result<std::string> proseFrom(std::string_view text, std::string_view where = {});

/// Each line break (CRLF, CR, LF) and each tab as one blank.
std::string onOneLine(std::string_view text);

/// `text` as an error may name it: at most 40 characters, all of them seen, always UTF-8.
std::string shown(std::string_view text);

} // namespace core
