#include "app/common/printed_tags.h"

#include <gtest/gtest.h>

namespace {

// Good codes, the first two of the practice club of these tests.
const app::PrintedTags replaced{{"KD0XPAMAJG", "KFGQ9XHHKJ"}};

TEST(PrintedTags, standInSentencesWhereTheItemsFirstCodeStood) {
    EXPECT_EQ(app::inPrintedTags("The knife KD0X PAMA JG, and KD0X PAMA JG again.", replaced),
              "The knife KFGQ 9XHH KJ, and KFGQ 9XHH KJ again.");
    EXPECT_EQ(app::inPrintedTags("The paddle KVP5 CYVR E7 is fine.", replaced),
              "The paddle KVP5 CYVR E7 is fine.");
    EXPECT_EQ(app::inPrintedTags("As recorded: KD0XPAMAJG.", replaced), "As recorded: KD0XPAMAJG.");
    EXPECT_EQ(app::inPrintedTags("The knife KD0X PAMA JG.", {}), "The knife KD0X PAMA JG.");
}

TEST(PrintedTags, nameTheirItem) {
    EXPECT_EQ(app::printedTag(replaced, "KD0XPAMAJG"), "KFGQ9XHHKJ");
    EXPECT_EQ(app::printedTag(replaced, "KVP5CYVRE7"), "KVP5CYVRE7");
    EXPECT_EQ(app::itemOfPrintedTag(replaced, "KFGQ9XHHKJ"), "KD0XPAMAJG");
    EXPECT_EQ(app::itemOfPrintedTag(replaced, "KVP5CYVRE7"), "KVP5CYVRE7");
}

} // namespace
