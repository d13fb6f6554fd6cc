#include "core/base/plain_text.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <memory>
#include <new>
#include <unicode/brkiter.h>
#include <unicode/normalizer2.h>
#include <unicode/uchar.h>
#include <unicode/unistr.h>
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

std::string escapeOf(char32_t c) {
    const auto number = static_cast<std::uint32_t>(c);
    return number < 0x100 ? fmt::format("\\x{:02x}", number) : fmt::format("\\u{:04x}", number);
}

icu::UnicodeString utf16Of(std::string_view utf8) {
    return icu::UnicodeString::fromUTF8({utf8.data(), static_cast<int32_t>(utf8.size())});
}

std::string utf8Of(const icu::UnicodeString& text) {
    std::string utf8;
    text.toUTF8String(utf8);
    return utf8;
}

/// ICU keeps its tables within itself: it fails only where memory does.
icu::UnicodeString normalized(const icu::UnicodeString& text, const icu::Normalizer2* (*form)(UErrorCode&)) {
    UErrorCode failed = U_ZERO_ERROR;
    const icu::Normalizer2* normalizer = form(failed);
    icu::UnicodeString result = U_SUCCESS(failed) ? normalizer->normalize(text, failed) : text;
    if (U_FAILURE(failed)) throw std::bad_alloc();
    return result;
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

/// Not seen itself, and yet part of how something is written: joiners of several scripts, forms of pictures.
static bool isPartOfWriting(char32_t c) {
    return c == 0x200C || c == 0x200D || (c >= 0xFE00 && c <= 0xFE0F);
}

bool isUnseen(char32_t c) {
    if (c < 0x20 || (c >= 0x7F && c < 0xA0) || c == 0x2028 || c == 0x2029) return true;
    if (isPartOfWriting(c)) return false;
    const auto character = static_cast<UChar32>(c);
    const bool isAnnotation = c >= 0xFFF9 && c <= 0xFFFB; // between lines
    return isAnnotation || u_hasBinaryProperty(character, UCHAR_DEFAULT_IGNORABLE_CODE_POINT);
}

bool holdsUnseen(std::string_view text) {
    for (std::size_t at = 0; at < text.size();)
        if (const UChar32 character = nextCharacter(text, at);
            character >= 0 && isUnseen(static_cast<char32_t>(character)))
            return true;
    return false;
}

std::string visibleText(std::string_view text) {
    std::string visible;
    visible.reserve(text.size());
    for (std::size_t at = 0; at < text.size();) {
        const UChar32 character = nextCharacter(text, at);
        const auto c = character < 0 ? U'\uFFFD' : static_cast<char32_t>(character);
        if (isUnseen(c))
            visible += escapeOf(c);
        else
            appendUtf8(visible, c);
    }
    return visible;
}

std::string composed(std::string_view text) {
    if (isPlainAscii(text) || !isUtf8(text)) return std::string(text);
    return utf8Of(normalized(utf16Of(text), icu::Normalizer2::getNFCInstance));
}

std::size_t charactersIn(std::string_view text) {
    const auto characters = decodeUtf8(text);
    return characters ? characters->size() : text.size();
}

std::size_t charactersSeen(std::string_view text) {
    if (isPlainAscii(text) || !isUtf8(text)) return text.size();
    UErrorCode failed = U_ZERO_ERROR;
    const std::unique_ptr<icu::BreakIterator> breaks(
        icu::BreakIterator::createCharacterInstance(icu::Locale::getRoot(), failed));
    if (U_FAILURE(failed)) throw std::bad_alloc();
    const icu::UnicodeString whole = utf16Of(text);
    breaks->setText(whole);
    std::size_t seen = 0;
    while (breaks->next() != icu::BreakIterator::DONE)
        ++seen;
    return seen;
}

/// One blank for each run of blanks of any kind, and nothing that is not seen: "Ann  Lee" is "Ann Lee".
static icu::UnicodeString asSeen(const icu::UnicodeString& text) {
    icu::UnicodeString seen;
    for (int32_t at = 0; at < text.length(); at = text.moveIndex32(at, 1)) {
        const UChar32 c = text.char32At(at);
        if (u_hasBinaryProperty(c, UCHAR_DEFAULT_IGNORABLE_CODE_POINT)) continue;
        if (u_charType(c) != U_SPACE_SEPARATOR)
            seen.append(c);
        else if (!seen.endsWith(u' '))
            seen.append(u' ');
    }
    return seen;
}

std::string foldName(std::string_view name) {
    name = withoutOuterBlanks(name);
    if (!isPlainAscii(name) && isUtf8(name)) {
        icu::UnicodeString text = normalized(asSeen(utf16Of(name)), icu::Normalizer2::getNFDInstance);
        text.foldCase();
        return utf8Of(normalized(text, icu::Normalizer2::getNFCInstance));
    }
    std::string folded(name);
    folded.erase(
        std::unique(folded.begin(), folded.end(), [](char a, char b) { return a == ' ' && b == ' '; }),
        folded.end());
    std::transform(folded.begin(), folded.end(), folded.begin(), lowerAscii);
    return folded;
}

} // namespace core
