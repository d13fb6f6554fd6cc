#include "scanner/reader/frame_reader.h"

#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>

#include <random>

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

// Some forty modules on the wrong side, less surely than the others are right: more than the code mends.
TEST(FrameReader, aSmearedTagIsReadOnlyByAgreement) {
    GreyPicture modules = pictures::qrModules(pictures::tagCode(71));
    for (auto& pixel : modules.pixels)
        pixel = pixel ? 200 : 40;
    std::mt19937 random(5);
    for (int hit = 0; hit < 40;) {
        const int x = static_cast<int>(random() % 21), y = static_cast<int>(random() % 21);
        if ((y < 9 && (x < 9 || x > 12)) || (y > 12 && x < 9)) continue; // a finder's
        auto& pixel = modules.row(y)[x];
        pixel = pixel > 120 ? 90 : 150;
        ++hit;
    }
    const GreyPicture picture = pictures::onGround(pictures::enlarged(modules, 5), 640, 480, 10);
    FrameReader strict(picture, pictures::isTag), able(picture, pictures::isTag);
    strict.mendTags(scanner::reader::Mending::ByCode);
    able.mendTags(scanner::reader::Mending::ByAgreementToo);
    strict.run(ReadingStep::ThreeFinders);
    able.run(ReadingStep::ThreeFinders);
    EXPECT_TRUE(strict.codes().empty());
    ASSERT_EQ(able.codes().size(), 1u);
    EXPECT_EQ(able.codes()[0].text, pictures::tagCode(71));
    EXPECT_EQ(able.codes()[0].howRead, scanner::HowRead::Guessed);
}
