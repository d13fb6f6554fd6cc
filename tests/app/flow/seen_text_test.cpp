#include "app/flow/seen_text.h"

#include "scanner/seen_code.h"

#include <gtest/gtest.h>

namespace app {
namespace {

TEST(TagOfText, aTagCodeIsItself) {
    EXPECT_EQ(tagOfText("KD0XPAMAJG"), "KD0XPAMAJG");
    EXPECT_EQ(tagOfText("BVWMV0JQQG"), "BVWMV0JQQG");
}

TEST(TagOfText, onlyExactlyAsItIsPrinted) {
    EXPECT_FALSE(tagOfText("kd0xpamajg"));
    EXPECT_FALSE(tagOfText("KD0X PAMA JG"));
    EXPECT_FALSE(tagOfText("KD0XPAMAJH")) << "the check character fails";
    EXPECT_FALSE(tagOfText(""));
}

// Element strings: AI 01 with its 14 digits and check digit, AI 10 batch, AI 21 serial; FNC1 is transmitted
// as GS (GS1 General Specifications, chapters 3 and 7.8).
TEST(TagOfText, aMakersLabelMayCarryTheTagAsItsSerialNumber) {
    EXPECT_EQ(tagOfText("010952110153000121KD0XPAMAJG"), "KD0XPAMAJG");
    EXPECT_EQ(tagOfText("]d2010952110153000110AB-123\x1D"
                        "21KD0XPAMAJG"),
              "KD0XPAMAJG");
}

TEST(TagOfText, aSymbolThatSaysItIsGs1MayHoldTheSerialNumberAlone) {
    EXPECT_EQ(tagOfText("21KD0XPAMAJG", true), "KD0XPAMAJG");
    EXPECT_FALSE(tagOfText("21KD0XPAMAJG"));
    EXPECT_FALSE(tagOfText("10KD0XPAMAJG", true)) << "a batch";
}

// Symbology identifiers ]d2, ]Q3 and ]C1: GS1 General Specifications 5.1.3.
TEST(TagOfText, typedTextIsWhatAHandHeldScannerSends) {
    scanner::SeenCode code;
    code.text = "21KD0XPAMAJG";
    code.symbology = scanner::Symbology::Code128;
    EXPECT_EQ(typedText(code), "21KD0XPAMAJG");
    code.gs1 = true;
    EXPECT_EQ(typedText(code), "]C121KD0XPAMAJG");
    code.symbology = scanner::Symbology::DataMatrix;
    EXPECT_EQ(typedText(code), "]d221KD0XPAMAJG");
    code.symbology = scanner::Symbology::Qr;
    EXPECT_EQ(typedText(code), "]Q321KD0XPAMAJG");
}

TEST(TagOfText, anotherSerialNumberIsNoTag) {
    EXPECT_FALSE(tagOfText("010952110153000121R-7"));
    EXPECT_FALSE(tagOfText("0109521101530001"
                           "10KD0XPAMAJG"))
        << "a batch";
}

} // namespace
} // namespace app
