#include "core/answers/set_up.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

BoatFitOut boatWith(const std::string& name, int wanted, int there) {
    FitOutLine knife;
    knife.line.kitType = "knife";
    knife.line.quantity = wanted;
    knife.there = there;
    return {name, {knife}};
}

SetUpTick tick(const SetUpValues& values, SetUpStep step) {
    return setUpOf(values)[static_cast<std::size_t>(step)];
}

/// A club that has done all of it.
SetUpValues all() {
    return {{boatWith("Teal", 1, 1)}, {}, 2, {"the maker's manual"}, true, false, true};
}

TEST(SetUp, ofAnEmptyClubEverythingIsStillToDo) {
    const auto ticks = setUpOf({});
    ASSERT_EQ(ticks.size(), static_cast<std::size_t>(SetUpStep::Last) + 1);
    for (std::size_t i = 0; i < ticks.size(); ++i) {
        EXPECT_EQ(static_cast<std::size_t>(ticks[i].step), i);
        EXPECT_FALSE(ticks[i].isDone) << i;
    }
    EXPECT_FALSE(isSetUp(ticks));
}

TEST(SetUp, isDoneWhenEveryStepIs) {
    EXPECT_TRUE(isSetUp(setUpOf(all())));
    for (const auto& undo : std::vector<void (*)(SetUpValues&)>{
             [](SetUpValues& v) { v.boats.clear(); }, [](SetUpValues& v) { v.people = 0; },
             [](SetUpValues& v) { v.boats.front() = boatWith("Teal", 2, 1); },
             [](SetUpValues& v) { v.ruleSources.emplace_back("Example: …"); },
             [](SetUpValues& v) { v.arePrinted = false; }, [](SetUpValues& v) { v.wasSigned = false; }}) {
        SetUpValues values = all();
        undo(values);
        EXPECT_FALSE(isSetUp(setUpOf(values)));
    }
}

TEST(SetUp, aBoatOfWhichNothingIsAskedIsNotFittedOut) {
    SetUpValues values = all();
    values.boats.push_back({"Heron", {}});
    values.boats.push_back(boatWith("Gull", 2, 1));
    const SetUpTick kit = tick(values, SetUpStep::Kit);
    EXPECT_FALSE(kit.isDone);
    EXPECT_EQ(kit.count, 1);
    EXPECT_THAT(kit.lacking, ElementsAre("Heron", "Gull"));
    EXPECT_THAT(tick(all(), SetUpStep::Kit).lacking, IsEmpty());
}

TEST(SetUp, aBoatWhoseClassMayBeMistypedIsNotWrittenYet) {
    SetUpValues values = all();
    values.boats.push_back({"Heron", {}});
    values.unasked = {{"Heron", "canoe", ""}};
    EXPECT_TRUE(tick(values, SetUpStep::Boats).isDone) << "its class may have no list yet";
    EXPECT_TRUE(tick(values, SetUpStep::Boats).unasked.empty());
    EXPECT_EQ(tick(values, SetUpStep::Kit).unasked.size(), 1U);
    values.unasked = {{"Heron", "canoo", "canoe"}};
    EXPECT_FALSE(tick(values, SetUpStep::Boats).isDone);
    ASSERT_EQ(tick(values, SetUpStep::Boats).unasked.size(), 1U);
    EXPECT_EQ(tick(values, SetUpStep::Boats).unasked.front().like, "canoe");
}

TEST(SetUp, rulesAreLookedAtWhenNoSourceBeginsWithExample) {
    SetUpValues values = all();
    values.ruleSources = {"example: put your maker's and your club's in its place", " EXAMPLE",
                          "for example"};
    EXPECT_EQ(tick(values, SetUpStep::Rules).count, 2);
    EXPECT_FALSE(tick(values, SetUpStep::Rules).isDone);
    values.ruleSources = {"for example", ""};
    EXPECT_TRUE(tick(values, SetUpStep::Rules).isDone);
    values.ruleSources.clear();
    EXPECT_FALSE(tick(values, SetUpStep::Rules).isDone) << "nobody looked at rules that are not there";
}

TEST(SetUp, aTagThatWasSeenIsPrinted) {
    SetUpValues values = all();
    values.arePrinted = false;
    EXPECT_FALSE(tick(values, SetUpStep::Tags).isDone);
    values.wasTagSeen = true;
    EXPECT_TRUE(tick(values, SetUpStep::Tags).isDone);
}

} // namespace
} // namespace core
