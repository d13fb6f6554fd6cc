#include "core/answers/missing_list.h"

#include "tests/core/answers/answers_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using What = ChainLink::What;

// docs/rules.md section 6: "missing, with the chain: launch check (boat, time, people) · last sighting ·
// return check that missed it".

MissingOnRecord paddle(const std::string& code = "K1", const std::string& since = "2026-03-14") {
    MissingOnRecord missing{.item = itemOf(code, "paddle")};
    missing.item.boat = "Heron";
    missing.item.state = ItemState::Missing;
    if (!since.empty()) missing.item.since = day(since);
    return missing;
}

std::vector<What> kinds(const MissingItem& missing) {
    std::vector<What> whats;
    for (const ChainLink& link : missing.chain)
        whats.push_back(link.what);
    return whats;
}

TEST(MissingList, theChainTellsLaunchSightingAndReturn) {
    MissingOnRecord missing = paddle();
    missing.launch = signOff("c1", "1", Phase::Launch, "2026-03-14T08:00:00Z");
    missing.launchPeople = {"Ada Marsh", "Bo Lake"};
    missing.sighting = Sighting{.check = "c2", .code = "K1", .at = instant("2026-03-14T09:00:00Z")};
    missing.seenAt = Location::boat("Tern");
    missing.seenPeople = {"Cai Ford"};
    missing.missedBy = signOff("c3", "3", Phase::Return, "2026-03-14T10:00:00Z");
    const auto told = missingItemOf(missing);
    EXPECT_EQ(told.item.id, "K1");
    EXPECT_EQ(told.kitType, "paddle");
    EXPECT_EQ(told.boat, "Petrel") << "the boat it went out on, not its home";
    EXPECT_EQ(told.since, day("2026-03-14"));
    ASSERT_THAT(kinds(told), ElementsAre(What::Launched, What::Seen, What::NotReturned));
    EXPECT_EQ(told.chain[0].at, instant("2026-03-14T08:00:00Z"));
    EXPECT_EQ(told.chain[0].where, Location::boat("Petrel"));
    EXPECT_THAT(told.chain[0].by, ElementsAre("Ada Marsh", "Bo Lake"));
    EXPECT_EQ(told.chain[0].check, "c1");
    EXPECT_EQ(told.chain[1].at, instant("2026-03-14T09:00:00Z"));
    EXPECT_EQ(told.chain[1].where, Location::boat("Tern"));
    EXPECT_THAT(told.chain[1].by, ElementsAre("Cai Ford"));
    EXPECT_EQ(told.chain[1].check, "c2");
    EXPECT_EQ(told.chain[2].at, instant("2026-03-14T10:00:00Z"));
    EXPECT_EQ(told.chain[2].where, Location::boat("Petrel"));
    EXPECT_THAT(told.chain[2].by, ElementsAre("Odalys Finch"));
    EXPECT_EQ(told.chain[2].check, "c3");
    EXPECT_FALSE(told.chain[2].day);
}

TEST(MissingList, whatNeverWentOutIsMissedAtItsHome) {
    const auto told = missingItemOf(paddle());
    EXPECT_EQ(told.boat, "Heron");
    ASSERT_THAT(kinds(told), ElementsAre(What::MarkedMissing));
    EXPECT_FALSE(told.chain[0].at);
    EXPECT_EQ(told.chain[0].day, day("2026-03-14")) << "only the day is known";
    EXPECT_FALSE(told.chain[0].where);
    EXPECT_THAT(told.chain[0].by, IsEmpty());
    EXPECT_EQ(told.chain[0].check, "");
}

// "What the code settles": a stocktake marks what it does not see as missing.
TEST(MissingList, aStocktakeMarksMissingWhereItWasDone) {
    MissingOnRecord missing = paddle();
    missing.missedBy = signOff("c3", "3", Phase::Stocktake, "2026-03-14T10:00:00Z");
    missing.missedBy->location = Location::place("loft");
    const auto told = missingItemOf(missing);
    ASSERT_THAT(kinds(told), ElementsAre(What::MarkedMissing));
    EXPECT_EQ(told.chain[0].where, Location::place("loft"));
    EXPECT_EQ(told.chain[0].at, instant("2026-03-14T10:00:00Z"));
    missing.missedBy->phase = Phase::Return;
    EXPECT_THAT(kinds(missingItemOf(missing)), ElementsAre(What::NotReturned));
}

// Common practice, no source: what has been gone longest stands first.
TEST(MissingList, longestMissingStandsFirst) {
    std::vector<std::string> codes;
    for (const MissingItem& item :
         missingListOf({paddle("K3", "2026-03-02"), paddle("K1", "2026-03-14"), paddle("K2", "2026-03-01"),
                        paddle("K0", "2026-03-14"), paddle("K9", "")}))
        codes.push_back(item.item.id);
    EXPECT_THAT(codes, ElementsAre("K9", "K2", "K3", "K1", "K0"));
    EXPECT_THAT(missingListOf({}), IsEmpty());
}

TEST(MissingList, linksHaveNames) { // docs/command-line.md, `missing`
    EXPECT_STREQ(nameOf(What::Launched), "launched");
    EXPECT_STREQ(nameOf(What::Seen), "seen");
    EXPECT_STREQ(nameOf(What::Returned), "returned");
    EXPECT_STREQ(nameOf(What::NotReturned), "not-returned");
    EXPECT_STREQ(nameOf(What::MarkedMissing), "marked-missing");
}

} // namespace
} // namespace core
