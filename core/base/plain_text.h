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

/// `character` is a Unicode scalar value, as decodeUtf8 gives them.
void appendUtf8(std::string& text, char32_t character);

/// Letters of any script (Unicode's general categories L*).
int lettersIn(std::string_view text);

/// The name folded for comparison: outer blanks off, lower case by Unicode's simple mapping of each
/// character, whatever the machine's language. Of what is not UTF-8 only A to Z become lower case.
///
/// Folded names are the keys of the rows in every club file, so the mapping stands: names are not composed
/// (NFC) either, for a name written in two ways has been two names from the first file on.
std::string foldName(std::string_view name);

} // namespace core
