#include "scanner/reader/label_symbol.h"

#include "scanner/reader/frame_reader.h"
#include "scanner/reader/image/homography.h"
#include "scanner/reader/image/quad.h"
#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>

#include <cmath>

using scanner::GreyPicture;
using scanner::Point;
using scanner::Quad;
using scanner::reader::FrameReader;
using scanner::reader::PictureLevels;
using scanner::reader::ReadingStep;

namespace {

constexpr int module = 4, quiet = 4; // pixels, modules

/// Letters of a kind: upright strokes, three modules high.
void writeLine(GreyPicture& label, int top) {
    for (int x = quiet * module; x < label.width - quiet * module; ++x)
        for (int y = top; y < top + 3 * module; ++y)
            if (x / module % 2 == 0) label.row(y)[x] = 20;
}

/// A light label: the symbol, and a line of text below a gap of three modules.
GreyPicture labelOf(const GreyPicture& modules) {
    const GreyPicture symbol = pictures::enlarged(modules, module);
    GreyPicture label(symbol.width + 2 * quiet * module, symbol.height + (2 * quiet + 6) * module, 225);
    pictures::paste(label, symbol, quiet * module, quiet * module);
    writeLine(label, label.height - 7 * module);
    return label;
}

std::vector<scanner::SeenCode> readBy(ReadingStep step, const GreyPicture& picture) {
    FrameReader reader(picture, pictures::isTag);
    reader.run(step);
    return reader.codes();
}

} // namespace

TEST(LabelSymbol, lightPrintOnADarkLabelIsRead) {
    const std::string text = pictures::tagCode(63);
    GreyPicture picture = pictures::onGround(labelOf(pictures::dataMatrixModules(text)), 640, 480, 15, 60);
    for (auto& pixel : picture.pixels)
        pixel = static_cast<std::uint8_t>(255 - pixel);
    const auto codes = readBy(ReadingStep::SymbolsOnOtherLabels, picture);
    ASSERT_EQ(codes.size(), 1u);
    EXPECT_EQ(codes[0].text, text);
}

TEST(DarkPatches, aTagWithoutTwoFindersIsRead) {
    const std::string text = pictures::tagCode(64);
    const auto drawn = [](GreyPicture modules, double degrees) {
        GreyPicture symbol = pictures::enlarged(modules, module);
        for (int i = 0; i < 7 * module; ++i)
            for (int k = 0; k < 3 * module; ++k) {
                symbol.row(i)[k + 2 * module] = 120;
                symbol.row(14 * module + i)[k + 2 * module] = 120;
            }
        return pictures::onGround(symbol, 640, 480, degrees);
    };
    for (const double degrees : {0.0, 35.0, 250.0}) {
        const GreyPicture picture = drawn(pictures::qrModules(text), degrees);
        const auto codes = readBy(ReadingStep::QrInPatches, picture);
        ASSERT_EQ(codes.size(), 1u) << degrees;
        EXPECT_EQ(codes[0].text, text);
        EXPECT_TRUE(
            readBy(ReadingStep::QrInPatches, drawn(pictures::shuffled(pictures::qrModules(text)), degrees))
                .empty());
    }
}

namespace {

/// A light label with the symbol, and a dark smear from its lower side, which is solid, over the label's
/// edge.
GreyPicture smearedLabelOf(const GreyPicture& modules) {
    const GreyPicture symbol = pictures::enlarged(modules, module);
    constexpr int around = quiet * module;
    GreyPicture label(symbol.width + 2 * around, symbol.height + 2 * around, 225);
    pictures::paste(label, symbol, around, around);
    for (int y = around + symbol.height - module; y < label.height; ++y)
        for (int x = around + 3 * module; x < around + 5 * module; ++x)
            label.row(y)[x] = 20;
    return label;
}

} // namespace

TEST(DataMatrixBySides, aSymbolThatDirtJoinsWithTheGroundIsRead) {
    const std::string text = pictures::tagCode(65);
    const auto drawn = [](const GreyPicture& modules, double degrees) {
        return pictures::onGround(smearedLabelOf(modules), 640, 480, degrees, 60);
    };
    const GreyPicture modules = pictures::dataMatrixModules(text);
    for (const double degrees : {10.0, 130.0, 250.0}) {
        const GreyPicture picture = drawn(modules, degrees);
        EXPECT_TRUE(readBy(ReadingStep::DataMatrix, picture).empty()) << degrees;
        EXPECT_TRUE(readBy(ReadingStep::DataMatrixThreeCorners, picture).empty()) << degrees;
        const auto codes = readBy(ReadingStep::DataMatrixBySides, picture);
        ASSERT_EQ(codes.size(), 1u) << degrees;
        EXPECT_EQ(codes[0].text, text);
        EXPECT_TRUE(
            readBy(ReadingStep::DataMatrixBySides, drawn(pictures::shuffled(modules), degrees)).empty());
    }
}
