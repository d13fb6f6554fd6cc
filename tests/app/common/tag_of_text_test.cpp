#include "app/common/tag_of_text.h"

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

TEST(TagOfText, anotherSerialNumberIsNoTag) {
    EXPECT_FALSE(tagOfText("010952110153000121R-7"));
    EXPECT_FALSE(tagOfText("0109521101530001"
                           "10KD0XPAMAJG"))
        << "a batch";
}

} // namespace
} // namespace app
