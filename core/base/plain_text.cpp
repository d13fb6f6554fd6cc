#include "core/base/plain_text.h"

#include <algorithm>
#include <array>
#include <unicode/uchar.h>
#include <unicode/utf8.h>

namespace core {
namespace {

constexpr std::string_view noBreakSpace = "\xC2\xA0";

#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wconversion" // within ICU's macro

/// The character at `at`, which moves on; negative: not UTF-8.
UChar32 nextCharacter(std::string_view text, std::size_t& at) {
    UChar32 character = 0;
    U8_NEXT(text.data(), at, text.size(), character);
    return character;
}

#pragma GCC diagnostic pop

bool isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\r' || c == '\n';
}

bool isPlainAscii(std::string_view text) {
    return std::all_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
}

char lowerAscii(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

} // namespace

std::string_view withoutOuterBlanks(std::string_view text) {
    for (;;) {
        if (!text.empty() && isBlank(text.front()))
            text.remove_prefix(1);
        else if (!text.empty() && isBlank(text.back()))
            text.remove_suffix(1);
        else if (text.starts_with(noBreakSpace))
            text.remove_prefix(noBreakSpace.size());
        else if (text.ends_with(noBreakSpace))
            text.remove_suffix(noBreakSpace.size());
        else
            return text;
    }
}

std::optional<std::u32string> decodeUtf8(std::string_view text) {
    std::u32string characters;
    for (std::size_t at = 0; at < text.size();) {
        const UChar32 character = nextCharacter(text, at);
        if (character < 0) return std::nullopt;
        characters += static_cast<char32_t>(character);
    }
    return characters;
}

bool isUtf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();)
        if (nextCharacter(text, at) < 0) return false;
    return true;
}

void appendUtf8(std::string& text, char32_t character) {
    std::array<char, U8_MAX_LENGTH> bytes{};
    std::size_t length = 0;
    U8_APPEND_UNSAFE(bytes.data(), length, static_cast<UChar32>(character));
    text.append(bytes.data(), length);
}

int lettersIn(std::string_view text) {
    int letters = 0;
    for (std::size_t at = 0; at < text.size();)
        if (const UChar32 character = nextCharacter(text, at); character >= 0 && u_isalpha(character))
            ++letters;
    return letters;
}

std::string foldName(std::string_view name) {
    name = withoutOuterBlanks(name);
    std::string folded;
    folded.reserve(name.size());
    const auto characters = isPlainAscii(name) ? std::nullopt : decodeUtf8(name);
    if (characters)
        for (char32_t c : *characters)
            appendUtf8(folded, static_cast<char32_t>(u_tolower(static_cast<UChar32>(c))));
    else
        for (char c : name)
            folded += lowerAscii(c);
    return folded;
}

} // namespace core
