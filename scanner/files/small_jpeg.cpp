#include "scanner/files/small_jpeg.h"

#include "scanner/files/picture_file.h"

#include <QBuffer>
#include <QColorSpace>
#include <QImage>
#include <QImageWriter>
#include <QPainter>

#include <algorithm>
#include <utility>

namespace scanner {
namespace {

/// The pixels alone, on white paper: what else an image holds (texts, profile, resolution) would be written
/// with it.
QImage pixelsOf(QImage image, int longest) {
    if (image.colorSpace().isValid()) image.convertToColorSpace(QColorSpace::SRgb);
    if (std::max(image.width(), image.height()) > longest)
        image = image.scaled(longest, longest, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    QImage paper(image.size(), QImage::Format_RGB32);
    paper.fill(Qt::white);
    image.setDevicePixelRatio(1);
    QPainter(&paper).drawImage(0, 0, image);
    return paper;
}

QByteArray jpegOf(const QImage& image, int quality) {
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QImageWriter writer(&buffer, "jpeg");
    writer.setQuality(quality);
    writer.setOptimizedWrite(true);
    writer.write(image);
    return buffer.data();
}

} // namespace

QByteArray smallJpegOf(const QImage& image, int longest, int mostBytes) {
    for (int side = longest; side >= 1; side = side * 3 / 4) {
        const QImage pixels = pixelsOf(image, side);
        for (int quality = 85; quality >= 25; quality -= 10)
            if (QByteArray bytes = jpegOf(pixels, quality); bytes.size() <= mostBytes) return bytes;
    }
    return {};
}

SmallJpeg smallJpegOf(const std::filesystem::path& path, int longest, int mostBytes) {
    DecodedPicture decoded = decodePicture(path);
    if (decoded.error) return {std::move(decoded.error), {}};
    return {std::nullopt, smallJpegOf(decoded.image, longest, mostBytes)};
}

} // namespace scanner
