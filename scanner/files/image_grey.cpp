#include "scanner/files/image_grey.h"

#include <QImage>

#include <algorithm>

namespace scanner {
namespace {

std::uint8_t onWhitePaper(QRgb pixel) {
    const int alpha = qAlpha(pixel);
    const int grey = lumaOf(qRed(pixel), qGreen(pixel), qBlue(pixel));
    return static_cast<std::uint8_t>((grey * alpha + 255 * (255 - alpha)) / 255);
}

template <class Pixel>
GreyPicture greyByRows(const QImage& image, Pixel pixelToGrey) {
    GreyPicture grey(image.width(), image.height());
    for (int y = 0; y < grey.height; ++y) {
        const auto* from = reinterpret_cast<const QRgb*>(image.constScanLine(y));
        std::transform(from, from + grey.width, grey.row(y), pixelToGrey);
    }
    return grey;
}

} // namespace

GreyPicture greyOf(const QImage& image) {
    if (image.isNull()) return {};
    if (image.format() == QImage::Format_Grayscale8) {
        return copyOf(GreyView{image.constBits(), image.width(), image.height(),
                               static_cast<int>(image.bytesPerLine()), 1});
    }
    if (image.hasAlphaChannel())
        return greyByRows(image.convertToFormat(QImage::Format_ARGB32), onWhitePaper);
    return greyByRows(image.convertToFormat(QImage::Format_RGB32),
                      [](QRgb pixel) { return lumaOf(qRed(pixel), qGreen(pixel), qBlue(pixel)); });
}

} // namespace scanner
