#include "scanner/live/preview_image.h"

#include <QVideoFrame>
#include <QVideoFrameFormat>
#include <gtest/gtest.h>

#include <algorithm>

namespace scanner {
namespace {

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
