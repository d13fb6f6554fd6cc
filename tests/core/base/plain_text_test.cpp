#include "core/base/plain_text.h"

#include <array>
#include <glib.h>
#include <gtest/gtest.h>
#include <memory>
#include <set>
#include <string>

namespace {

// Unicode Character Database, case foldings of single letters (CaseFolding.txt, from memory).
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

/// Default_Ignorable_Code_Point, as DerivedCoreProperties.txt of Unicode 15.0 lists it.
bool isDefaultIgnorable(char32_t c) {
    static constexpr std::pair<char32_t, char32_t> ranges[] = {
        {0x00AD, 0x00AD},   {0x034F, 0x034F},  {0x061C, 0x061C}, {0x115F, 0x1160}, {0x17B4, 0x17B5},
        {0x180B, 0x180F},   {0x200B, 0x200F},  {0x202A, 0x202E}, {0x2060, 0x206F}, {0x3164, 0x3164},
        {0xFE00, 0xFE0F},   {0xFEFF, 0xFEFF},  {0xFFA0, 0xFFA0}, {0xFFF0, 0xFFF8}, {0x1BCA0, 0x1BCA3},
        {0x1D173, 0x1D17A}, {0xE0000, 0xE0FFF}};
    return std::any_of(std::begin(ranges), std::end(ranges),
                       [&](const auto& range) { return c >= range.first && c <= range.second; });
}

// The Unicode Standard, section 3.13, D145 (canonical caseless match), by GLib's own tables and code: what is
// the same name there is the same here.
TEST(PlainText, namesFoldAsAnIndependentImplementationFoldsThem) {
    const auto foldedByGlib = [](const std::string& name) {
        const auto freed = [](gchar* text) { g_free(text); };
        using Text = std::unique_ptr<gchar, decltype(freed)>;
        const Text apart(g_utf8_normalize(name.c_str(), -1, G_NORMALIZE_NFD), freed);
        const Text folded(g_utf8_casefold(apart.get(), -1), freed);
        const Text composed(g_utf8_normalize(folded.get(), -1, G_NORMALIZE_NFC), freed);
        return std::string(composed.get());
    };
    int changed = 0;
    for (char32_t c = 0x21; c <= 0x10FFFF; ++c) {
        // GLib takes small letters for folded ones: Cherokee's are folded to capitals (CaseFolding.txt,
        // 13F8).
        const bool isCherokee = (c >= 0x13A0 && c <= 0x13FD) || (c >= 0xAB70 && c <= 0xABBF);
        // What is not seen is no part of a name, and all blanks are one.
        if (isDefaultIgnorable(c) || g_unichar_type(static_cast<gunichar>(c)) == G_UNICODE_SPACE_SEPARATOR)
            continue;
        if (isCherokee || (c >= 0xD800 && c < 0xE000) || !g_unichar_isdefined(c)) continue;
        std::string name;
        core::appendUtf8(name, c);
        ASSERT_EQ(core::foldName(name), foldedByGlib(name))
            << "U+" << std::hex << static_cast<std::uint32_t>(c);
        changed += core::foldName(name) != name;
    }
    EXPECT_GT(changed, 2000); // capitals, and characters that are never composed
}

// UAX #15, figure 3 and section 1.2: é as one character, and as e with a combining acute accent.
TEST(PlainText, nameIsTheSameHoweverItWasTyped) {
    const std::string one = "Caf\u00E9", two = "Cafe\u0301";
    EXPECT_EQ(core::composed(two), one);
    EXPECT_EQ(core::composed(one), one);
    EXPECT_EQ(core::foldName("CAFE\u0301"), core::foldName(one));
    EXPECT_NE(core::foldName("Cafe"), core::foldName(one));
    EXPECT_EQ(core::foldName("STRASSE"),
              core::foldName("Stra\u00DFe")); // CaseFolding.txt: 00DF; F; 0073 0073
    EXPECT_EQ(core::composed("\xFF"), "\xFF");
}

// Unicode Character Database: general category Cc by GLib's tables, Default_Ignorable_Code_Point and the
// separators by their published lists. Joiners and variation selectors are part of how some scripts, and
// pictures, are written.
TEST(PlainText, whatIsUnseenIsAsUnicodeHasIt) {
    int unseen = 0;
    for (char32_t c = 0; c <= 0x10FFFF; ++c) {
        const bool isWriting = c == 0x200C || c == 0x200D || (c >= 0xFE00 && c <= 0xFE0F);
        const bool expected = g_unichar_type(static_cast<gunichar>(c)) == G_UNICODE_CONTROL || c == 0x2028 ||
                              c == 0x2029 || (c >= 0xFFF9 && c <= 0xFFFB) ||
                              (isDefaultIgnorable(c) && !isWriting);
        ASSERT_EQ(core::isUnseen(c), expected) << "U+" << std::hex << static_cast<std::uint32_t>(c);
        unseen += expected;
    }
    EXPECT_GT(unseen, 4000);
}

TEST(PlainText, namesThatLookTheSameAreTheSame) {
    for (const char* name :
         {"Ann  Lee", "Ann\u00A0Lee", "Ann \u200BLee", "A\u00ADnn Lee", " Ann\u2003\u2003Lee "})
        EXPECT_EQ(core::foldName(name), "ann lee") << name;
    EXPECT_NE(core::foldName("AnnLee"), core::foldName("Ann Lee"));
}

TEST(PlainText, unseenCharactersAreShownAsEscapes) {
    using namespace std::string_literals;
    EXPECT_EQ(core::visibleText("a\x1B[31mb\0c\x7F"s), "a\\x1b[31mb\\x00c\\x7f");
    EXPECT_EQ(core::visibleText("\u009B2J \u202Egpj.exe \u2028\u061C"),
              "\\x9b2J \\u202egpj.exe \\u2028\\u061c");
    EXPECT_EQ(core::visibleText("Mücke 😀 \u05D0\u200D"),
              "Mücke 😀 \u05D0\u200D"); // a joiner is part of a word
    EXPECT_EQ(core::visibleText("M\xFC"
                                "cke"),
              "M\uFFFD"
              "cke");
    EXPECT_TRUE(core::holdsUnseen("a\u202Eb"));
    EXPECT_FALSE(core::holdsUnseen("a b"));
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
