#include "core/base/plain_text.h"

namespace core {
namespace {

constexpr std::string_view noBreakSpace = "\xC2\xA0";

/// Length of the sequence that `lead` begins, and the smallest code point that may be written so long; 0: no
/// lead byte.
struct Lead {
    int length = 0;
    char32_t bits = 0;
    char32_t least = 0;
};

Lead leadOf(unsigned char byte) {
    if (byte < 0x80) return {1, byte, 0};
    if (byte >= 0xC2 && byte < 0xE0) return {2, byte & 0x1Fu, 0x80};
    if (byte >= 0xE0 && byte < 0xF0) return {3, byte & 0x0Fu, 0x800};
    if (byte >= 0xF0 && byte < 0xF5) return {4, byte & 0x07u, 0x10000};
    return {};
}

/// The character at `at`, which moves on; empty: not UTF-8.
std::optional<char32_t> nextCharacter(std::string_view text, std::size_t& at) {
    const Lead lead = leadOf(static_cast<unsigned char>(text[at]));
    if (lead.length == 0 || at + static_cast<std::size_t>(lead.length) > text.size()) return std::nullopt;
    char32_t character = lead.bits;
    for (int i = 1; i < lead.length; ++i) {
        const auto byte = static_cast<unsigned char>(text[at + static_cast<std::size_t>(i)]);
        if ((byte & 0xC0) != 0x80) return std::nullopt;
        character = (character << 6) | (byte & 0x3Fu);
    }
    if (character < lead.least || character > 0x10FFFF || (character >= 0xD800 && character < 0xE000))
        return std::nullopt;
    at += static_cast<std::size_t>(lead.length);
    return character;
}

bool isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\r' || c == '\n';
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
        const auto character = nextCharacter(text, at);
        if (!character) return std::nullopt;
        characters += *character;
    }
    return characters;
}

bool isUtf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();)
        if (!nextCharacter(text, at)) return false;
    return true;
}

void appendUtf8(std::string& text, char32_t character) {
    const auto tail = [&](int shift) { text += static_cast<char>(0x80 | ((character >> shift) & 0x3F)); };
    if (character < 0x80) {
        text += static_cast<char>(character);
    } else if (character < 0x800) {
        text += static_cast<char>(0xC0 | (character >> 6));
        tail(0);
    } else if (character < 0x10000) {
        text += static_cast<char>(0xE0 | (character >> 12));
        tail(6), tail(0);
    } else {
        text += static_cast<char>(0xF0 | (character >> 18));
        tail(12), tail(6), tail(0);
    }
}

} // namespace core
