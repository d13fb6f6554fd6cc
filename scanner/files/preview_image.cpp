#include "scanner/files/preview_image.h"

#include <algorithm>
#include <cstddef>

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

QImage previewOf(const GreyPicture& grey, int maxWidth) {
    const QImage borrowed(grey.pixels.data(), grey.width, grey.height, grey.width, QImage::Format_Grayscale8);
    return grey.width > maxWidth ? borrowed.scaledToWidth(maxWidth) : borrowed.copy();
}

} // namespace scanner
