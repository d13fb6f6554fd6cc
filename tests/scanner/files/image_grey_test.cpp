#include "scanner/files/image_grey.h"

#include <QImage>
#include <gtest/gtest.h>

namespace scanner {
namespace {

TEST(ImageGrey, pictureWithPaddedRowsIsCopiedPixelByPixel) {
    QImage image(5, 3, QImage::Format_Grayscale8); // rows of 5 lie 8 bytes apart
    ASSERT_EQ(image.bytesPerLine(), 8);
    for (int y = 0; y < 3; ++y)
        for (int x = 0; x < 5; ++x)
            image.scanLine(y)[x] = static_cast<uchar>(10 * y + x);
    const GreyPicture grey = greyOf(image);
    ASSERT_EQ(grey.pixels.size(), 15U);
    EXPECT_EQ(grey.row(2)[4], 24);
    EXPECT_EQ(grey.row(1)[0], 10);
}

TEST(ImageGrey, clearPixelsLieOnWhitePaper) {
    QImage image(3, 1, QImage::Format_ARGB32);
    image.setPixel(0, 0, qRgba(0, 0, 0, 0));
    image.setPixel(1, 0, qRgba(0, 0, 0, 255));
    image.setPixel(2, 0, qRgba(0, 0, 0, 128));
    const GreyPicture grey = greyOf(image);
    EXPECT_EQ(grey.pixels[0], 255);
    EXPECT_EQ(grey.pixels[1], 0);
    EXPECT_NEAR(grey.pixels[2], 127, 1);
}

TEST(ImageGrey, everyOtherImageFormatGivesTheSameGrey) {
    QImage image(2, 1, QImage::Format_RGB32);
    image.setPixel(0, 0, qRgb(200, 100, 50));
    image.setPixel(1, 0, qRgb(0, 0, 0));
    const GreyPicture expected = greyOf(image);
    for (const auto format : {QImage::Format_RGB888, QImage::Format_RGBA8888, QImage::Format_RGBX64,
                              QImage::Format_ARGB32_Premultiplied, QImage::Format_BGR888})
        EXPECT_EQ(greyOf(image.convertToFormat(format)).pixels, expected.pixels) << format;
}

} // namespace
} // namespace scanner
