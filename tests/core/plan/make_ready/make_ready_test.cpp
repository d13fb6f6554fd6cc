#include "core/plan/make_ready/make_ready.h"

#include "core/check/boat_check.h"
#include "tests/core/base/days.h"
#include "tests/core/plan/every_plan.h"
#include "tests/core/plan/make_ready/random_tasks.h"
#include "tests/core/register/item_names.h"

#include <gmock/gmock.h>

#include <cmath>
#include <map>
#include <set>

namespace {

using core::BoatToPlan;
using core::KitOnHand;
using core::Location;
using core::MakeReadyPlan;
using core::MakeReadyTask;
using core::ManifestLine;
using core::planMakeReady;
using testing::IsEmpty;
using testing::Not;

ManifestLine line(const std::string& type, int quantity = 1, bool required = true,
                  std::vector<std::string> substitutes = {}) {
    return {type, quantity, required, std::move(substitutes), {}};
}

KitOnHand aboard(const std::string& code, const std::string& type, const std::string& boat) {
    return {core::itemNamed(code), type, boat, Location::boat(boat), {}};
}

KitOnHand inShed(const std::string& code, const std::string& type) {
    return {core::itemNamed(code), type, {}, Location::place("Shed"), {}};
}

std::map<std::string, Location> afterMoves(const MakeReadyTask& task, const MakeReadyPlan& plan) {
    std::map<std::string, Location> at;
    for (const KitOnHand& item : task.kit)
        at[item.item.id] = item.at;
    for (const core::KitMove& move : plan.moves) {
        EXPECT_TRUE(at.contains(move.item.id)) << move.item.id;
        EXPECT_EQ(at[move.item.id], move.from) << move.item.id << " is moved from where it is, once";
        at[move.item.id] = Location::boat(move.to);
    }
    return at;
}

/// What a launch check says of the boat with everything that lies aboard, nobody named.
core::CheckAnswer judged(const MakeReadyTask& task, const BoatToPlan& boat,
                         const std::map<std::string, Location>& at) {
    core::BoatCheckInput input{.today = core::day("2026-03-14")};
    input.location = Location::boat(boat.boat);
    input.lines = boat.lines;
    for (const KitOnHand& item : task.kit) {
        input.kitTypes[item.kitType].name = item.kitType;
        if (at.at(item.item.id) != Location::boat(boat.boat)) continue;
        core::SeenItem seen;
        seen.record.item.id = item.item.id;
        seen.record.item.kitType = item.kitType;
        seen.record.item.boat = item.homeBoat;
        input.seen.push_back(seen);
    }
    return core::judge(input);
}

int placesOf(const BoatToPlan& boat, bool required) {
    int places = 0;
    for (const ManifestLine& each : boat.lines)
        if (each.required == required) places += each.quantity;
    return places;
}

/// Carries the moves out and lets the judge of launch checks look at every boat.
void expectJudgeAgrees(const MakeReadyTask& task, const MakeReadyPlan& plan) {
    const auto at = afterMoves(task, plan);
    double weight = 0;
    for (std::size_t b = 0; b < task.boats.size(); ++b) {
        const auto answer = judged(task, task.boats[b], at);
        if (!plan.boats[b].complete) {
            EXPECT_THAT(plan.boats[b].shortLines, Not(IsEmpty())) << "whole is whole";
            continue;
        }
        weight += task.boats[b].priority;
        EXPECT_THAT(plan.boats[b].shortLines, IsEmpty());
        EXPECT_EQ(answer.score.required, placesOf(task.boats[b], true));
        int unfilled = 0;
        for (const core::ShortLine& each : plan.boats[b].unfilledOther)
            unfilled += each.wanted;
        // What happens to lie aboard may fill a place more.
        EXPECT_GE(answer.score.other, placesOf(task.boats[b], false) - unfilled);
    }
    EXPECT_NEAR(plan.goals.priorityWeight, weight, 1e-9);
    std::set<std::pair<Location, std::string>> trips;
    for (const core::KitMove& move : plan.moves)
        trips.emplace(move.from, move.to);
    EXPECT_EQ(plan.goals.trips, static_cast<int>(trips.size()));
}

TEST(MakeReady, kitOfABoatThatCannotBeCompletedCompletesAnother) {
    MakeReadyTask task;
    task.boats = {{"Teal", 1, {line("knife"), line("radio")}},
                  {"Coot", 2, {line("knife"), line("paddle", 2)}}};
    task.kit = {aboard("K1", "knife", "Teal"), aboard("K2", "paddle", "Coot"), inShed("K3", "paddle")};
    const auto plan = planMakeReady(task);
    EXPECT_FALSE(plan.boats[0].complete);
    EXPECT_TRUE(plan.boats[1].complete);
    ASSERT_EQ(plan.boats[0].shortLines.size(), 2U);
    EXPECT_EQ(plan.boats[0].shortLines[0].kitType, "knife");
    EXPECT_EQ(plan.boats[0].shortLines[1].have, 0);
    ASSERT_EQ(plan.moves.size(), 2U);
    EXPECT_EQ(plan.moves[0].item.id, "K3"); // places first
    EXPECT_EQ(plan.moves[0].from.name, "Shed");
    EXPECT_EQ(plan.moves[1].item.id, "K1");
    EXPECT_EQ(plan.moves[1].to, "Coot");
    EXPECT_EQ(plan.goals.priorityWeight, 2);
    EXPECT_EQ(plan.goals.away, 1);
    EXPECT_EQ(plan.goals.trips, 2);
    EXPECT_EQ(plan.exactGoals, 4);
}

TEST(MakeReady, theWeightierBoatsWinEvenIfTheyAreFewer) {
    MakeReadyTask task;
    task.boats = {
        {"Teal", 1, {line("knife")}}, {"Coot", 1, {line("knife")}}, {"Swan", 2.5, {line("knife", 2)}}};
    task.kit = {inShed("K1", "knife"), inShed("K2", "knife")};
    EXPECT_TRUE(planMakeReady(task).boats[2].complete);
    task.boats[2].priority = 1.5; // the twin
    EXPECT_FALSE(planMakeReady(task).boats[2].complete);
    EXPECT_EQ(planMakeReady(task).goals.priorityWeight, 2);
}

TEST(MakeReady, aBoatOfNoPriorityIsMadeCompleteAfterAllOthers) {
    MakeReadyTask task;
    task.boats = {{"Raft", 0, {line("knife")}}, {"Teal", 0.1, {line("knife")}}};
    task.kit = {aboard("K1", "knife", "Raft")};
    const auto one = planMakeReady(task);
    EXPECT_FALSE(one.boats[0].complete);
    ASSERT_EQ(one.boats[0].shortLines.size(), 1U) << "told like any other";
    EXPECT_TRUE(one.boats[1].complete) << "however little it weighs";
    task.kit.push_back(inShed("K2", "knife")); // the twin
    const auto both = planMakeReady(task);
    EXPECT_TRUE(both.boats[0].complete);
    EXPECT_TRUE(both.boats[1].complete);
    EXPECT_EQ(both.goals.priorityWeight, 0.1);
    EXPECT_EQ(both.boundPriorityWeight, 0.1);
    EXPECT_EQ(both.exactGoals, 4);
}

TEST(MakeReady, manyBoatsOfNoPriorityWeighLessThanOneThatHasSome) {
    MakeReadyTask task;
    task.boats = {
        {"Raft", 0, {line("knife")}}, {"Punt", 0, {line("knife")}}, {"Teal", 0.000001, {line("knife", 2)}}};
    task.kit = {inShed("K1", "knife"), inShed("K2", "knife")};
    EXPECT_TRUE(planMakeReady(task).boats[2].complete);
    task.boats[2].priority = 0; // the twin: two boats are more than one
    const auto plan = planMakeReady(task);
    EXPECT_TRUE(plan.boats[0].complete);
    EXPECT_TRUE(plan.boats[1].complete);
    EXPECT_FALSE(plan.boats[2].complete);
    EXPECT_EQ(plan.goals.priorityWeight, 0);
}

TEST(MakeReady, ofABoatLeftOutItsOtherLinesAreToldToo) {
    MakeReadyTask task;
    task.boats = {{"Teal", 1, {line("radio", 2, false, {"phone"}), line("knife"), line("phone")}}};
    task.kit = {inShed("K1", "phone")};
    const auto left = planMakeReady(task).boats[0];
    EXPECT_FALSE(left.complete);
    ASSERT_EQ(left.shortLines.size(), 1U) << "the phone fills its own line, which is required";
    EXPECT_EQ(left.shortLines[0].kitType, "knife");
    ASSERT_EQ(left.unfilledOther.size(), 1U);
    EXPECT_EQ(left.unfilledOther[0].kitType, "radio");
    EXPECT_EQ(left.unfilledOther[0].wanted, 2);
    EXPECT_EQ(left.unfilledOther[0].have, 0);
    task.kit = {inShed("K1", "phone"), inShed("K2", "radio"), inShed("K3", "radio")}; // the twin
    EXPECT_THAT(planMakeReady(task).boats[0].unfilledOther, IsEmpty());
}

TEST(MakeReady, equalSumsOfFractionsAreEqual) {
    MakeReadyTask task; // 0.1 + 0.2 is not 0.3 in binary, and must not decide
    task.boats = {{"Teal", 0.1, {line("knife")}},
                  {"Coot", 0.2, {line("knife")}},
                  {"Swan", 0.3, {line("knife", 2), line("flare", 1, false)}}};
    task.kit = {inShed("K1", "knife"), inShed("K2", "knife"), inShed("K3", "flare")};
    const auto plan = planMakeReady(task);
    EXPECT_TRUE(plan.boats[2].complete); // for its other line
    EXPECT_EQ(plan.goals.priorityWeight, 0.3);
    EXPECT_EQ(plan.goals.otherLines, 1);
}

TEST(MakeReady, aSubstituteOnlyWhereTheOwnTypeDoesNotDo) {
    MakeReadyTask task;
    task.boats = {{"Teal", 1, {line("paddle", 2, true, {"oar"})}},
                  {"Coot", 1, {line("oar", 1, true, {"paddle"})}}};
    task.kit = {inShed("K1", "paddle"), inShed("K2", "oar"), inShed("K3", "paddle")};
    EXPECT_EQ(planMakeReady(task).goals.substitutes, 0);
    task.kit[0].kitType = "oar"; // the twin
    const auto plan = planMakeReady(task);
    EXPECT_EQ(plan.goals.substitutes, 1);
    EXPECT_EQ(plan.goals.priorityWeight, 2);
}

TEST(MakeReady, likeKitIsFetchedOnATripThatIsMadeAnyway) {
    MakeReadyTask task;
    task.boats = {{"Teal", 1, {line("knife"), line("radio")}}};
    task.kit = {{core::itemNamed("K1"), "knife", {}, Location::place("Attic"), {}},
                {core::itemNamed("K2"), "knife", {}, Location::place("Shed"), {}},
                {core::itemNamed("K3"), "radio", {}, Location::place("Shed"), {}}};
    EXPECT_EQ(planMakeReady(task).goals.trips, 1);
}

TEST(MakeReady, withoutBoatsOrKitThereIsNothingToCarry) {
    EXPECT_TRUE(planMakeReady({}).proven());
    MakeReadyTask task;
    task.boats = {{"Teal", 1, {line("knife")}}, {"Raft", 1, {}}};
    const auto plan = planMakeReady(task);
    EXPECT_FALSE(plan.boats[0].complete);
    EXPECT_TRUE(plan.boats[1].complete); // asks for nothing
    EXPECT_THAT(plan.moves, IsEmpty());
    EXPECT_EQ(plan.goals.priorityWeight, 1);
}

/// Against all plans: a boat of no priority weighs as one whose priority is less than any other's.
TEST(MakeReady, boatsOfNoPriorityAreServedAsTheLeastOfAll) {
    support::RandomTasks random(9);
    int withoutPriority = 0;
    for (int i = 0; i < 500; ++i) {
        MakeReadyTask task = random.tiny();
        for (core::BoatToPlan& boat : task.boats)
            if (random.oneIn(2)) boat.priority = 0;
        MakeReadyTask weighed = task;
        for (core::BoatToPlan& boat : weighed.boats)
            if (boat.priority == 0) boat.priority = 0.001;
        const auto plan = planMakeReady(task);
        double weight = 0;
        for (std::size_t b = 0; b < task.boats.size(); ++b) {
            withoutPriority += plan.boats[b].complete && task.boats[b].priority == 0;
            weight += plan.boats[b].complete ? weighed.boats[b].priority : 0;
        }
        const support::GoalVector reached{std::lround(weight * 1000), plan.goals.otherLines,
                                          plan.goals.substitutes, plan.goals.away};
        ASSERT_EQ(reached, support::bestOfEveryPlan(weighed)) << "club " << i;
        expectJudgeAgrees(task, plan);
        if (HasFailure()) FAIL() << "club " << i;
    }
    EXPECT_GT(withoutPriority, 50) << "or the test shows nothing";
}

class SmallClubs : public testing::TestWithParam<unsigned> {};

TEST_P(SmallClubs, areServedAsWellAsByTheBestOfAllPlans) {
    support::RandomTasks random(GetParam());
    for (int i = 0; i < 500; ++i) {
        const MakeReadyTask task = random.tiny();
        const auto plan = planMakeReady(task);
        const support::GoalVector reached{std::lround(plan.goals.priorityWeight * 1000),
                                          plan.goals.otherLines, plan.goals.substitutes, plan.goals.away};
        ASSERT_EQ(reached, support::bestOfEveryPlan(task)) << "club " << i;
        ASSERT_EQ(plan.exactGoals, 4) << "club " << i;
        expectJudgeAgrees(task, plan);
        if (HasFailure()) FAIL() << "club " << i;
    }
}
INSTANTIATE_TEST_SUITE_P(MakeReady, SmallClubs, testing::Values(1U, 2U, 3U, 4U));

TEST(MakeReady, theJudgeOfLaunchChecksFindsADistrictsBoatsComplete) {
    support::RandomTasks random(7);
    for (const bool ownLines : {false, true}) {
        const MakeReadyTask task = random.fleet(30, 5, 10, ownLines);
        const auto plan = planMakeReady(task);
        EXPECT_TRUE(plan.proven());
        expectJudgeAgrees(task, plan);
    }
}

TEST(MakeReady, withoutTimeThePlanHoldsAndSaysWhatIsNotProven) {
    support::RandomTasks random(8);
    MakeReadyTask task = random.fleet(30, 5, 10, true);
    task.seconds = 0;
    const auto plan = planMakeReady(task);
    expectJudgeAgrees(task, plan);
    EXPECT_GT(plan.goals.priorityWeight, 0);
    EXPECT_GE(plan.boundPriorityWeight, plan.goals.priorityWeight);
    EXPECT_GE(plan.boundOtherLines, plan.goals.otherLines);
    if (!plan.proven()) {
        EXPECT_GT(std::pair(plan.boundPriorityWeight, plan.boundOtherLines),
                  std::pair(plan.goals.priorityWeight, plan.goals.otherLines));
    }
}

TEST(MakeReady, saysOfWhichBoatNothingIsAsked) {
    const MakeReadyTask task{
        {{"Heron", 1, {line("knife")}}, {"Teal", 1, {line("knife", 1, false)}}, {"Quail", 1, {}}},
        {aboard("K1", "knife", "Heron")}};
    const MakeReadyPlan plan = planMakeReady(task);
    EXPECT_FALSE(plan.boats[0].asksNothing);
    EXPECT_TRUE(plan.boats[1].asksNothing) << "no line is required";
    EXPECT_TRUE(plan.boats[2].asksNothing);
}

} // namespace
