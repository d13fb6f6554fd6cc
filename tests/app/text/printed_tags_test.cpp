#include "app/text/printed_tags.h"

#include "app/text/sentences.h"

#include <gtest/gtest.h>

namespace {

// Good codes, the first two of the practice club of these tests.
const app::PrintedTags replaced{{"KD0XPAMAJG", "KFGQ9XHHKJ"}};

TEST(PrintedTags, standWhereASentenceNamesItsThingAndNowhereElse) {
    core::Finding finding;
    finding.kind = core::FindingKind::LogOpen;
    finding.kitType = "knife";
    finding.code = "KD0XPAMAJG";
    finding.text = "tag KD0X PAMA JG found in the bilge";
    EXPECT_EQ(app::reasonOf(app::named(finding, replaced)),
              "The log of the knife KFGQ 9XHH KJ has an open entry: “tag KD0X PAMA JG found in the bilge”; "
              "see to it and "
              "close it.");
    finding.code = "KVP5CYVRE7";
    EXPECT_EQ(app::named(finding, replaced).code, "KVP5CYVRE7");
    core::NotReadyReason reason{.kind = core::NotReadyReason::Kind::BecameMissing, .finding = finding};
    reason.code = "KD0XPAMAJG";
    EXPECT_EQ(app::named(reason, replaced).code, "KFGQ9XHHKJ");
    EXPECT_EQ(app::named(reason, {}).code, "KD0XPAMAJG");
}

TEST(PrintedTags, nameTheirItem) {
    EXPECT_EQ(app::printedTag(replaced, "KD0XPAMAJG"), "KFGQ9XHHKJ");
    EXPECT_EQ(app::printedTag(replaced, "KVP5CYVRE7"), "KVP5CYVRE7");
    EXPECT_EQ(app::itemOfPrintedTag(replaced, "KFGQ9XHHKJ"), "KD0XPAMAJG");
    EXPECT_EQ(app::itemOfPrintedTag(replaced, "KVP5CYVRE7"), "KVP5CYVRE7");
}

} // namespace
