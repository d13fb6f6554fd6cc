#include "scanner/live/tracker.h"

#include <gtest/gtest.h>

namespace scanner {
namespace {

using namespace std::chrono_literals;
using Texts = std::vector<std::string>;

SeenCode code(const std::string& text, HowRead howRead = HowRead::Plain, double x = 0) {
    SeenCode seen;
    seen.text = text;
    seen.howRead = howRead;
    seen.corners[0].x = x;
    return seen;
}

SeenCode guess(const std::string& text) {
    return code(text, HowRead::Guessed);
}

Texts texts(const std::vector<SeenCode>& codes) {
    Texts found;
    for (const SeenCode& each : codes)
        found.push_back(each.text);
    return found;
}

TEST(Tracker, aLabelHeldIsNewOnce) {
    Tracker tracker;
    EXPECT_EQ(texts(tracker.update({code("A")}, 0ms).fresh), Texts{"A"});
    for (auto at = 33ms; at < 10000ms; at += 33ms) {
        const auto change = tracker.update({code("A")}, at);
        EXPECT_TRUE(change.fresh.empty());
        EXPECT_TRUE(change.gone.empty());
    }
}

TEST(Tracker, goesAfterTwoSecondsAndIsNewAgain) {
    Tracker tracker;
    tracker.update({code("A"), code("B")}, 0ms);
    EXPECT_TRUE(tracker.update({code("B")}, 1999ms).gone.empty());
    EXPECT_EQ(tracker.update({code("B")}, 2000ms).gone, Texts{"A"});
    EXPECT_EQ(texts(tracker.update({code("A"), code("B")}, 2100ms).fresh), Texts{"A"});
}

TEST(Tracker, missedInSomeFramesItIsStillThere) {
    Tracker tracker;
    tracker.update({code("A")}, 0ms);
    tracker.update({}, 1000ms);
    EXPECT_TRUE(tracker.update({code("A")}, 1900ms).fresh.empty());
    EXPECT_TRUE(tracker.update({}, 3800ms).gone.empty());
}

TEST(Tracker, twoLabelsOfOneTextAreOne) {
    Tracker tracker;
    EXPECT_EQ(texts(tracker.update({code("A"), code("A")}, 0ms).fresh), Texts{"A"});
}

TEST(Tracker, aGuessIsNewInItsSecondFrame) {
    Tracker tracker;
    EXPECT_TRUE(tracker.update({guess("A"), guess("A")}, 0ms).fresh.empty());
    EXPECT_EQ(texts(tracker.update({guess("A")}, 100ms).fresh), Texts{"A"});
    EXPECT_TRUE(tracker.update({guess("A")}, 200ms).fresh.empty());
}

TEST(Tracker, aGuessIsNewAtOnceWhenACertainReadingFollows) {
    Tracker tracker;
    tracker.update({guess("A")}, 0ms);
    EXPECT_EQ(texts(tracker.update({code("A")}, 100ms).fresh), Texts{"A"});
}

TEST(Tracker, anUnconfirmedGuessIsForgottenWithoutAWord) {
    Tracker tracker;
    tracker.update({guess("A")}, 0ms);
    EXPECT_TRUE(tracker.update({}, 2000ms).gone.empty());
    EXPECT_TRUE(tracker.update({guess("A")}, 2100ms).fresh.empty()); // a first frame again
    EXPECT_EQ(texts(tracker.update({guess("A")}, 2200ms).fresh), Texts{"A"});
}

TEST(Tracker, aGuessHoldsWhatWasReadForCertain) {
    Tracker tracker;
    tracker.update({code("A")}, 0ms);
    tracker.update({guess("A")}, 1500ms);
    EXPECT_TRUE(tracker.update({}, 3000ms).gone.empty());
}

TEST(Tracker, outlinesFollowTheLabelAndStayForAMoment) {
    Tracker tracker;
    tracker.update({code("A", HowRead::Plain, 10), guess("B")}, 0ms);
    ASSERT_EQ(tracker.outlines().size(), 2U);
    EXPECT_TRUE(tracker.outlines()[0].believed);
    EXPECT_FALSE(tracker.outlines()[1].believed);
    tracker.update({code("A", HowRead::Plain, 25)}, 200ms);
    ASSERT_EQ(tracker.outlines().size(), 2U);
    EXPECT_DOUBLE_EQ(tracker.outlines()[0].code.corners[0].x, 25);
    tracker.update({}, 300ms);
    ASSERT_EQ(tracker.outlines().size(), 1U);
    EXPECT_EQ(tracker.outlines()[0].code.text, "A");
    tracker.update({}, 500ms);
    EXPECT_TRUE(tracker.outlines().empty());
}

} // namespace
} // namespace scanner
