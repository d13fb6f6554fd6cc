#include "scanner/live/preview_image.h"

#include <QVideoFrame>

#include <algorithm>
#include <cstddef>
#include <optional>

namespace scanner {
namespace {

int strideToFit(int width, int maxWidth) {
    return std::max(1, (width + maxWidth - 1) / std::max(1, maxWidth));
}

std::uint8_t sample(const Channel& channel, int x, int y) {
    return channel.data[static_cast<std::ptrdiff_t>(y) * channel.stride + x * channel.step];
}

/// ITU-R BT.601, video range, in 256ths.
QRgb colourOf(int luma, int cb, int cr) {
    const int y = 298 * (luma - 16) + 128;
    const int b = cb - 128;
    const int r = cr - 128;
    const auto byte = [](int value) { return std::clamp(value >> 8, 0, 255); };
    return qRgb(byte(y + 409 * r), byte(y - 100 * b - 208 * r), byte(y + 516 * b));
}

Channel channelOf(const QVideoFrame& mapped, int plane, int first, int step) {
    return {mapped.bits(plane) + first, mapped.bytesPerLine(plane), step};
}

/// Where the three channels lie in the formats that webcams give and decoders put out; others go through Qt.
std::optional<YuvView> viewOf(const QVideoFrame& mapped) {
    const int width = mapped.width();
    const int height = mapped.height();
    const auto at = [&](int plane, int first, int step) { return channelOf(mapped, plane, first, step); };
    switch (mapped.pixelFormat()) {
    case QVideoFrameFormat::Format_YUYV:
        return YuvView{width, height, at(0, 0, 2), at(0, 1, 4), at(0, 3, 4), true};
    case QVideoFrameFormat::Format_UYVY:
        return YuvView{width, height, at(0, 1, 2), at(0, 0, 4), at(0, 2, 4), true};
    case QVideoFrameFormat::Format_NV12:
        return YuvView{width, height, at(0, 0, 1), at(1, 0, 2), at(1, 1, 2)};
    case QVideoFrameFormat::Format_NV21:
        return YuvView{width, height, at(0, 0, 1), at(1, 1, 2), at(1, 0, 2)};
    case QVideoFrameFormat::Format_YUV420P:
        return YuvView{width, height, at(0, 0, 1), at(1, 0, 1), at(2, 0, 1)};
    case QVideoFrameFormat::Format_YV12:
        return YuvView{width, height, at(0, 0, 1), at(2, 0, 1), at(1, 0, 1)};
    default:
        return std::nullopt;
    }
}

QImage previewThroughQt(const QVideoFrame& frame, int maxWidth) {
    const QImage image = frame.toImage();
    return image.width() > maxWidth ? image.scaledToWidth(maxWidth) : image;
}

} // namespace

QImage previewOf(const YuvView& frame, int maxWidth) {
    const int every = strideToFit(frame.width, maxWidth);
    QImage image(frame.width / every, frame.height / every, QImage::Format_RGB32);
    for (int row = 0; row < image.height(); ++row) {
        auto* to = reinterpret_cast<QRgb*>(image.scanLine(row));
        const int y = row * every;
        const int chromaY = frame.chromaRowsFull ? y : y / 2;
        for (int column = 0; column < image.width(); ++column) {
            const int x = column * every;
            to[column] = colourOf(sample(frame.luma, x, y), sample(frame.cb, x / 2, chromaY),
                                  sample(frame.cr, x / 2, chromaY));
        }
    }
    return image;
}

QImage previewOf(const QVideoFrame& frame, int maxWidth) {
    QVideoFrame mapped(frame); // shares the pixels; mapping is not const
    if (!mapped.map(QVideoFrame::ReadOnly)) return {};
    const auto view = viewOf(mapped);
    const QImage image = view ? previewOf(*view, maxWidth) : QImage();
    mapped.unmap();
    return view ? image : previewThroughQt(frame, maxWidth);
}

} // namespace scanner
