#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace core {

/// `text` without blanks (space, tab, CR, LF, no-break space) at either end.
std::string_view withoutOuterBlanks(std::string_view text);

/// Strict UTF-8 (RFC 3629): no overlong form, no surrogate, nothing above U+10FFFF. Empty: not UTF-8.
std::optional<std::u32string> decodeUtf8(std::string_view text);
bool isUtf8(std::string_view text);

void appendUtf8(std::string& text, char32_t character);

} // namespace core
