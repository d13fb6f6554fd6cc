#include "app/gui/gear/kit/kit_list.h"
#include "app/gui/gear/kit/kit_search.h"

#include <gtest/gtest.h>

namespace {

core::Item entry(const char* code, const char* tag) {
    core::Item made;
    made.id = code;
    made.tag = tag;
    return made;
}

/// Two items; the codes are tag codes of the demo club.
app::KitSearch twoItems() {
    core::Item jacket = entry("KGYD21XNA5", "KGYD21XNA5");
    jacket.kitType = "life jacket";
    jacket.size = "XL";
    jacket.boat = "Bittern";
    jacket.maker = "Quayside";
    jacket.serial = "LJ-0417";
    jacket.batch = "B77";
    jacket.person = "Ines Varro";
    jacket.note = "came back from the youth day";
    core::Item knife = entry("KMRMQRZM66", "KD0XPAMAJG"); // its tag was replaced
    knife.kitType = "knife";
    knife.place = "Gear store";
    knife.state = core::ItemState::Missing;
    return app::KitSearch({jacket, knife});
}

using Found = std::vector<std::size_t>;

} // namespace

TEST(KitSearch, findsByEachThingThatIsKnownOfAnItem) {
    const app::KitSearch search = twoItems();
    for (const char* typed :
         {"jacket", "XL", "bittern", "QUAY", "lj-04", "b77", "varro", "youth", "serviceable"})
        EXPECT_EQ(search.find(typed), Found{0}) << typed;
    for (const char* typed : {"knife", "gear st", "missing", "KMRM", "d0xp"})
        EXPECT_EQ(search.find(typed), Found{1}) << typed;
    EXPECT_EQ(search.find("oar"), Found{});
}

TEST(KitSearch, everyWordMustStandSomewhere) {
    const app::KitSearch search = twoItems();
    EXPECT_EQ(search.find("life bittern"), Found{0});
    EXPECT_EQ(search.find("  bittern   life "), Found{0});
    EXPECT_EQ(search.find("life store"), Found{});
}

TEST(KitSearch, emptyTextFindsAllInTheRegistersOrder) {
    EXPECT_EQ(twoItems().find(""), (Found{0, 1}));
    EXPECT_EQ(twoItems().find("e"), (Found{0, 1}));
}

TEST(KitSearch, aWholeCodeFindsItsItemAloneByOldAndNewTag) {
    const app::KitSearch search = twoItems();
    EXPECT_EQ(search.find("kgyd 21xn a5"), Found{0});
    EXPECT_EQ(search.find("KMRMQRZM66"), Found{1});
    EXPECT_EQ(search.find("KD0XPAMAJG"), Found{1});
    EXPECT_EQ(search.ofCode("KFC3K7GM79"), nullptr);
    EXPECT_EQ(search.ofCode("KD0XPAMAJG"), &search.kit()[1]);
}

TEST(KitList, findsNothingBeforeAnythingIsRead) {
    app::KitList list;
    EXPECT_TRUE(list.shown({.typed = "K"}).empty());
    EXPECT_EQ(list.item("KMRMQRZM66"), nullptr);
}

TEST(KitList, findsByWhatIsDueNext) {
    core::ItemDue line{entry("KGYD21XNA5", "KGYD21XNA5"), core::RuleDue{}, false};
    line.next->rule.name = "retire";
    line.next->due = core::CalendarDay::from(2027, 3, 1);
    app::KitList list({line, {entry("KMRMQRZM66", "KD0XPAMAJG"), std::nullopt, false}});
    EXPECT_EQ(list.shown({.typed = "march retire"}), std::vector<int>{0});
    EXPECT_EQ(list.shown({.sortedBy = 5, .isBackwards = true}), (std::vector<int>{1, 0}));
}
