#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/club/club_checks.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_register.h"
#include "core/register/kit_type.h"
#include "core/register/new_kit.h"
#include "tests/core/club/small_club.h"

#include <gmock/gmock.h>

namespace {

using support::SmallClub;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

TEST(ClubLists, kitIsEveryItemByCodeWithTheTagThatNamesItNow) {
    SmallClub small;
    const std::string tag = *small.club.kit().replaceTag("KGFB6J8WF9", "Bram Oke", small.now);
    const auto kit = small.club.kit().all();
    ASSERT_THAT(kit, SizeIs(support::publishedKit.size()));
    auto published = support::publishedKit.begin();
    for (const core::Item& item : kit) {
        EXPECT_EQ(item.id, published->first);
        EXPECT_EQ(item.kitType, published->second);
        EXPECT_EQ(item.tag, item.id == "KGFB6J8WF9" ? tag : item.id);
        ++published;
    }
}

TEST(ClubLists, kitSaysTheStateThatAnItemIsInNow) {
    SmallClub small;
    ASSERT_TRUE(small.club.kit().writeOff("KD2289T9SE", "worn", "Bram Oke", small.now));
    for (const core::Item& item : small.club.kit().all())
        EXPECT_EQ(item.state == core::ItemState::WrittenOff, item.id == "KD2289T9SE");
}

TEST(ClubLists, itemRecordCarriesPartsAndRecords) {
    SmallClub small;
    small.import("life_rules.csv", "kit_type,part,rule,kind,n\nradio,battery,replace,from_first_use,36\n"
                                   "radio,,monthly test,inspect_every,1\n");
    small.import("parts.csv", "code,part,first_use\nKD2289T9SE,battery,2025-03\n");
    small.import("services.csv", "code,rule,day,passed\nKD2289T9SE,monthly test,2026-03-01,yes\n");
    const auto record = small.club.kit().itemRecord("kd22 89t9 se");
    ASSERT_TRUE(record);
    ASSERT_THAT(record->parts, SizeIs(1));
    EXPECT_EQ(record->parts[0].name, "battery");
    ASSERT_THAT(record->services, SizeIs(1));
    EXPECT_EQ(record->services[0].rule, "monthly test");
    EXPECT_FALSE(small.club.kit().itemRecord("K000000018"));
}

// Element string: GS1 General Specifications, sample company prefix 9521101.
TEST(ClubLists, aScanMeansTheItemOfItsTagOrLabel) {
    SmallClub small;
    const std::string label = "(01)09521101530001(21)S-77";
    const auto radio =
        *small.club.kit().registerKit({.kitType = "radio", .labels = {label}}, "Bram Oke", small.now);
    const auto meant = [&](const std::string& text) {
        const auto item = small.club.kit().itemOfScan(text, small.now.today);
        return item ? item->id : std::string("none");
    };
    EXPECT_EQ(meant("KGFB6J8WF9"), "KGFB6J8WF9");
    EXPECT_EQ(meant(label), radio[0].id);
    EXPECT_EQ(meant("(01)09521101530001(21)S-78"), "none");
    EXPECT_EQ(meant("a word"), "none");
    const std::string tag = *small.club.kit().replaceTag("KGFB6J8WF9", "Bram Oke", small.now);
    EXPECT_EQ(meant(tag), "KGFB6J8WF9");
    EXPECT_EQ(meant("KGFB6J8WF9"), "none"); // it may lie anywhere
}

TEST(ClubLists, kitTypesComeWithSizesAndRules) {
    SmallClub small;
    small.import("life_rules.csv", "kit_type,rule,kind,n\nknife,half-year look,inspect_every,6\n");
    small.import("sizes.csv", "kit_type,size\npaddle,long\npaddle,short\n");
    std::vector<std::string> names;
    for (const core::KitType& kitType : small.club.register_().kitTypes()) {
        names.push_back(kitType.name);
        EXPECT_THAT(kitType.rules, SizeIs(kitType.name == "knife" ? 1 : 0));
        EXPECT_THAT(kitType.sizes, SizeIs(kitType.name == "paddle" ? 2 : 0));
    }
    EXPECT_THAT(names, ElementsAre("knife", "paddle", "radio", "rescue tube", "tow line", "whistle"));
}

TEST(ClubLists, placesAndEventsAreNamed) {
    SmallClub small;
    EXPECT_THAT(small.club.register_().places(), IsEmpty());
    EXPECT_THAT(small.club.events().names(), IsEmpty());
    small.import("places.csv", "place\nShed shelf\nBoathouse\n");
    EXPECT_THAT(small.club.register_().places(), ElementsAre("Boathouse", "Shed shelf"));
    const auto petrel = small.open(), tern = small.open(core::Phase::Launch, "Tern");
    ASSERT_TRUE(small.club.events().fileUnder(petrel, "Youth day", small.now));
    ASSERT_TRUE(small.club.events().fileUnder(tern, "Spring patrol", small.now));
    EXPECT_THAT(small.club.events().names(), ElementsAre("Spring patrol", "Youth day"));
    ASSERT_TRUE(small.club.events().fileUnder(petrel, "spring patrol", small.now));
    EXPECT_THAT(small.club.events().names(), SizeIs(1));
}

TEST(ClubLists, unfinishedChecksNameStocktakesToo) {
    SmallClub small;
    small.import("places.csv", "place\nShed shelf\n");
    const auto boat = small.open();
    const auto shelf = small.club.checks().openStocktake("Shed shelf", small.now)->check;
    small.scan(boat, "K80NSC1FX4");
    small.scan(shelf, "KGFB6J8WF9");
    const auto unfinished = small.club.checks().unfinished();
    ASSERT_THAT(unfinished, SizeIs(2));
    EXPECT_EQ(unfinished[0].check, shelf); // newest first
    EXPECT_EQ(unfinished[0].phase, core::Phase::Stocktake);
    EXPECT_EQ(unfinished[1].check, boat);
    EXPECT_EQ(unfinished[1].phase, core::Phase::Launch);
    ASSERT_TRUE(small.club.checks().sign(shelf, "Bram Oke", {}, small.now));
    EXPECT_THAT(small.club.checks().unfinished(), SizeIs(1));
}

} // namespace
