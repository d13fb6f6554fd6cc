#include "scanner/live/steady_advice.h"

#include <gtest/gtest.h>

using namespace std::chrono_literals;
using scanner::PictureAdvice;
using scanner::SteadyAdvice;

TEST(SteadyAdvice, isToldWhenItHoldsAndNotBefore) {
    SteadyAdvice advice(800ms);
    EXPECT_FALSE(advice.update(PictureAdvice::Glare, 1000ms));
    EXPECT_FALSE(advice.update(PictureAdvice::Glare, 1799ms));
    EXPECT_EQ(advice.told(), PictureAdvice::None);
    EXPECT_TRUE(advice.update(PictureAdvice::Glare, 1800ms));
    EXPECT_EQ(advice.told(), PictureAdvice::Glare);
    EXPECT_FALSE(advice.update(PictureAdvice::Glare, 2000ms)); // once
}

TEST(SteadyAdvice, anotherLookBeginsAnew) {
    SteadyAdvice advice(800ms);
    advice.update(PictureAdvice::TooFar, 0ms);
    advice.update(PictureAdvice::None, 600ms);
    EXPECT_FALSE(advice.update(PictureAdvice::TooFar, 1000ms));
    EXPECT_FALSE(advice.update(PictureAdvice::TooFar, 1700ms));
    EXPECT_TRUE(advice.update(PictureAdvice::TooFar, 1800ms));
}

TEST(SteadyAdvice, goesAwayAsSlowlyAsItCame) {
    SteadyAdvice advice(800ms);
    advice.update(PictureAdvice::TooDark, 0ms);
    ASSERT_TRUE(advice.update(PictureAdvice::TooDark, 800ms));
    EXPECT_FALSE(advice.update(PictureAdvice::None, 1000ms));
    EXPECT_FALSE(advice.update(PictureAdvice::TooDark, 1700ms)); // it was only a moment
    EXPECT_FALSE(advice.update(PictureAdvice::None, 1800ms));
    EXPECT_TRUE(advice.update(PictureAdvice::None, 2600ms));
    EXPECT_EQ(advice.told(), PictureAdvice::None);
}
