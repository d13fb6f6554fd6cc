#include "core/base/plain_text.h"

#include <array>
#include <clocale>
#include <cwctype>
#include <glib.h>
#include <gtest/gtest.h>

namespace {

// Unicode Character Database, simple lower-case mappings of single letters (UnicodeData.txt, from memory).
TEST(PlainText, namesFoldByUnicodeWithoutOuterBlanks) {
    EXPECT_EQ(core::foldName("  Life Jacket\t"), "life jacket");
    EXPECT_EQ(core::foldName("MÜCKE"), "mücke");
    EXPECT_EQ(core::foldName("ŁÓDŹ"), "łódź");
    EXPECT_EQ(core::foldName("ΒΆΡΚΑ"), "βάρκα");
    EXPECT_EQ(core::foldName("ЛОДКА"), "лодка");
    EXPECT_EQ(core::foldName("\u00A0Heron\u00A0"), "heron");
    EXPECT_NE(core::foldName("Mücke"), core::foldName("Mucke"));
    EXPECT_EQ(core::foldName(""), "");
}

// The keys of the first club files were folded by the C library's character tables (locale C.UTF-8): whatever
// folds them now must give the same, character by character.
TEST(PlainText, everyCharacterFoldsAsInTheFirstClubFiles) {
    const locale_t unicode = newlocale(LC_CTYPE_MASK, "C.UTF-8", nullptr);
    ASSERT_TRUE(unicode);
    int changed = 0;
    for (char32_t c = 0x21; c <= 0x10FFFF; ++c) {
        if (c == 0xA0 || (c >= 0xD800 && c < 0xE000)) continue;
        std::string name, folded;
        core::appendUtf8(name, c);
        core::appendUtf8(folded, static_cast<char32_t>(towlower_l(static_cast<wint_t>(c), unicode)));
        ASSERT_EQ(core::foldName(name), folded) << "U+" << std::hex << static_cast<std::uint32_t>(c);
        changed += folded != name;
    }
    freelocale(unicode);
    EXPECT_GT(changed, 1000); // the locale has capitals
}

// Common practice, no source: of bytes that are no text, what surely is a letter still folds.
TEST(PlainText, ofWhatIsNotUtf8OnlyAsciiFolds) {
    EXPECT_EQ(core::foldName("M\xFC"
                             "CKE"),
              "m\xFC"
              "cke");
}

/// Whether GLib, which decodes by its own tables, takes the bytes. It refuses NUL, which is a character.
bool isUtf8OfGlib(std::string_view bytes) {
    return g_utf8_validate_len(bytes.data(), bytes.size(), nullptr) != FALSE;
}

// RFC 3629, section 4, by an independent decoder: every sequence of one to four bytes around the borders of
// its table.
TEST(PlainText, utf8IsWhatAnIndependentDecoderTakes) {
    constexpr std::array<unsigned char, 22> borders{0x01, 0x41, 0x7F, 0x80, 0x8F, 0x90, 0x9F, 0xA0,
                                                    0xBF, 0xC0, 0xC1, 0xC2, 0xDF, 0xE0, 0xE1, 0xED,
                                                    0xEE, 0xEF, 0xF0, 0xF4, 0xF5, 0xFF};
    int good = 0, bad = 0;
    const auto compare = [&](const std::string& bytes) {
        const bool expected = isUtf8OfGlib(bytes);
        ASSERT_EQ(core::isUtf8(bytes), expected) << testing::PrintToString(bytes);
        ASSERT_EQ(core::decodeUtf8(bytes).has_value(), expected);
        ++(expected ? good : bad);
    };
    for (const unsigned char a : borders)
        for (const unsigned char b : borders)
            for (const unsigned char c : borders)
                for (const unsigned char d : borders) {
                    const std::string four{static_cast<char>(a), static_cast<char>(b), static_cast<char>(c),
                                           static_cast<char>(d)};
                    for (std::size_t length = 1; length <= four.size(); ++length)
                        compare(four.substr(0, length));
                }
    EXPECT_GT(good, 1000);
    EXPECT_GT(bad, 1000);
}

// RFC 3629, section 7: its examples.
TEST(PlainText, charactersAreDecodedAndWrittenAsInTheRfc) {
    const std::array<std::pair<std::u32string, std::string>, 3> examples{{
        {U"A\u2262\u0391.", "\x41\xE2\x89\xA2\xCE\x91\x2E"},
        {U"\uD55C\uAD6D\uC5B4", "\xED\x95\x9C\xEA\xB5\xAD\xEC\x96\xB4"},
        {U"\uFEFF\U000233B4", "\xEF\xBB\xBF\xF0\xA3\x8E\xB4"},
    }};
    for (const auto& [characters, bytes] : examples) {
        EXPECT_EQ(core::decodeUtf8(bytes), characters);
        std::string written;
        for (const char32_t c : characters)
            core::appendUtf8(written, c);
        EXPECT_EQ(written, bytes);
    }
}

} // namespace
