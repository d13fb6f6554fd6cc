#include "core/answers/trip_use.h"

#include "tests/core/base/days.h"

#include <gtest/gtest.h>

namespace core {
namespace {

// docs/rules.md, "What the code settles": hours and launches told with a return check are counted once; told
// again, the difference is.

TEST(TripUse, isAllThatIsToldTheFirstTime) {
    const auto added = addedBy({.hours = 4.5, .launches = 2}, {});
    EXPECT_EQ(added.hours, 4.5);
    EXPECT_EQ(added.launches, 2);
    EXPECT_FALSE(added.isNone());
}

TEST(TripUse, isTheDifferenceWhenItIsToldAgain) {
    const Operation before{.hours = 4.5, .launches = 3};
    const auto more = addedBy({.hours = 5, .launches = 4}, before);
    EXPECT_EQ(more.hours, 0.5);
    EXPECT_EQ(more.launches, 1);
    const auto less = addedBy({.launches = 1}, before); // hours are not told any more
    EXPECT_EQ(less.hours, -4.5);
    EXPECT_EQ(less.launches, -2);
    EXPECT_TRUE(addedBy(before, before).isNone());
}

TEST(TripUse, isNoneOnlyWithoutHoursAndLaunches) {
    EXPECT_TRUE((TripUse{0, 0}.isNone()));
    EXPECT_FALSE((TripUse{0.5, 0}.isNone()));
    EXPECT_FALSE((TripUse{0, 1}.isNone()));
}

TEST(TripUse, isSummedUpOverADay) {
    const std::vector<Use> known{{day("2026-03-13"), 10, 5}, {day("2026-03-14"), 1.5, 2}};
    const auto sum = dayWith({0.5, 1}, known, day("2026-03-14"));
    EXPECT_EQ(sum.day, day("2026-03-14"));
    EXPECT_EQ(sum.hours, 2);
    EXPECT_EQ(sum.launches, 3);
    const auto fresh = dayWith({0.5, 1}, known, day("2026-03-15"));
    EXPECT_EQ(fresh.day, day("2026-03-15"));
    EXPECT_EQ(fresh.hours, 0.5);
    EXPECT_EQ(fresh.launches, 1);
}

TEST(TripUse, isNeverBelowNothing) {
    const std::vector<Use> known{{day("2026-03-14"), 1, 1}};
    const auto sum = dayWith({-2, -3}, known, day("2026-03-14"));
    EXPECT_EQ(sum.hours, 0);
    EXPECT_EQ(sum.launches, 0);
    const auto some = dayWith({-0.25, -1}, known, day("2026-03-14"));
    EXPECT_EQ(some.hours, 0.75);
    EXPECT_EQ(some.launches, 0);
}

} // namespace
} // namespace core
