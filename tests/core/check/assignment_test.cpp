#include "core/check/assignment.h"

#include "tests/core/check/assignment_brute_force.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <random>

namespace core {
namespace {

using ::testing::ElementsAre;

// The order of points is this program's own design; what is checked here is that the answer is its true
// optimum, by comparing it with every assignment there is. The classic worked instances below come from the
// literature named there.

AssignmentTask randomTask(std::mt19937& random, int items, int places, int percentChoices,
                          int differentDues) {
    const auto pick = [&](int below) { return static_cast<int>(random() % static_cast<unsigned>(below)); };
    AssignmentTask task;
    for (int i = 0; i < items; ++i)
        task.items.push_back({pick(3) > 0, 738000 + pick(differentDues)});
    for (int p = 0; p < places; ++p) {
        AssignmentPlace place{pick(2) == 0, {}};
        for (int i = 0; i < items; ++i)
            if (pick(100) < percentChoices) place.choices.push_back({i, pick(2) == 0});
        std::shuffle(place.choices.begin(), place.choices.end(), random);
        task.places.push_back(place);
    }
    return task;
}

TEST(Assignment, isTheOptimumOfTenThousandSmallChecksByBruteForce) {
    std::mt19937 random(20260314);
    int filledPartly = 0;
    for (int round = 0; round < 10000; ++round) {
        const int items = static_cast<int>(random() % 7);
        const int places = 1 + static_cast<int>(random() % 5);
        const int percent = 20 + static_cast<int>(random() % 81);
        const auto task = randomTask(random, items, places, percent, 1 + static_cast<int>(random() % 3));
        const auto best = bestAssignment(task);
        ASSERT_EQ(best, bruteForceAssignment(task)) << "round " << round;
        const auto empty = std::count(best.begin(), best.end(), -1);
        filledPartly += empty > 0 && empty < places ? 1 : 0;
    }
    EXPECT_GT(filledPartly, 2000) << "the random checks are too easy to prove anything";
}

TEST(Assignment, manyOfTheirOwnTypeDoNotOutweighOnePlaceMore) {
    // Item i may stand in for place i + 1 or fill place i as its own type: five places with no own type, or
    // four with.
    AssignmentTask task;
    task.items.assign(5, {true, 738000});
    task.places.resize(5);
    for (int i = 0; i < 5; ++i) {
        task.places[i].choices.push_back({i, false});
        if (i > 0) task.places[i - 1].choices.push_back({i, true});
    }
    EXPECT_THAT(bestAssignment(task), ElementsAre(0, 1, 2, 3, 4));
    EXPECT_EQ(bestAssignment(task), bruteForceAssignment(task));
    for (AssignmentPlace& place : task.places)
        place.required = true;
    EXPECT_THAT(bestAssignment(task), ElementsAre(0, 1, 2, 3, 4));
}

TEST(Assignment, isTheOptimumWhereLinesShareTypesAsRealOnesDo) {
    // Places in groups that take the same items, items in types: many ties, so that the last point decides.
    std::mt19937 random(7);
    for (int round = 0; round < 3000; ++round) {
        AssignmentTask task;
        std::vector<int> typeOf;
        for (int i = 0; i < 6; ++i) {
            typeOf.push_back(static_cast<int>(random() % 3));
            task.items.push_back({random() % 4 > 0, 738000 + static_cast<int>(random() % 2)});
        }
        for (int line = 0; line < 3; ++line) {
            AssignmentPlace place{random() % 3 > 0, {}};
            const int substitute = static_cast<int>(random() % 4);
            for (int i = 0; i < 6; ++i)
                if (typeOf[i] == line || typeOf[i] == substitute)
                    place.choices.push_back({i, typeOf[i] == line});
            for (unsigned quantity = 1 + random() % 2; quantity > 0; --quantity)
                task.places.push_back(place);
        }
        ASSERT_EQ(bestAssignment(task), bruteForceAssignment(task)) << "round " << round;
    }
}

TEST(Assignment, doesNotDependOnTheOrderOfChoices) {
    std::mt19937 random(3);
    for (int round = 0; round < 200; ++round) {
        auto task = randomTask(random, 40, 25, 20, 5);
        const auto before = bestAssignment(task);
        for (AssignmentPlace& place : task.places)
            std::shuffle(place.choices.begin(), place.choices.end(), random);
        ASSERT_EQ(bestAssignment(task), before);
    }
}

TEST(Assignment, ofNothingIsNothing) {
    EXPECT_THAT(bestAssignment({}), ElementsAre());
    EXPECT_THAT(bestAssignment({{{true, 1}}, {}}), ElementsAre());
    EXPECT_THAT(bestAssignment({{}, {{true, {}}}}), ElementsAre(-1));
}

TEST(Assignment, takesTheLongWayRoundWhereTheFirstItemSeenWouldBlock) {
    // Item 0 fits both places, item 1 only the first: first come, first served would leave the second empty.
    const AssignmentTask task{{{true, 5}, {true, 5}}, {{true, {{0, true}, {1, true}}}, {true, {{0, true}}}}};
    EXPECT_THAT(bestAssignment(task), ElementsAre(1, 0));
}

TEST(Assignment, fillsOneRequiredPlaceBeforeAnOptionalOne) {
    const AssignmentTask task{{{true, 5}}, {{false, {{0, true}}}, {true, {{0, false}}}}};
    EXPECT_THAT(bestAssignment(task), ElementsAre(-1, 0));
}

TEST(Assignment, prefersOwnTypeThenOwnBoatThenTheEarliestDueThenTheFirstCode) {
    EXPECT_THAT(bestAssignment({{{true, 1}, {false, 9}}, {{true, {{0, false}, {1, true}}}}}), ElementsAre(1));
    EXPECT_THAT(bestAssignment({{{false, 1}, {true, 9}}, {{true, {{0, true}, {1, true}}}}}), ElementsAre(1));
    EXPECT_THAT(bestAssignment({{{true, 9}, {true, 1}}, {{true, {{0, true}, {1, true}}}}}), ElementsAre(1));
    EXPECT_THAT(bestAssignment({{{true, 9}, {true, 9}}, {{true, {{0, true}, {1, true}}}}}), ElementsAre(0));
}

TEST(Assignment, leavesTheLaterOfTwoLikePlacesEmpty) {
    const AssignmentTask task{{{true, 5}}, {{true, {{0, true}}}, {true, {{0, true}}}}};
    EXPECT_THAT(bestAssignment(task), ElementsAre(0, -1));
}

} // namespace
} // namespace core
