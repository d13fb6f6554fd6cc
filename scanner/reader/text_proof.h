#pragma once

#include <functional>
#include <string>
#include <string_view>

namespace scanner {

/// Says whether a text is a tag of the club's kind (its check character agrees). Given by the caller, because
/// the scanner does not know the trade; called from the reading thread. Empty: the caller knows no tags.
using TagTest = std::function<bool(const std::string& text)>;

} // namespace scanner

namespace scanner::reader {

/// What stands for a text beside its symbol: nothing; a GS1 number with its check digit, which says nothing
/// of the elements beside it; or a tag's check character, of the text or of its serial number.
enum class TextProof { None, Number, Tag };

/// `gs1`: the symbol says that it holds element strings.
TextProof proofOf(const std::string& text, bool gs1, const TagTest& isTag);

/// Whether a text is believed for what it says itself: there is any proof.
bool provesItself(const std::string& text, bool gs1, const TagTest& isTag);

/// Whether a text is a row of GS1 element strings with at least one check digit that agrees (of a load unit
/// or a trade item) or a serial number that is a tag; false if any check digit disagrees or any element is
/// too short. FNC1 is the byte 0x1D. It asks only for what the reader needs to trust its own eyes: which
/// identifiers there are and what they mean is the caller's to know. Source: GS1 General Specifications,
/// sections 3 (element strings), 7.8 (processing; predefined lengths) and 7.9 (check digit).
bool provesItselfAsGs1(std::string_view text, const TagTest& isTag = {});

/// The modulo 10 check digit, weights 3 and 1 from the right; the last digit is the check digit. False for
/// anything but two or more digits.
bool gs1CheckDigitAgrees(std::string_view digits);

} // namespace scanner::reader
