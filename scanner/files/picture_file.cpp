#include "scanner/files/picture_file.h"

#include "scanner/files/folder.h"
#include "scanner/files/image_grey.h"

#include <QFile>
#include <QImage>
#include <QImageReader>
#include <QString>

#include <algorithm>
#include <cmath>
#include <utility>

namespace scanner {
namespace {

namespace fs = std::filesystem;

FileFault faultOf(const QImageReader& reader, const QSize& size) {
    if (reader.error() == QImageReader::UnsupportedFormatError) return FileFault::NotAPicture;
    const double bytes = 4.0 * size.width() * size.height();
    const int limit = QImageReader::allocationLimit();
    return limit > 0 && bytes > limit * 1048576.0 ? FileFault::TooBig : FileFault::Damaged;
}

QSize shrunk(const QSize& size, int maxPixels) {
    const double share = std::sqrt(maxPixels / (static_cast<double>(size.width()) * size.height()));
    return {std::max(1, static_cast<int>(size.width() * share)),
            std::max(1, static_cast<int>(size.height() * share))};
}

bool isBig(const QSize& size, int maxPixels) {
    return static_cast<double>(size.width()) * size.height() > maxPixels;
}

LoadedPicture failed(FileFault fault, const QString& detail) {
    LoadedPicture none;
    none.error = FileError{fault, detail.toStdString()};
    return none;
}

LoadedPicture ready(const QImage& image, const QSize& upright) {
    LoadedPicture picture;
    picture.grey = greyOf(image);
    picture.width = upright.width();
    picture.height = upright.height();
    return picture;
}

LoadedPicture decode(QImageReader& reader, int maxPixels) {
    const QSize stored = reader.size();
    // Shrinking while decoding keeps the big picture out of memory.
    if (stored.isValid() && isBig(stored, maxPixels)) reader.setScaledSize(shrunk(stored, maxPixels));
    const QImage image = reader.read();
    if (image.isNull()) return failed(faultOf(reader, stored), reader.errorString());
    if (stored.isValid()) {
        const bool quarterTurn = reader.transformation().testFlag(QImageIOHandler::TransformationRotate90);
        return ready(image, quarterTurn ? stored.transposed() : stored);
    }
    // A format that tells its size only by decoding.
    if (!isBig(image.size(), maxPixels)) return ready(image, image.size());
    return ready(
        image.scaled(shrunk(image.size(), maxPixels), Qt::IgnoreAspectRatio, Qt::SmoothTransformation),
        image.size());
}

} // namespace

LoadedPicture loadPicture(const fs::path& path, int maxPixels) {
    if (auto error = faultOfFile(path)) {
        LoadedPicture none;
        none.error = std::move(error);
        return none;
    }
    QFile file(QFile::decodeName(path.c_str()));
    if (!file.open(QIODevice::ReadOnly)) return failed(FileFault::NotReadable, file.errorString());

    QImageReader reader(&file);
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true);
    return decode(reader, maxPixels);
}

} // namespace scanner
