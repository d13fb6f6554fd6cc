#include "core/base/given_text.h"

#include "core/base/error_code.h"

#include <gtest/gtest.h>

namespace {

using core::Error;
using core::ErrorCode;
using core::nameFrom;
using core::proseFrom;

std::string times(int count, const std::string& text) {
    std::string all;
    for (int i = 0; i < count; ++i)
        all += text;
    return all;
}

TEST(GivenText, isKeptAsItIsGivenInNormalFormC) {
    EXPECT_EQ(*nameFrom("Cafe\u0301"), "Caf\u00E9");
    EXPECT_EQ(*nameFrom("<b>Teal</b> & Co. \u05D0\u05D1"), "<b>Teal</b> & Co. \u05D0\u05D1");
    EXPECT_EQ(*proseFrom(" two  blanks "), " two  blanks ");
    EXPECT_EQ(*nameFrom(""), "");
}

TEST(GivenText, holdsNothingThatIsNotSeen) {
    using namespace std::string_literals;
    for (const std::string& text : {"a\x1B[31mb"s, "a\0b"s, "\x7F"s, "\u009B"s, "a\u202Eb"s, "\u2066"s,
                                    "\u200E"s, "\u061C"s, "a\u2028b"s})
        for (const auto take : {nameFrom, proseFrom})
            EXPECT_EQ(take(text, "note").error(),
                      (Error{ErrorCode::TextUnseen, {core::shown(text)}, "note"}));
    EXPECT_EQ(nameFrom("a\nb").error().code, ErrorCode::TextUnseen);
    EXPECT_EQ(nameFrom("a\tb").error().code, ErrorCode::TextUnseen);
    EXPECT_EQ(nameFrom("M\xFCller").error().code, ErrorCode::TextNotUtf8);
}

TEST(GivenText, lineBreaksOfASentenceBecomeBlanks) {
    EXPECT_EQ(*proseFrom("torn\r\nat the\nseam\rand\twet"), "torn at the seam and wet");
}

// The limits are the design's own: 200 and 2,000 characters in normal form C.
TEST(GivenText, hasAnEnd) {
    EXPECT_TRUE(nameFrom(times(200, "😀")));
    EXPECT_TRUE(nameFrom(times(200, "e\u0301")));
    EXPECT_EQ(nameFrom(times(201, "x")).error(),
              (Error{ErrorCode::TextTooLong, {times(40, "x") + "…", "200"}, {}}));
    EXPECT_TRUE(proseFrom(times(2000, "é")));
    EXPECT_EQ(proseFrom(times(2001, "é")).error(),
              (Error{ErrorCode::TextTooLong, {times(40, "é") + "…", "2000"}, {}}));
}

TEST(GivenText, whatIsShownIsShortAndSeen) {
    EXPECT_EQ(core::shown("a\nb\u202E"), "a\\x0ab\\u202e");
    EXPECT_EQ(core::shown(std::string(100, 'x')), std::string(40, 'x') + "…");
    EXPECT_EQ(core::shown(std::string(40, 'x')), std::string(40, 'x'));
    EXPECT_EQ(core::shown("\xFF\xFE"), "\uFFFD\uFFFD");
}

} // namespace
