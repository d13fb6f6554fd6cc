#include "core/answers/outlook.h"

#include <gmock/gmock.h>

namespace {

using core::Item;
using core::ItemState;
using core::KitAtHome;
using core::ManifestLine;
using core::Outlook;

Item thing(const std::string& id, const std::string& kitType, ItemState state = ItemState::Serviceable,
           const std::string& boat = "Petrel") {
    Item made;
    made.id = id;
    made.kitType = kitType;
    made.boat = boat;
    made.state = state;
    return made;
}

std::vector<int> there(const std::vector<KitAtHome>& kit) {
    std::vector<int> counts;
    for (const KitAtHome& each : kit)
        counts.push_back(each.there);
    return counts;
}

TEST(KitAtHome, countsWhatIsInUseAndHasItsHomeAboard) {
    const std::vector<ManifestLine> manifest{{.kitType = "knife"}, {.kitType = "paddle", .quantity = 2}};
    EXPECT_THAT(there(core::kitAtHomeOf("Petrel", manifest,
                                        {thing("1", "knife", ItemState::Missing), thing("2", "Paddle"),
                                         thing("3", "paddle", ItemState::WrittenOff),
                                         thing("4", "knife", ItemState::Serviceable, "Tern")})),
                testing::ElementsAre(0, 1));
    EXPECT_THAT(there(core::kitAtHomeOf(
                    "petrel", manifest,
                    {thing("1", "knife"), thing("2", "paddle"), thing("3", "paddle"), thing("5", "paddle")})),
                testing::ElementsAre(1, 2))
        << "no more than is wanted";
}

TEST(KitAtHome, aSubstituteCountsOnceAndForItsOwnTypeFirst) {
    const std::vector<ManifestLine> manifest{{.kitType = "knife", .substitutes = {"shears"}},
                                             {.kitType = "shears"}};
    EXPECT_THAT(there(core::kitAtHomeOf("Petrel", manifest, {thing("1", "shears")})),
                testing::ElementsAre(0, 1));
    EXPECT_THAT(there(core::kitAtHomeOf("Petrel", manifest, {thing("1", "shears"), thing("2", "shears")})),
                testing::ElementsAre(1, 1));
}

TEST(OutlookChange, tellsOnlyShortagesThatComeGoOrChange) {
    const Outlook before{
        {}, {{"Petrel", "knife", 1, 1}, {"Petrel", "paddle", 2, 1}, {"Tern", "knife", 1, 0}}, {}};
    const Outlook after{
        {}, {{"Petrel", "knife", 1, 0}, {"Petrel", "paddle", 2, 2}, {"Tern", "radio", 1, 1}}, {}};
    const auto change = core::changesBetween(before, after);
    ASSERT_EQ(change.kit.size(), 3U);
    EXPECT_EQ(change.kit[0].kitType, "knife");
    EXPECT_EQ(change.kit[0].after->there, 0);
    EXPECT_EQ(change.kit[1].kitType, "paddle");
    EXPECT_EQ(change.kit[2].boat, "Tern");
    EXPECT_FALSE(change.kit[2].after) << "no longer asked; the radio that is there is no news";
    EXPECT_TRUE(core::changesBetween(before, before).isEmpty());
}

TEST(OutlookChange, tellsOfBoatsAndOfDays) {
    core::BoatCondition ready{.boat = "Petrel", .kind = core::BoatCondition::Kind::KitReady};
    core::BoatCondition not_ = ready;
    not_.kind = core::BoatCondition::Kind::NotReady;
    core::DueRow row{.item = {"K1", "K1"}, .kitType = "radio"};
    row.due.rule.name = "inspection";
    core::DueRow later = row;
    row.due.due = core::CalendarDay::parse("2026-05-01");
    later.due.due = core::CalendarDay::parse("2027-05-01");
    const auto change = core::changesBetween({{ready}, {}, {row}}, {{not_}, {}, {later}});
    ASSERT_EQ(change.boats.size(), 1U);
    EXPECT_EQ(change.boats[0].after->kind, core::BoatCondition::Kind::NotReady);
    ASSERT_EQ(change.due.size(), 1U);
    EXPECT_EQ(change.due[0].before->due->iso(), "2026-05-01");
    EXPECT_EQ(change.due[0].after->due->iso(), "2027-05-01");
}

} // namespace
