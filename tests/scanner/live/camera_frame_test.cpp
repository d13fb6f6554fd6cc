#include "scanner/live/camera_frame.h"

#include "scanner/files/image_grey.h"

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

struct Layout {
    QVideoFrameFormat::PixelFormat format;
    int cbPlane, cbFirst, crPlane, crFirst, lumaFirst, lumaStep, chromaStep;
};

// Qt 6 documentation of QVideoFrameFormat::PixelFormat.
const Layout layouts[] = {{QVideoFrameFormat::Format_YUYV, 0, 1, 0, 3, 0, 2, 4},
                          {QVideoFrameFormat::Format_UYVY, 0, 0, 0, 2, 1, 2, 4},
                          {QVideoFrameFormat::Format_NV12, 1, 0, 1, 1, 0, 1, 2},
                          {QVideoFrameFormat::Format_NV21, 1, 1, 1, 0, 0, 1, 2},
                          {QVideoFrameFormat::Format_YUV420P, 1, 0, 2, 0, 0, 1, 1},
                          {QVideoFrameFormat::Format_YV12, 2, 0, 1, 0, 0, 1, 1}};

void fill(QVideoFrame& frame, int plane, int first, int step, int columns, int value) {
    const int rows = frame.mappedBytes(plane) / frame.bytesPerLine(plane);
    for (int y = 0; y < rows; ++y)
        for (int x = 0; x < columns; ++x)
            frame.bits(plane)[y * frame.bytesPerLine(plane) + first + x * step] = static_cast<uchar>(value);
}

/// One colour all over.
QVideoFrame frameOf(const Layout& layout, QSize size, int luma, int cb, int cr) {
    QVideoFrame frame(QVideoFrameFormat(size, layout.format));
    EXPECT_TRUE(frame.map(QVideoFrame::WriteOnly));
    fill(frame, 0, layout.lumaFirst, layout.lumaStep, size.width(), luma);
    fill(frame, layout.cbPlane, layout.cbFirst, layout.chromaStep, size.width() / 2, cb);
    fill(frame, layout.crPlane, layout.crFirst, layout.chromaStep, size.width() / 2, cr);
    frame.unmap();
    return frame;
}

void expectNear(QRgb got, QRgb wanted) {
    EXPECT_NEAR(qRed(got), qRed(wanted), 3);
    EXPECT_NEAR(qGreen(got), qGreen(wanted), 3);
    EXPECT_NEAR(qBlue(got), qBlue(wanted), 3);
}

// The 100 % colour bars of ITU-R BT.601 in 8-bit video range (from memory): red 81/90/240, blue 41/240/110.
TEST(PreviewImage, showsTheColourBarsOfBt601InEveryFormat) {
    for (const Layout& layout : layouts) {
        SCOPED_TRACE(layout.format);
        const QImage red = previewOf(frameOf(layout, {16, 8}, 81, 90, 240), 16);
        ASSERT_EQ(red.size(), QSize(16, 8));
        expectNear(red.pixel(15, 7), qRgb(255, 0, 0));
        expectNear(previewOf(frameOf(layout, {16, 8}, 41, 240, 110), 16).pixel(3, 3), qRgb(0, 0, 255));
        expectNear(previewOf(frameOf(layout, {16, 8}, 235, 128, 128), 16).pixel(0, 0), qRgb(255, 255, 255));
    }
}

TEST(PreviewImage, isNeverWiderThanAskedFor) {
    EXPECT_EQ(previewOf(frameOf(layouts[0], {1280, 720}, 81, 90, 240), 640).size(), QSize(640, 360));
    EXPECT_EQ(previewOf(frameOf(layouts[0], {1280, 720}, 81, 90, 240), 700).size(), QSize(640, 360));
    EXPECT_EQ(previewOf(frameOf(layouts[0], {1280, 720}, 81, 90, 240), 1280).size(), QSize(1280, 720));
}

TEST(PreviewImage, anInvalidFrameHasNone) {
    EXPECT_TRUE(previewOf(QVideoFrame(), 640).isNull());
}

} // namespace
} // namespace scanner
