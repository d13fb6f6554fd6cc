// The short form; reader_near_misses is the long one.
#include "tests/scanner/reader/scenes/near_miss_trial.h"

#include "tests/scanner/reader/scenes/near_miss_labels.h"

#include <gtest/gtest.h>

namespace {

std::string linesOf(const scenes::Wrongs& wrongs) {
    std::string lines;
    for (const std::string& line : wrongs.wrong)
        lines += line + "\n";
    return lines;
}

} // namespace

// No GS1-128 among the thousand that are tried is as short as that of tag 8960: it has digits side by side.
TEST(NearMiss, aLabelIsJoinedWithOneAsWide) {
    std::mt19937 random(1);
    const auto width = [](unsigned number) {
        return scenes::makeLabel(scenes::Kind::Gs1Bars, number).modules.width;
    };
    ASSERT_LT(width(8960), width(8962));
    EXPECT_EQ(scenes::makeJoined(scenes::Kind::Gs1Bars, 8962, random).text,
              scenes::makeLabel(scenes::Kind::Gs1Bars, 8962).text);
    const scenes::Label other = scenes::makeJoined(scenes::Kind::Gs1Bars, 8960, random);
    EXPECT_NE(other.text, scenes::makeLabel(scenes::Kind::Gs1Bars, 8960).text);
    EXPECT_FALSE(other.joinedWith.empty());
}

TEST(NearMiss, nothingIsToldOfJoinedLabels) {
    EXPECT_EQ(linesOf(scenes::tryJoined(8, 3)), "");
}

TEST(NearMiss, nothingButWhatWasPrintedIsToldOfDestroyedLabels) {
    EXPECT_EQ(linesOf(scenes::tryDestroyed(40, 4)), "");
}

TEST(NearMiss, anExchangedLabelIsNotToldByItsPredecessor) {
    EXPECT_EQ(linesOf(scenes::tryExchanged(3, 5)), "");
}

// The positive twin: the same scenes with sound labels are read.
TEST(NearMiss, soundLabelsInTheSameScenesAreRead) {
    const scenes::Good good = scenes::tryGood(4, 6);
    EXPECT_GE(good.labels, 6);
    EXPECT_GE((good.plain + good.guessed) * 10, good.labels * 3);
}
