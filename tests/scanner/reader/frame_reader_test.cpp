#include "scanner/reader/frame_reader.h"

#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>

#include <cstdint>

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

TEST(FrameReader, aSmearedTagIsReadOnlyByAgreement) {
    const GreyPicture modules = pictures::smeared(pictures::qrModules(pictures::tagCode(71)));
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

TEST(FrameReader, aGuessIsTriedAgainWhereItLies) {
    scanner::SeenCode guess;
    guess.text = pictures::tagCode(71);
    guess.symbology = scanner::Symbology::Qr;
    guess.corners = {{{201, 99}, {306, 100}, {305, 205}, {200, 204}}}; // a pixel off
    for (const bool negative : {false, true}) {
        GreyPicture modules = pictures::smeared(pictures::qrModules(guess.text));
        GreyPicture other = pictures::shuffled(modules);
        for (GreyPicture* print : {&modules, &other})
            for (auto& pixel : print->pixels)
                pixel = negative ? static_cast<std::uint8_t>(240 - pixel) : pixel;
        GreyPicture picture(640, 480, negative ? 40 : 200), without = picture;
        pictures::paste(picture, pictures::enlarged(modules, 5), 200, 100);
        pictures::paste(without, pictures::enlarged(other, 5), 200, 100);

        FrameReader there(picture, pictures::isTag), gone(without, pictures::isTag);
        there.tryAgain(guess);
        gone.tryAgain(guess);
        ASSERT_EQ(there.codes().size(), 1u) << negative;
        EXPECT_EQ(there.codes()[0].text, guess.text);
        EXPECT_EQ(there.codes()[0].howRead, scanner::HowRead::Guessed);
        EXPECT_TRUE(gone.codes().empty()) << negative;
    }
}

TEST(FrameReader, aDataMatrixIsTriedAgainWhereItLies) {
    FrameReader first(threeMatrices(), pictures::isTag), second(threeMatrices(), pictures::isTag),
        empty(GreyPicture(640, 480, 225), pictures::isTag);
    first.run(ReadingStep::DataMatrix);
    ASSERT_EQ(first.codes().size(), 3u);
    for (const scanner::SeenCode& code : first.codes()) {
        const std::size_t before = second.codes().size();
        second.tryAgain(code);
        empty.tryAgain(code);
        ASSERT_EQ(second.codes().size(), before + 1) << code.text;
        EXPECT_EQ(second.codes().back().text, code.text);
    }
    EXPECT_TRUE(empty.codes().empty());
}

// The general decoder's tag in a symbol of version 1 is asked whether a part of another label is in it. One
// of another version, which no tag of ours has, lies nowhere as such and is told as it is.
TEST(FrameReader, theGeneralDecodersTagIsToldUnlessTheSymbolContradictsIt) {
    const std::string text = pictures::tagCode(33);
    for (const int version : {1, 2}) {
        const auto modules = pictures::enlarged(pictures::qrModules(text, version), 6);
        FrameReader reader(pictures::onGround(modules, 400, 400, 8), pictures::isTag);
        reader.run(ReadingStep::WholePicture);
        ASSERT_EQ(reader.codes().size(), 1u) << version;
        EXPECT_EQ(reader.codes()[0].text, text);
    }
    // Cut so far from the middle that the general decoder mends it: rows below the finders are another tag's.
    GreyPicture joined = pictures::qrModules(text);
    const GreyPicture other = pictures::qrModules(pictures::tagCode(34));
    for (int y = 13; y < joined.height; ++y)
        for (int x = 13; x < joined.width; ++x)
            joined.row(y)[x] = other.row(y)[x];
    const GreyPicture picture = pictures::onGround(pictures::enlarged(joined, 6), 400, 400, 8);
    EXPECT_FALSE(
        scanner::reader::decodeMatrixSymbols(picture.view(), scanner::reader::Effort::Quick).empty());
    FrameReader reader(picture, pictures::isTag);
    reader.run(ReadingStep::WholePicture);
    EXPECT_TRUE(reader.codes().empty());
}
