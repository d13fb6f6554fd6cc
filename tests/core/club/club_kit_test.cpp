#include "core/base/error_code.h"
#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "core/register/new_kit.h"
#include "core/tag/tag_code.h"
#include "tests/core/club/small_club.h"

#include <gmock/gmock.h>
#include <sstream>

namespace {

using core::ItemState;
using core::NewKit;
using core::Scanned;
using support::SmallClub;
using testing::ElementsAre;
using testing::SizeIs;

TEST(NewKit, isRegisteredWithMintedTags) {
    SmallClub small;
    const auto items = *small.club.kit().registerKit(
        {.kitType = "PADDLE", .boat = "petrel", .made = "2026-01", .count = 3}, "Bram Oke", small.now);
    ASSERT_THAT(items, SizeIs(3));
    EXPECT_NE(items[0].id, items[1].id);
    EXPECT_EQ(items[0].kitType, "paddle");
    EXPECT_EQ(items[0].boat, "Petrel");
    EXPECT_EQ(items[0].made->text(), "2026-01");
    EXPECT_EQ(items[0].registered->text(), "2026-03-14");
    EXPECT_EQ(small.scan(small.open(), items[2].id).what, Scanned::What::NewItem);
}

// GTIN and date of the element string: GS1 General Specifications, sample company prefix 9521101.
TEST(NewKit, aMakersLabelFillsSerialBatchAndDays) {
    SmallClub small;
    const std::string label = "(01)09521101530001(11)251200(17)351231(10)AB-12(21)S-77";
    const auto items =
        *small.club.kit().registerKit({.kitType = "radio", .labels = {label}}, "Bram Oke", small.now);
    ASSERT_THAT(items, SizeIs(1));
    EXPECT_EQ(items[0].gtin, "09521101530001");
    EXPECT_EQ(items[0].serial, "S-77");
    EXPECT_EQ(items[0].batch, "AB-12");
    EXPECT_EQ(items[0].made->text(), "2025-12");
    EXPECT_EQ(items[0].stamped->text(), "2035-12-31");
    // The label now names the item, and cannot be registered twice.
    EXPECT_EQ(small.scan(small.open(), label).item.id, items[0].id);
    EXPECT_FALSE(
        small.club.kit().registerKit({.kitType = "radio", .labels = {label}}, "Bram Oke", small.now));
}

/// docs/register-csv.md, `since` and `why`: of that state, and empty when another is given without.
TEST(ItemStates, aStateHasItsOwnDayInAnswersAndExports) {
    SmallClub small;
    const auto exported = [&] {
        std::filesystem::create_directories(small.folder / "out");
        EXPECT_TRUE(small.club.register_().exportCsv(small.folder / "out", {}));
        std::ostringstream text;
        text << std::ifstream(small.folder / "out" / "items.csv").rdbuf();
        std::filesystem::remove_all(small.folder / "out");
        return text.str();
    };
    const auto since = [&] { return small.club.kit().item("KGFB6J8WF9")->since; };
    small.import("items.csv", "code,state,since\nKGFB6J8WF9,unserviceable,2021-01-01\n");
    small.import("items.csv", "code,state\nKGFB6J8WF9,missing\n");
    EXPECT_EQ(since(), std::nullopt);
    EXPECT_THAT(exported(), testing::Not(testing::HasSubstr("2021-01-01")));
    small.import("items.csv", "code,state,since\nKGFB6J8WF9,unserviceable,2022-02-02\n");
    small.import("items.csv", "code,state,since\nKGFB6J8WF9,missing,2022-02-02\n");
    EXPECT_EQ(since(), core::CalendarDay::parse("2022-02-02")) << "of the same day";
    EXPECT_THAT(exported(), testing::HasSubstr("missing,2022-02-02"));
}

TEST(NewKit, oneBadLabelAndNothingIsRegistered) {
    SmallClub small;
    const auto facts = small.club.record().verify(false)->facts;
    const std::string good = "(01)09521101530001(21)S-1", bad = "(01)09521101530002(21)S-2"; // check digit
    EXPECT_FALSE(small.club.kit().registerKit({.kitType = "radio", .labels = {good, bad}}, {}, small.now));
    EXPECT_EQ(small.club.record().verify(false)->facts, facts);
    EXPECT_TRUE(small.club.kit().registerKit({.kitType = "radio", .labels = {good}}, {}, small.now));
}

TEST(NewKit, unknownNamesAreRefused) {
    SmallClub small;
    const auto isRefused = [&](const NewKit& kit) {
        return !small.club.kit().registerKit(kit, {}, small.now);
    };
    EXPECT_TRUE(isRefused({.kitType = "anvil"}));
    EXPECT_TRUE(isRefused({.kitType = "paddle", .size = "large"}));
    EXPECT_TRUE(isRefused({.kitType = "paddle", .boat = "Gull"}));
    EXPECT_TRUE(isRefused({.kitType = "paddle", .place = "shed"}));
    EXPECT_TRUE(isRefused({.kitType = "paddle", .person = "Nobody"}));
    EXPECT_TRUE(isRefused({.kitType = "paddle", .made = "yesterday"}));
    EXPECT_TRUE(isRefused({.kitType = "paddle", .count = 0}));
    EXPECT_FALSE(isRefused({.kitType = "paddle"}));
}

TEST(ReplacedTag, theNewOneNamesTheItemAndTheOldOneNothing) {
    SmallClub small;
    const std::string knife = "KGFB6J8WF9";
    EXPECT_EQ(small.club.kit().item(knife)->tag, knife);
    const std::string tag = *small.club.kit().replaceTag(knife, "Bram Oke", small.now);
    EXPECT_EQ(small.club.kit().item(knife)->name(), (core::ItemName{knife, tag}));
    const auto check = small.open();
    EXPECT_EQ(small.scan(check, knife).what, Scanned::What::Unread); // it may lie anywhere
    EXPECT_EQ(small.scan(check, tag).item, (core::ItemName{knife, tag}));
    EXPECT_EQ(small.club.kit().item(tag)->id, knife);
    EXPECT_EQ(small.club.kit().item(knife)->id, knife); // for who looks it up
    const std::string third = *small.club.kit().replaceTag(tag, "Bram Oke", small.now);
    EXPECT_EQ(small.scan(check, tag).what, Scanned::What::Unread);
    EXPECT_EQ(small.scan(check, third).what, Scanned::What::SeenBefore);
    EXPECT_EQ((*small.club.kit().tagLabels({knife}))[0].code, third);
    std::vector<std::string> kinds;
    const auto lines = *small.club.answers().history(knife);
    for (const auto& line : lines)
        kinds.push_back(line.kind);
    EXPECT_THAT(kinds, ElementsAre("item", "tag-fixed", "tag-seen", "tag-fixed"));
    EXPECT_EQ(small.club.answers().history(third)->size(), lines.size()) << "by the tag that is on it now";
    EXPECT_TRUE(small.club.record().verify(true)->problems.empty());
    EXPECT_FALSE(small.club.kit().replaceTag("K000000018", {}, small.now));
}

TEST(WrittenOff, countsNowhereAndIsNotWrittenOffTwice) {
    SmallClub small;
    ASSERT_TRUE(small.club.kit().writeOff("KGFB6J8WF9", "worn", "Bram Oke", small.now));
    EXPECT_EQ(small.club.kit().item("KGFB6J8WF9")->state, ItemState::WrittenOff);
    EXPECT_EQ(small.club.kit().item("KGFB6J8WF9")->why, "worn");
    EXPECT_FALSE(small.club.kit().writeOff("KGFB6J8WF9", "worn", {}, small.now));
    EXPECT_FALSE(small.club.kit().writeOff("K80NSC1FX4", "bored", {}, small.now));
    EXPECT_FALSE(small.club.kit().release("KGFB6J8WF9", {}, small.now));
}

TEST(WriteOff, ofSeveralIsOfAllOrNone) {
    SmallClub small;
    const auto stateOf = [&](const char* code) { return small.club.kit().item(code)->state; };
    const auto facts = small.club.record().verify(false)->facts;
    const auto unknown =
        small.club.kit().writeOffAll({"KGFB6J8WF9", "K80NSC1FX4", "nothing"}, "worn", "Bram Oke", small.now);
    EXPECT_EQ(unknown.error().code, core::ErrorCode::NoSuchItem);
    EXPECT_EQ(small.club.record().verify(false)->facts, facts);
    EXPECT_NE(stateOf("KGFB6J8WF9"), ItemState::WrittenOff);
    ASSERT_TRUE(small.club.kit().writeOffAll({"KGFB6J8WF9", "K80NSC1FX4"}, "worn", "Bram Oke", small.now));
    EXPECT_EQ(stateOf("KGFB6J8WF9"), ItemState::WrittenOff);
    EXPECT_EQ(stateOf("K80NSC1FX4"), ItemState::WrittenOff);
    // The same thing twice is one too many: the second finds it written off.
    EXPECT_FALSE(small.club.kit().writeOffAll({"KBDWAF2K6T", "KBDWAF2K6T"}, "worn", {}, small.now));
}

TEST(Release, putsAnUnserviceableItemBackInUse) {
    SmallClub small;
    const auto check = small.open();
    small.scan(check, "KGFB6J8WF9");
    ASSERT_TRUE(small.club.checks().withdraw(check, "KGFB6J8WF9", "blunt", small.now));
    ASSERT_TRUE(small.club.kit().release("KGFB6J8WF9", "Bram Oke", small.now));
    EXPECT_EQ(small.club.kit().item("KGFB6J8WF9")->state, ItemState::Serviceable);
    EXPECT_FALSE(small.club.kit().release("KGFB6J8WF9", "Bram Oke", small.now));
}

// What a person meant who typed a tag wrongly: the club's own tags, never one that nobody has.
TEST(MistypedTag, isAnsweredWithTheClubsOwnTags) {
    SmallClub small;
    const auto told = [&](const std::string& typed) {
        return small.club.kit().release(typed, "Bram Oke", small.now).error();
    };
    const std::string tag = small.club.kit().all().front().tag;
    std::string exchanged = tag;
    std::swap(exchanged[3], exchanged[4]);
    for (const std::string& typed : {exchanged, tag.substr(0, 9), tag + "7"}) {
        EXPECT_EQ(told(typed).code, core::ErrorCode::TagLikeOthers) << typed;
        EXPECT_EQ(told(typed).arguments.back(), core::TagCode::exact(tag)->grouped());
    }
    EXPECT_EQ(told("K999999998").code, core::ErrorCode::NoSuchItem) << "nothing is near";

    const std::string check = small.open();
    const Scanned scanned = small.scan(check, exchanged);
    EXPECT_EQ(scanned.what, Scanned::What::Unread);
    EXPECT_THAT(scanned.alike, ElementsAre(core::TagCode::exact(tag)->grouped()));
    EXPECT_TRUE(small.scan(check, "4099052913969").alike.empty());
}

TEST(MistypedTag, theNewTagOfAnItemIsMeant) {
    SmallClub small;
    const std::string old = small.club.kit().all().front().id;
    const std::string tag = *small.club.kit().replaceTag(old, "Bram Oke", small.now);
    std::string typed = tag;
    std::swap(typed[5], typed[6]);
    if (typed == tag) typed[5] = typed[5] == '7' ? '8' : '7';
    EXPECT_EQ(small.club.kit().release(typed, "Bram Oke", small.now).error().arguments.back(),
              core::TagCode::exact(tag)->grouped());
}

} // namespace
