#include "tests/scanner/reader/pictures.h"

#include "scanner/reader/frame_reader.h"

#include <gtest/gtest.h>

using scanner::GreyPicture;
using scanner::reader::FrameReader;
using scanner::reader::ReadingStep;

namespace {

/// A tag at an angle, one finder (0 top left, 1 top right, 2 bottom left) under grey dirt.
GreyPicture withoutFinder(const std::string& text, int finder, int module, double degrees) {
    GreyPicture symbol = pictures::enlarged(pictures::qrModules(text), module);
    const int left = finder == 1 ? 14 * module : 0, top = finder == 2 ? 14 * module : 0;
    for (int y = top; y < top + 7 * module; ++y)
        for (int x = left; x < left + 7 * module; ++x)
            symbol.row(y)[x] = 150;
    return pictures::onGround(symbol, 640, 480, degrees);
}

/// Only the finder given is whole: of the others' light ring two sides are dirty, so that lines and rays do
/// not find them; they still look alike.
GreyPicture withOneFinder(const std::string& text, int finder, int module, double degrees) {
    GreyPicture modules = pictures::qrModules(text);
    for (int other = 0; other < 3; ++other) {
        if (other == finder) continue;
        const int left = other == 1 ? 14 : 0, top = other == 2 ? 14 : 0;
        for (int i = 1; i < 6; ++i)
            modules.row(top + i)[left + 1] = modules.row(top + 1)[left + i] = 0;
        modules.row(top + 4)[left + 5] = 0;
    }
    return pictures::onGround(pictures::enlarged(modules, module), 640, 480, degrees);
}

} // namespace

TEST(FinderPairs, aTagIsReadWhicheverFinderIsHidden) {
    for (int finder = 0; finder < 3; ++finder)
        for (const double degrees : {0.0, 20.0, 90.0, 155.0, 200.0, 290.0}) {
            const std::string text = pictures::tagCode(40 + static_cast<unsigned>(finder));
            FrameReader reader(withoutFinder(text, finder, 4, degrees), pictures::isTag);
            reader.run(ReadingStep::TwoFinders);
            ASSERT_EQ(reader.codes().size(), 1u) << finder << " " << degrees;
            EXPECT_EQ(reader.codes()[0].text, text);
        }
}

TEST(FinderPairs, aTagIsReadWhicheverFinderAloneIsWhole) {
    for (int finder = 0; finder < 3; ++finder)
        for (const double degrees : {0.0, 20.0, 90.0, 155.0, 200.0, 290.0}) {
            const std::string text = pictures::tagCode(60 + static_cast<unsigned>(finder));
            FrameReader reader(withOneFinder(text, finder, 4, degrees), pictures::isTag);
            reader.run(ReadingStep::TwoFinders);
            EXPECT_TRUE(reader.codes().empty()) << "the picture is too easy: " << finder << " " << degrees;
            reader.run(ReadingStep::OneFinder);
            ASSERT_EQ(reader.codes().size(), 1u) << finder << " " << degrees;
            EXPECT_EQ(reader.codes()[0].text, text);
        }
}

TEST(FinderPairs, aFinderAloneBesideOtherPrintIsNoTag) {
    const GreyPicture modules = pictures::qrModules(pictures::tagCode(70));
    GreyPicture print = pictures::shuffled(modules);
    for (int y = 0; y < 8; ++y)
        for (int x = 0; x < 8; ++x)
            print.row(y)[x] = modules.row(y)[x];
    FrameReader reader(pictures::onGround(pictures::enlarged(print, 4), 640, 480, 20), pictures::isTag);
    reader.run(ReadingStep::OneFinder);
    EXPECT_TRUE(reader.codes().empty());
}

TEST(FinderPairs, largeModulesAreLookedAtInTheSmallerPicture) {
    for (int finder = 0; finder < 3; ++finder) {
        const std::string text = pictures::tagCode(50 + static_cast<unsigned>(finder));
        FrameReader reader(withoutFinder(text, finder, 9, 20), pictures::isTag);
        reader.run(ReadingStep::CloseUp);
        ASSERT_EQ(reader.codes().size(), 1u) << finder;
        EXPECT_EQ(reader.codes()[0].text, text);
    }
}
