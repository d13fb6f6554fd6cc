#include "core/tag/scanned_text.h"

#include <gtest/gtest.h>

namespace core {
namespace {

// Symbology identifiers: ISO/IEC 15424; those of GS1 symbols: GS1 General Specifications 5.1.3.

TEST(ScannedText, typedByAPersonStandsForItself) {
    EXPECT_EQ(ScannedText::typed("k7q2 4rmx 1p"), (ScannedText{"k7q2 4rmx 1p", false}));
    EXPECT_EQ(ScannedText::typed(""), (ScannedText{"", false}));
    EXPECT_EQ(ScannedText::typed("]Q1"), (ScannedText{"]Q1", false}))
        << "an identifier with nothing after it";
}

TEST(ScannedText, typedByAScannerLosesTheIdentifierOfAPlainSymbol) {
    EXPECT_EQ(ScannedText::typed("]Q1KD0XPAMAJG"), (ScannedText{"KD0XPAMAJG", false}));
    EXPECT_EQ(ScannedText::typed("]d1KD0XPAMAJG"), (ScannedText{"KD0XPAMAJG", false}));
}

TEST(ScannedText, typedByAScannerIsElementStringsWhereItsIdentifierSaysSo) {
    for (const char* identifier : {"]d2", "]Q3", "]C1", "]e0"})
        EXPECT_EQ(ScannedText::typed(identifier + std::string("21KD0XPAMAJG")),
                  (ScannedText{"21KD0XPAMAJG", true}))
            << identifier;
}

TEST(ScannedText, typedWithoutAnIdentifierIsElementStringsWhereItLooksLikeThem) {
    EXPECT_TRUE(ScannedText::typed("010952110153000121R-7").isGs1) << "a GTIN in front";
    EXPECT_TRUE(ScannedText::typed("(01)09521101530001(21)R-7").isGs1);
    EXPECT_TRUE(ScannedText::typed("21R-7\x1D"
                                   "10A")
                    .isGs1)
        << "a separator";
    EXPECT_FALSE(ScannedText::typed("21R-7").isGs1);
}

TEST(ScannedText, aSymbolThatSaysGs1IsBelieved) {
    EXPECT_EQ(ScannedText::ofSymbol("21KD0XPAMAJG", true), (ScannedText{"21KD0XPAMAJG", true}));
    EXPECT_EQ(ScannedText::ofSymbol("]C121KD0XPAMAJG", true), (ScannedText{"21KD0XPAMAJG", true}));
}

TEST(ScannedText, aSymbolThatSaysNothingMayHoldALabelAllTheSame) {
    EXPECT_EQ(ScannedText::ofSymbol("21KD0XPAMAJG", false), (ScannedText{"21KD0XPAMAJG", false}));
    EXPECT_TRUE(ScannedText::ofSymbol("010952110153000121R-7", false).isGs1);
}

} // namespace
} // namespace core
