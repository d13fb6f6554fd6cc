#include "app/text/sentences.h"

#include <gtest/gtest.h>

namespace {

// Good codes of the practice club of these tests.
TEST(PrintedTags, standWhereASentenceNamesItsThingAndNowhereElse) {
    core::Finding finding;
    finding.kind = core::FindingKind::LogOpen;
    finding.kitType = "knife";
    finding.item = {"KD0XPAMAJG", "KFGQ9XHHKJ"};
    finding.text = "tag KD0X PAMA JG found in the bilge";
    EXPECT_EQ(app::reasonOf(finding),
              "The log of the knife KFGQ 9XHH KJ has an open entry: “tag KD0X PAMA JG found in the bilge”; "
              "see to it and "
              "close it.");
    finding.item.tag = finding.item.id;
    EXPECT_TRUE(app::reasonOf(finding).startsWith("The log of the knife KD0X PAMA JG has"));
    core::NotReadyReason reason{.kind = core::NotReadyReason::Kind::BecameMissing,
                                .item = {"KD0XPAMAJG", "KFGQ9XHHKJ"},
                                .kitType = "knife"};
    EXPECT_TRUE(app::reasonOf(reason).contains("KFGQ 9XHH KJ")) << app::reasonOf(reason).toStdString();
    EXPECT_FALSE(app::reasonOf(reason).contains("KD0X PAMA JG"));
    reason.finding = finding; // its own sentence is said
    reason.kind = core::NotReadyReason::Kind::Finding;
    EXPECT_EQ(app::reasonOf(reason), app::reasonOf(finding));
}

} // namespace
