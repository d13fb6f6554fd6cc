#include "scanner/live/frame_grey.h"

#include <QImage>
#include <QVideoFrame>
#include <QVideoFrameFormat>
#include <gtest/gtest.h>

#include <algorithm>

namespace scanner {
namespace {

constexpr int width = 8;
constexpr int height = 4;

std::uint8_t lumaAt(int x, int y) {
    return static_cast<std::uint8_t>(16 + 7 * x + 40 * y);
}

/// A frame of this format whose luma is lumaAt and whose every other byte is 3.
QVideoFrame frameWithLuma(QVideoFrameFormat::PixelFormat pixelFormat, int first, int step) {
    QVideoFrame frame(QVideoFrameFormat({width, height}, pixelFormat));
    EXPECT_TRUE(frame.map(QVideoFrame::WriteOnly));
    for (int plane = 0; plane < frame.planeCount(); ++plane)
        std::fill_n(frame.bits(plane), frame.mappedBytes(plane), 3);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x)
            frame.bits(0)[y * frame.bytesPerLine(0) + first + x * step] = lumaAt(x, y);
    frame.unmap();
    return frame;
}

void expectLuma(const GreyPicture& grey) {
    ASSERT_EQ(grey.width, width);
    ASSERT_EQ(grey.height, height);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x)
            EXPECT_EQ(grey.row(y)[x], lumaAt(x, y)) << x << ',' << y;
}

// The byte orders are those of the Qt 6 documentation of QVideoFrameFormat::PixelFormat.
TEST(FrameGrey, takesTheLumaOfEveryWebcamFormat) {
    expectLuma(greyOf(frameWithLuma(QVideoFrameFormat::Format_YUYV, 0, 2)));
    expectLuma(greyOf(frameWithLuma(QVideoFrameFormat::Format_UYVY, 1, 2)));
    expectLuma(greyOf(frameWithLuma(QVideoFrameFormat::Format_NV12, 0, 1)));
    expectLuma(greyOf(frameWithLuma(QVideoFrameFormat::Format_NV21, 0, 1)));
    expectLuma(greyOf(frameWithLuma(QVideoFrameFormat::Format_YUV420P, 0, 1)));
    expectLuma(greyOf(frameWithLuma(QVideoFrameFormat::Format_YUV422P, 0, 1)));
    expectLuma(greyOf(frameWithLuma(QVideoFrameFormat::Format_YV12, 0, 1)));
    expectLuma(greyOf(frameWithLuma(QVideoFrameFormat::Format_Y8, 0, 1)));
}

struct ColourOrder {
    QVideoFrameFormat::PixelFormat format;
    int red, green, blue;
};

// ITU-R BT.601: Y' = 0.299 R + 0.587 G + 0.114 B.
TEST(FrameGrey, weighsColoursAsBt601Says) {
    const ColourOrder orders[] = {
        {QVideoFrameFormat::Format_BGRA8888, 2, 1, 0}, {QVideoFrameFormat::Format_BGRX8888, 2, 1, 0},
        {QVideoFrameFormat::Format_RGBA8888, 0, 1, 2}, {QVideoFrameFormat::Format_RGBX8888, 0, 1, 2},
        {QVideoFrameFormat::Format_ARGB8888, 1, 2, 3}, {QVideoFrameFormat::Format_XRGB8888, 1, 2, 3},
        {QVideoFrameFormat::Format_ABGR8888, 3, 2, 1}, {QVideoFrameFormat::Format_XBGR8888, 3, 2, 1}};
    const int colours[][3] = {{255, 0, 0}, {0, 255, 0}, {0, 0, 255}, {255, 255, 255}, {12, 200, 99}};
    for (const ColourOrder& order : orders) {
        for (const auto& [red, green, blue] : colours) {
            QVideoFrame frame(QVideoFrameFormat({1, 1}, order.format));
            ASSERT_TRUE(frame.map(QVideoFrame::WriteOnly));
            std::fill_n(frame.bits(0), 4, 255);
            frame.bits(0)[order.red] = static_cast<uchar>(red);
            frame.bits(0)[order.green] = static_cast<uchar>(green);
            frame.bits(0)[order.blue] = static_cast<uchar>(blue);
            frame.unmap();
            const GreyPicture grey = greyOf(frame);
            ASSERT_EQ(grey.pixels.size(), 1U);
            EXPECT_NEAR(grey.pixels[0], 0.299 * red + 0.587 * green + 0.114 * blue, 1.0) << order.format;
        }
    }
}

TEST(FrameGrey, leavesTheFrameUnmapped) {
    QVideoFrame frame = frameWithLuma(QVideoFrameFormat::Format_YUYV, 0, 2);
    greyOf(frame);
    EXPECT_FALSE(frame.isMapped());
    EXPECT_TRUE(frame.map(QVideoFrame::WriteOnly));
    frame.unmap();
}

TEST(FrameGrey, anInvalidFrameAndANullPictureAreEmpty) {
    EXPECT_TRUE(greyOf(QVideoFrame()).view().isEmpty());
    EXPECT_TRUE(greyOf(QImage()).view().isEmpty());
}

TEST(FrameGrey, pictureWithPaddedRowsIsCopiedPixelByPixel) {
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

TEST(FrameGrey, clearPixelsLieOnWhitePaper) {
    QImage image(3, 1, QImage::Format_ARGB32);
    image.setPixel(0, 0, qRgba(0, 0, 0, 0));
    image.setPixel(1, 0, qRgba(0, 0, 0, 255));
    image.setPixel(2, 0, qRgba(0, 0, 0, 128));
    const GreyPicture grey = greyOf(image);
    EXPECT_EQ(grey.pixels[0], 255);
    EXPECT_EQ(grey.pixels[1], 0);
    EXPECT_NEAR(grey.pixels[2], 127, 1);
}

TEST(FrameGrey, everyOtherImageFormatGivesTheSameGrey) {
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
