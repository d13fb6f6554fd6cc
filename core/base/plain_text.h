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

/// Drives a terminal, a page or the direction of writing instead of being read: the controls of Unicode's
/// general category Cc (C0, DEL, C1), the line and paragraph separators U+2028 and U+2029, and what turns the
/// direction of writing (Bidi_Control of UAX #9, 2: U+061C, U+200E, U+200F, U+202A to U+202E, U+2066 to
/// U+2069).
bool isUnseen(char32_t character);
bool holdsUnseen(std::string_view text);

/// The text as it may be shown to a person: what is unseen stands as `\x1b` or `\u202e`, and bytes that are
/// no UTF-8 as U+FFFD.
std::string visibleText(std::string_view text);

/// The text in Unicode's normal form C (UAX #15): "é" is one character, however it was typed. What is not
/// UTF-8 stays as it is.
std::string composed(std::string_view text);

/// How many characters (code points) the text has; of what is not UTF-8, its bytes.
std::size_t charactersIn(std::string_view text);
/// How many characters people see in it (extended grapheme clusters, UAX #29): a letter and the accents that
/// were typed behind it are one. Of what is not UTF-8, its bytes.
std::size_t charactersSeen(std::string_view text);

/// The name folded for comparison: outer blanks off, then as Unicode compares without regard to case
/// (canonical caseless match, The Unicode Standard 3.13, D145), whatever the machine's language; in normal
/// form C. Of what is not UTF-8 only A to Z become lower case.
///
/// Folded names are the keys of the rows in a club file, from its format 3 on: another mapping is another
/// format.
std::string foldName(std::string_view name);

} // namespace core
