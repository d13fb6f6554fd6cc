#include "scanner/live/camera_frame.h"

#include "scanner/files/image_grey.h"
#include "scanner/files/preview_image.h"

#include <QVideoFrame>

#include <cstddef>
#include <optional>

namespace scanner {
namespace {

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
            to[x] = lumaOf(from[place.red], from[place.green], from[place.blue]);
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

QImage previewOf(const QVideoFrame& frame, int maxWidth) {
    QVideoFrame mapped(frame); // shares the pixels; mapping is not const
    if (!mapped.map(QVideoFrame::ReadOnly)) return {};
    const auto view = viewOf(mapped);
    const QImage image = view ? previewOf(*view, maxWidth) : QImage();
    mapped.unmap();
    return view ? image : previewThroughQt(frame, maxWidth);
}

} // namespace scanner
