#include "scanner/reader/frame_reader.h"

#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>

using scanner::GreyPicture;
using scanner::reader::FrameReader;
using scanner::reader::ReadingStep;
using scanner::reader::TimeBudget;

namespace {

GreyPicture threeMatrices() {
    GreyPicture picture(640, 480, 225);
    for (int i = 0; i < 3; ++i)
        pictures::paste(picture,
                        pictures::enlarged(pictures::dataMatrixModules(pictures::tagCode(20u + i)), 2 + i),
                        40 + 200 * i, 150);
    return picture;
}

} // namespace

TEST(FrameReader, aStepEndsAtOnceWhenTheTimeIsSpent) {
    FrameReader late(threeMatrices(), pictures::isTag);
    late.setBudget(TimeBudget::ofWall(TimeBudget::Duration(0)));
    late.run(ReadingStep::DataMatrix);
    EXPECT_TRUE(late.codes().empty());
    EXPECT_TRUE(late.wasCutOff());

    FrameReader whole(threeMatrices(), pictures::isTag);
    whole.run(ReadingStep::DataMatrix);
    EXPECT_EQ(whole.codes().size(), 3u);
    EXPECT_FALSE(whole.wasCutOff());
}

TEST(FrameReader, everyStepBearsHavingNoTime) {
    for (const auto step : scanner::reader::rescueSteps) {
        FrameReader late(threeMatrices(), pictures::isTag);
        late.setBudget(TimeBudget::ofThread(TimeBudget::Duration(0)));
        late.run(step);
        if (step != ReadingStep::WholePictureThorough) { // the one step that cannot be cut off
            EXPECT_TRUE(late.codes().empty()) << nameOf(step);
        }
    }
}
