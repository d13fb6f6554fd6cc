#include "core/base/error_code.h"
#include "core/base/plain_text.h"
#include "core/record/pin.h"
#include "tests/core/store/full_club.h"

#include <gmock/gmock.h>

// Argon2id is RFC 9106; libsodium's manual, "The pwhash* API", gives its interactive limits (2 passes, 64
// MiB) and the text form. What people see as one character is an extended grapheme cluster (UAX #29).

namespace {

using core::ErrorCode;
using core::Pin;

Pin pin(std::string text) {
    return std::move(Pin::from(std::move(text))).value();
}

TEST(Pin, hasFourToTwelveCharactersAsPeopleSeeThem) {
    for (const char* good : {"4711", "123456789012", "Ærø7", "\xF0\x9F\x9A\xA4\xF0\x9F\x9A\xA4-1", "a b c d"})
        EXPECT_TRUE(Pin::from(good)) << good;
    // Four letters with four accents typed behind them, twelve with twelve.
    EXPECT_TRUE(Pin::from("e\u0301e\u0301e\u0301e\u0301"));
    EXPECT_TRUE(
        Pin::from("e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301"));
    for (const char* bad : {"", "471", " 471 ", "1234567890123", "e\u0301e\u0301e\u0301"})
        EXPECT_EQ(Pin::from(bad).error().code, ErrorCode::PinLength) << bad;
    // A flood of accents on four letters.
    std::string flood = "abcd";
    for (int i = 0; i < 200; ++i)
        flood += "\u0324";
    EXPECT_EQ(Pin::from(std::move(flood)).error().code, ErrorCode::PinLength);
    for (const char* bad : {"47\x01"
                            "11",
                            "47\u202e11",
                            "47\xFF"
                            "11"})
        EXPECT_EQ(Pin::from(bad).error().code, ErrorCode::PinUnseen);
}

TEST(Pin, charactersAreCountedAsPeopleSeeThem) {
    EXPECT_EQ(core::charactersSeen("abc"), 3U);
    EXPECT_EQ(core::charactersSeen("e\u0301"), 1U);
    EXPECT_EQ(core::charactersSeen("\U0001F468\u200D\U0001F692"), 1U) << "one firefighter";
    EXPECT_EQ(core::charactersSeen("\r\n"), 2U) << "plain ASCII is counted by its bytes";
    EXPECT_EQ(core::charactersSeen("\xFF"), 1U);
}

TEST(Pin, isWipedWhereItCameFrom) {
    std::string given = "a long enough PIN";
    given.resize(9); // "a long en"
    const char* bytes = given.data();
    ASSERT_TRUE(Pin::from(std::move(given)));
    EXPECT_TRUE(given.empty());                                      // NOLINT(bugprone-use-after-move)
    EXPECT_EQ(std::string(bytes, 9), std::string(9, '\0')) << bytes; // its place, which it still has
}

TEST(Pin, opensWhatWasSealedOfItHoweverItIsTyped) {
    const auto sealed = pin("caf\u00e91").sealed();
    ASSERT_TRUE(sealed);
    EXPECT_THAT(*sealed, testing::StartsWith("$argon2id$v=19$m=65536,t=2,p=1$"));
    EXPECT_EQ(pin("  cafe\u03011 ").opens(*sealed).value(), true);
    EXPECT_EQ(pin("cafe1").opens(*sealed).value(), false);
    EXPECT_EQ(pin("4711").opens(support::sealed4711).value(), true);
}

TEST(Pin, opensNothingThatNoProgramSeals) {
    for (const std::string& text : {std::string(), std::string("4711"), std::string(500, 'x'),
                                    // 4 GiB: whoever puts it there must not take all memory.
                                    std::string("$argon2id$v=19$m=4194304,t=2,p=1$bBoBFyaPei6ryXqBCn5e7Q$"
                                                "wewK5qm/b7bveWyCBfWKDnqG+1MGsj6GQQ4PSpmikIk")})
        EXPECT_EQ(pin("4711").opens(text).value(), false) << text;
}

} // namespace
