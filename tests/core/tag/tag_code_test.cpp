#include "core/tag/tag_code.h"

#include "tests/support/errors.h"

#include <gmock/gmock.h>
#include <random>
#include <string>

namespace {

using core::checkCharacter;
using core::Error;
using core::ErrorCode;
using core::TagClass;
using core::TagCode;

constexpr std::string_view alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

std::mt19937_64 generator(20260314);
std::uint64_t randomBits() {
    return generator();
}

// UK blood service "Red Book", annex 2, table A2.2 (ISBT 128 uses ISO/IEC 7064 MOD 37-2): worked example.
TEST(CheckCharacter, redBookExample) {
    EXPECT_EQ(checkCharacter("G123498654321"), 'H');
}

// python-stdnum, iso7064/mod_37_2 doctest: the same number with 98 exchanged.
TEST(CheckCharacter, exchangedDigitsGiveAnotherCharacter) {
    EXPECT_EQ(checkCharacter("G123489654321"), 'Y');
}

TEST(CheckCharacter, refusesWhatIsOutsideTheAlphabet) {
    EXPECT_FALSE(checkCharacter("K 1"));
    EXPECT_FALSE(checkCharacter("k1"));
    EXPECT_TRUE(checkCharacter("K1"));
}

// ISO/IEC 7064 scope: all single substitutions. Exhaustive over every place and character of many codes.
TEST(TagCode, everySubstitutionIsRefused) {
    for (int round = 0; round < 200; ++round) {
        const std::string code = TagCode::mint(TagClass::Kit, randomBits).text();
        ASSERT_TRUE(TagCode::exact(code)) << code;
        for (std::size_t place = 0; place < code.size(); ++place)
            for (const char other : alphabet) {
                std::string wrong = code;
                wrong[place] = other;
                EXPECT_EQ(TagCode::exact(wrong).has_value(), wrong == code) << code << " -> " << wrong;
            }
    }
}

// MOD 37-2 finds every exchange of neighbours and of characters one apart: 1 and 3 are coprime to 37
// (algebra).
TEST(TagCode, everySwapIsRefused) {
    for (int round = 0; round < 2000; ++round) {
        const std::string code = TagCode::mint(TagClass::Kit, randomBits).text();
        for (const std::size_t apart : {1U, 2U})
            for (std::size_t i = 0; i + apart < code.size(); ++i) {
                std::string wrong = code;
                std::swap(wrong[i], wrong[i + apart]);
                EXPECT_EQ(TagCode::exact(wrong).has_value(), wrong == code) << code << " -> " << wrong;
            }
    }
}

TEST(TagCode, mintedCodesHaveTheirClassAndNoConfusableCharacter) {
    for (const TagClass tagClass :
         {TagClass::Kit, TagClass::Boat, TagClass::Person, TagClass::Control, TagClass::Shelf})
        for (int round = 0; round < 2000; ++round) {
            const std::string code = TagCode::mint(tagClass, randomBits).text();
            ASSERT_EQ(code.size(), 10U);
            EXPECT_EQ(code[0], static_cast<char>(tagClass));
            EXPECT_EQ(code.find_first_of("*ILOU", 1), std::string::npos) << code;
        }
}

TEST(TagCode, typingIsForgiving) {
    const auto code = TagCode::exact("K80NSC1FX4");
    ASSERT_TRUE(code);
    for (const char* typed :
         {"k80nsc1fx4", "K8ONSCIFX4", "k8onsclfx4", " K80N SC1F X4 ", "K80N-SC1F-X4", "K80NSC1FX4\r"}) {
        const auto parsed = TagCode::parse(typed);
        ASSERT_TRUE(parsed) << typed;
        EXPECT_EQ(*parsed, *code);
    }
    EXPECT_EQ(code->grouped(), "K80N SC1F X4");
}

TEST(TagCode, typingIsStrictAndInventsNoOtherCode) {
    const auto swapped = TagCode::parse("K80NCS1FX4"); // SC exchanged
    ASSERT_FALSE(swapped);
    EXPECT_EQ(swapped.error(), (Error{ErrorCode::TagCheckCharacter, {"K80NCS1FX4"}}));
    const auto wrong = TagCode::parse("K80NSC1FX6");
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error(), (Error{ErrorCode::TagCheckCharacter, {"K80NSC1FX6"}}));
    for (const char* typed : {"", "K80NSC1FX", "K80NSC1FX44", "X80NSC1FX4", "K80NSC1F*4", "K80NSCUFX4"})
        EXPECT_FALSE(TagCode::parse(typed)) << typed;
}

// The six control tags of the club's code contract.
TEST(ControlTag, everyPrintedCodeActs) {
    for (const char* text :
         {"C00000001Y", "C00000002W", "C00000004S", "C00000005Q", "C00000008K", "C00000010W"}) {
        const auto code = TagCode::exact(text);
        ASSERT_TRUE(code) << text;
        EXPECT_TRUE(core::controlOf(*code)) << text;
    }
    EXPECT_FALSE(core::controlOf(TagCode::mint(TagClass::Kit, randomBits)));
}

} // namespace
