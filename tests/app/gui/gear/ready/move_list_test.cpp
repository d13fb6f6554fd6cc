#include "app/gui/gear/ready/move_list.h"

#include "app/text/make_ready_sentences.h"

#include <gtest/gtest.h>

namespace {

core::KitMove move(const char* code, const char* from, const char* to, const char* kitType = "knife",
                   const char* forKitType = "knife") {
    return {{code, code}, kitType, core::Location::place(from), to, forKitType};
}

core::MakeReadyPlan planOf(std::vector<core::KitMove> moves) {
    core::MakeReadyPlan plan;
    plan.moves = std::move(moves);
    return plan;
}

} // namespace

TEST(MoveList, groupsByTripAndCountsWhatIsCarried) {
    app::MoveList list;
    list.setPlan(
        planOf({move("K1", "Store", "Teal"), move("K2", "Store", "Teal"), move("K3", "Rack", "Teal")}));
    EXPECT_EQ(list.tick("K2"), app::MoveList::Ticked::Now);
    const auto lines = list.lines();
    ASSERT_EQ(lines.size(), 5u);
    EXPECT_EQ(lines[0].title, "Store → Teal");
    EXPECT_EQ(lines[0].aside, "1 of 2");
    EXPECT_EQ(lines[1].mark, app::Mark::StillToFind);
    EXPECT_EQ(lines[2].mark, app::Mark::Found);
    EXPECT_EQ(lines[3].title, "Rack → Teal");
    EXPECT_EQ(lines[3].aside, "0 of 1");
}

TEST(MoveList, aTagOfNoMoveTicksNothingAndASecondScanNothingMore) {
    app::MoveList list;
    list.setPlan(planOf({move("K1", "Store", "Teal")}));
    EXPECT_EQ(list.tick("K9"), app::MoveList::Ticked::NotInPlan);
    EXPECT_EQ(list.done(), 0);
    EXPECT_EQ(list.tick("K1"), app::MoveList::Ticked::Now);
    EXPECT_EQ(list.tick("K1"), app::MoveList::Ticked::Before);
    EXPECT_EQ(list.done(), 1);
    EXPECT_EQ(list.goesTo("K1"), "Teal");
}

TEST(MoveList, aPressTakesATickBack) {
    app::MoveList list;
    list.setPlan(planOf({move("K1", "Store", "Teal")}));
    list.toggle("K1");
    EXPECT_EQ(list.done(), 1);
    list.toggle("K1");
    EXPECT_EQ(list.done(), 0);
}

TEST(MoveList, saysWhatASubstituteStandsFor) {
    app::MoveList list;
    list.setPlan(planOf({move("K1", "Store", "Teal", "oar", "paddle")}));
    EXPECT_TRUE(list.lines()[1].remark.contains("paddle"));
}

TEST(MakeReadyWords, bestPossibleIsSaidOnlyWhenItIsProven) {
    core::MakeReadyPlan plan;
    plan.boats = {{.boat = "Teal", .complete = true}};
    plan.exactGoals = 5;
    EXPECT_TRUE(app::goalsInWords(plan).startsWith("Best possible"));
    plan.exactGoals = 1;
    EXPECT_FALSE(app::goalsInWords(plan).contains("Best possible"));
    plan.exactGoals = 0;
    plan.goals.priorityWeight = 2;
    plan.boundPriorityWeight = 3;
    EXPECT_FALSE(app::goalsInWords(plan).contains("Best possible"));
    EXPECT_TRUE(app::goalsInWords(plan).contains("no plan reaches more than 3"));
}

TEST(MakeReadyWords, aBoatLeftOutSaysWhatIsShort) {
    const std::vector<core::BoatPlan> boats{
        {.boat = "Teal", .complete = true},
        {.boat = "Coot", .complete = false, .shortLines = {{"knife", 2, 1}}}};
    const auto lines = app::linesOf(boats);
    ASSERT_EQ(lines.size(), 2u);
    EXPECT_EQ(lines[0].title, "Coot");
    EXPECT_EQ(lines[0].mark, app::Mark::Look);
    EXPECT_TRUE(lines[0].remark.contains("knife (1 of 2)")) << lines[0].remark.toStdString();
    EXPECT_EQ(lines[1].mark, app::Mark::Found);
}
