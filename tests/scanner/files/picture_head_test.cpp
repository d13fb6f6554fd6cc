#include "scanner/files/picture_head.h"

#include "scanner/files/picture_file.h"
#include "tests/support/picture_bombs.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <fstream>

namespace scanner {
namespace {

std::span<const std::uint8_t> bytesOf(const std::string& text) {
    return {reinterpret_cast<const std::uint8_t*>(text.data()), text.size()};
}

LoadedPicture loaded(const support::ScratchFolder& folder, const std::string& name,
                     const std::string& bytes) {
    std::ofstream(folder / name, std::ios::binary) << bytes;
    return loadPicture(folder / name);
}

// The sides that 32 bits and 16 bits can tell, and sides just beyond 64 million pixels.
TEST(PictureHead, morePixelsThanAPictureMayHaveAreRefusedBeforeTheyAreDecoded) {
    const support::ScratchFolder folder;
    for (const auto& [width, height] :
         {std::pair(40000U, 40000U), std::pair(8001U, 8000U), std::pair(65000U, 1000U)})
        for (const auto& [name, bytes] : support::pictureBombs(width, height)) {
            if (name == "webp" && width > 16383) continue; // it cannot tell so wide a side
            const LoadedPicture picture = loaded(folder, "bomb." + name, bytes);
            ASSERT_TRUE(picture.error) << name;
            if (width > 32767 && (name == "bmp" || name == "ppm"))
                continue; // Qt takes so wide a side for damage
            EXPECT_EQ(picture.error->fault, FileFault::TooBig) << name << ": " << picture.error->detail;
            EXPECT_EQ(picture.error->detail, "by its head") << name;
        }
}

TEST(PictureHead, theSameWithTheirOwnSidesAreRead) {
    const support::ScratchFolder folder;
    for (const auto& [name, bytes] : support::pictureBombs(32, 32)) {
        if (name == "ppm" || name == "gif") continue; // theirs hold no 32 by 32 pixels
        const LoadedPicture picture = loaded(folder, "whole." + name, bytes);
        EXPECT_FALSE(picture.error) << name << ": "
                                    << (picture.error ? picture.error->detail : std::string());
        EXPECT_EQ(picture.width, 32);
    }
    EXPECT_FALSE(loaded(folder, "whole.gif", support::pictureBombs(1, 1).at("gif")).error);
    EXPECT_FALSE(loaded(folder, "whole.ppm", support::pictureBombs(1, 1).at("ppm")).error);
}

// ITU-T T.81: a progressive picture is held as 16-bit coefficients until its last scan.
TEST(PictureHead, aJpegTellsWhatDecodingItTakes) {
    const std::string progressive = support::pictureBombs(3000, 2000).at("progressive.jpg");
    const std::string baseline = support::pictureBombs(3000, 2000).at("jpg");
    // Qt writes colours at half the width and height: 1 + 1/4 + 1/4 values a pixel.
    EXPECT_EQ(jpegCost(bytesOf(progressive)).heldBytes, 2.0 * 1.5 * 3000 * 2000);
    EXPECT_EQ(jpegCost(bytesOf(support::jpegOfScans(800, 600, 1))).heldBytes, 2.0 * 800 * 600);
    EXPECT_GT(jpegCost(bytesOf(progressive)).scans, 4);
    EXPECT_EQ(jpegCost(bytesOf(baseline)).heldBytes, 0);
    EXPECT_EQ(jpegCost(bytesOf(baseline)).scans, 1);
    EXPECT_EQ(jpegCost(bytesOf(support::jpegOfScans(800, 600, 70))).scans, 70);
    EXPECT_EQ(jpegCost(bytesOf(std::string("\x89PNG"))).scans, 0);
    for (std::size_t size = 0; size < progressive.size(); ++size)
        EXPECT_LE(jpegCost(bytesOf(progressive.substr(0, size))).scans, 40);
}

// Found by picture_file_fuzz: the frame of a GIF may have no side in its head.
TEST(PictureHead, aHeadThatSaysNothingOfTheSidesIsNotBelieved) {
    using namespace std::string_literals;
    const support::ScratchFolder folder;
    const LoadedPicture picture =
        loaded(folder, "narrow.gif",
               "GIF89a\0\xBB\x60\0\0\0\0,\0\0\0\0\0\0\0 \0\0,\0\0\0\xFF\xFF\x02\x02\0 "
               "\0\0\0\xFF\xFF\xFF\x02\x02L\x01\0 \0\0,"
               "\0\0\0\xFF\xFF\x02\x02\0 \0\0\0\xFF\xFF\xFF\x02\x02L\x01\0;"s);
    ASSERT_FALSE(picture.error);
    EXPECT_EQ(picture.width, 47872);
    EXPECT_EQ(picture.height, 96);
}

TEST(PictureHead, manyScansOfManyPixelsAreRefused) {
    const support::ScratchFolder folder;
    EXPECT_EQ(loaded(folder, "many.jpg", support::jpegOfScans(7000, 7000, 60)).error->fault,
              FileFault::TooBig);
    EXPECT_FALSE(loaded(folder, "few.jpg", support::jpegOfScans(700, 700, 10)).error);
}

TEST(PictureHead, aDamagedPictureIsNoVideo) {
    for (const auto& [name, bytes] : support::pictureBombs(32, 32))
        EXPECT_TRUE(name == "ppm" || beginsLikePicture(bytesOf(bytes))) << name;
    using namespace std::string_literals;
    EXPECT_FALSE(beginsLikePicture(bytesOf("\0\0\0\x20"
                                           "ftypisom"s)));
    EXPECT_FALSE(beginsLikePicture(bytesOf("RIFF\0\0\0\0AVI LIST"s)));
    EXPECT_FALSE(beginsLikePicture(bytesOf("\x1A\x45\xDF\xA3"s)));
    EXPECT_FALSE(beginsLikePicture({}));
    const support::ScratchFolder folder;
    EXPECT_EQ(loaded(folder, "cut.gif", "GIF89a\x01").error->fault, FileFault::Damaged);
}

} // namespace
} // namespace scanner
