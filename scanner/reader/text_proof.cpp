#include "scanner/reader/text_proof.h"

#include <algorithm>
#include <cstddef>

namespace scanner::reader {
namespace {

constexpr char fnc1 = '\x1d';

bool isDigits(std::string_view text) {
    return std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

bool isPrinted(std::string_view text) {
    return std::all_of(text.begin(), text.end(), [](char c) { return c > ' ' && c <= 'z'; });
}

/// Length of an element string with its identifier, by the identifier's first two digits; 0: it runs to the
/// next FNC1. General Specifications 7.8, the table of predefined lengths, which GS1 keeps as it is for ever.
std::size_t predefinedLength(int firstTwoDigits) {
    if (firstTwoDigits == 0) return 20;
    if (firstTwoDigits <= 3) return 16;
    if (firstTwoDigits == 4) return 18;
    if (firstTwoDigits >= 11 && firstTwoDigits <= 19) return 8;
    if (firstTwoDigits == 20) return 4;
    if (firstTwoDigits >= 31 && firstTwoDigits <= 36) return 10;
    return firstTwoDigits == 41 ? 16 : 0;
}

} // namespace

bool gs1CheckDigitAgrees(std::string_view digits) {
    if (digits.size() < 2 || !isDigits(digits)) return false;
    int sum = 0;
    for (std::size_t i = 0; i < digits.size(); ++i)
        sum += (digits[digits.size() - 1 - i] - '0') * (i % 2 ? 3 : 1);
    return sum % 10 == 0;
}

namespace {

TextProof proofAsGs1(std::string_view text, const TagTest& isTag) {
    constexpr int lastChecked = 2; // 00 a load unit, 01 and 02 a trade item: a check digit ends them
    constexpr int serialNumber = 21;
    constexpr std::size_t longest = 94; // four digits of identifier and ninety characters
    TextProof proof = TextProof::None;
    while (!text.empty()) {
        if (text.size() < 3 || !isDigits(text.substr(0, 2))) return TextProof::None;
        const int identifier = (text[0] - '0') * 10 + text[1] - '0';
        const std::size_t length = predefinedLength(identifier);
        const std::string_view element = text.substr(0, length > 0 ? length : text.find(fnc1));
        const std::string_view value = element.substr(std::min<std::size_t>(2, element.size()));
        const bool fits = length > 0 ? element.size() == length && isDigits(value)
                                     : !value.empty() && element.size() <= longest && isPrinted(value);
        if (!fits) return TextProof::None;
        if (identifier <= lastChecked) {
            if (!gs1CheckDigitAgrees(value)) return TextProof::None;
            proof = std::max(proof, TextProof::Number);
        }
        if (identifier == serialNumber && isTag && isTag(std::string(value))) proof = TextProof::Tag;
        text.remove_prefix(element.size());
        if (text.starts_with(fnc1)) text.remove_prefix(1);
    }
    return proof;
}

} // namespace

bool provesItselfAsGs1(std::string_view text, const TagTest& isTag) {
    return proofAsGs1(text, isTag) != TextProof::None;
}

TextProof proofOf(const std::string& text, bool gs1, const TagTest& isTag) {
    if (isTag && isTag(text)) return TextProof::Tag;
    return gs1 ? proofAsGs1(text, isTag) : TextProof::None;
}

bool provesItself(const std::string& text, bool gs1, const TagTest& isTag) {
    return proofOf(text, gs1, isTag) != TextProof::None;
}

} // namespace scanner::reader
