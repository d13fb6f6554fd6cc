#include "scanner/reader/text_proof.h"

#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>

using namespace scanner::reader;

// Check digit: GS1 General Specifications 7.9; 6291041500213 is the worked example of GS1's own calculator
// page, from memory.
TEST(Gs1Text, checkDigit) {
    EXPECT_TRUE(gs1CheckDigitAgrees("6291041500213"));
    EXPECT_FALSE(gs1CheckDigitAgrees("6291041500214"));
    EXPECT_FALSE(gs1CheckDigitAgrees("6291041500a13"));
}

TEST(Gs1Text, provesItselfByCheckDigitOrTag) {
    EXPECT_TRUE(provesItselfAsGs1("0106291041500213"));
    EXPECT_TRUE(provesItselfAsGs1("010629104150021317280101"
                                  "10A5\x1d"
                                  "21X9"));
    EXPECT_FALSE(provesItselfAsGs1("0106291041500214"));
    EXPECT_FALSE(provesItselfAsGs1("010629104150021"));
    EXPECT_FALSE(provesItselfAsGs1("21" + pictures::tagCode(1)));
    EXPECT_TRUE(provesItselfAsGs1("21" + pictures::tagCode(1), pictures::isTag));
    EXPECT_FALSE(provesItselfAsGs1("21K234567890", pictures::isTag));
    EXPECT_FALSE(provesItselfAsGs1(""));
    EXPECT_FALSE(provesItselfAsGs1("ABC"));
}

// A check digit is of its own number alone.
TEST(Gs1Text, aNumberProvesLessThanATag) {
    const std::string number = "0106291041500213";
    EXPECT_EQ(proofOf(number + "21" + pictures::tagCode(1), true, pictures::isTag), TextProof::Tag);
    EXPECT_EQ(proofOf(number + "21K234567890", true, pictures::isTag), TextProof::Number);
    EXPECT_EQ(proofOf(number, false, pictures::isTag), TextProof::None);
    EXPECT_EQ(proofOf(pictures::tagCode(1), false, pictures::isTag), TextProof::Tag);
}
