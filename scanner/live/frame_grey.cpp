#include "scanner/live/frame_grey.h"

#include <QImage>
#include <QVideoFrame>

#include <algorithm>
#include <cstddef>
#include <optional>

namespace scanner {
namespace {

std::uint8_t weigh(int red, int green, int blue) {
    return static_cast<std::uint8_t>((77 * red + 150 * green + 29 * blue + 128) >> 8);
}

std::uint8_t onWhitePaper(QRgb pixel) {
    const int alpha = qAlpha(pixel);
    const int grey = weigh(qRed(pixel), qGreen(pixel), qBlue(pixel));
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

/// Where a packed or planar format keeps its luma: the byte of the first pixel and the step to the next.
struct LumaPlace {
    int first;
    int step;
};

std::optional<LumaPlace> lumaPlaceOf(QVideoFrameFormat::PixelFormat format) {
    switch (format) {
    case QVideoFrameFormat::Format_Y8:
    case QVideoFrameFormat::Format_YUV420P:
    case QVideoFrameFormat::Format_YUV422P:
    case QVideoFrameFormat::Format_YV12:
    case QVideoFrameFormat::Format_IMC1:
    case QVideoFrameFormat::Format_IMC2:
    case QVideoFrameFormat::Format_IMC3:
    case QVideoFrameFormat::Format_IMC4:
    case QVideoFrameFormat::Format_NV12:
    case QVideoFrameFormat::Format_NV21:
        return LumaPlace{0, 1};
    case QVideoFrameFormat::Format_YUYV:
        return LumaPlace{0, 2};
    case QVideoFrameFormat::Format_UYVY:
        return LumaPlace{1, 2};
    default:
        return std::nullopt;
    }
}

/// The byte places of red, green and blue in a packed pixel of four bytes.
struct ColourPlace {
    int red;
    int green;
    int blue;
};

std::optional<ColourPlace> colourPlaceOf(QVideoFrameFormat::PixelFormat format) {
    switch (format) {
    case QVideoFrameFormat::Format_BGRA8888:
    case QVideoFrameFormat::Format_BGRX8888:
        return ColourPlace{2, 1, 0};
    case QVideoFrameFormat::Format_RGBA8888:
    case QVideoFrameFormat::Format_RGBX8888:
        return ColourPlace{0, 1, 2};
    case QVideoFrameFormat::Format_ARGB8888:
    case QVideoFrameFormat::Format_XRGB8888:
        return ColourPlace{1, 2, 3};
    case QVideoFrameFormat::Format_ABGR8888:
    case QVideoFrameFormat::Format_XBGR8888:
        return ColourPlace{3, 2, 1};
    default:
        return std::nullopt;
    }
}

GreyPicture greyByColour(const QVideoFrame& mapped, ColourPlace place) {
    GreyPicture grey(mapped.width(), mapped.height());
    for (int y = 0; y < grey.height; ++y) {
        const uchar* from = mapped.bits(0) + static_cast<std::ptrdiff_t>(y) * mapped.bytesPerLine(0);
        std::uint8_t* to = grey.row(y);
        for (int x = 0; x < grey.width; ++x, from += 4)
            to[x] = weigh(from[place.red], from[place.green], from[place.blue]);
    }
    return grey;
}

GreyPicture greyOfMapped(const QVideoFrame& mapped) {
    if (const auto luma = lumaPlaceOf(mapped.pixelFormat())) {
        return copyOf(GreyView{mapped.bits(0) + luma->first, mapped.width(), mapped.height(),
                               mapped.bytesPerLine(0), luma->step});
    }
    return greyByColour(mapped, *colourPlaceOf(mapped.pixelFormat()));
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
                      [](QRgb pixel) { return weigh(qRed(pixel), qGreen(pixel), qBlue(pixel)); });
}

GreyPicture greyOf(const QVideoFrame& frame) {
    if (!frame.isValid()) return {};
    if (!lumaPlaceOf(frame.pixelFormat()) && !colourPlaceOf(frame.pixelFormat()))
        return greyOf(frame.toImage());
    QVideoFrame mapped(frame); // shares the pixels; mapping is not const
    if (!mapped.map(QVideoFrame::ReadOnly)) return {};
    GreyPicture grey = greyOfMapped(mapped);
    mapped.unmap();
    return grey;
}

} // namespace scanner
