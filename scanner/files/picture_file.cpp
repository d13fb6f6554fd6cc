#include "scanner/files/picture_file.h"

#include "scanner/files/folder.h"
#include "scanner/files/image_grey.h"
#include "scanner/files/picture_head.h"
#include "scanner/reader/image/time_budget.h"

#include <QFile>
#include <QImage>
#include <QImageReader>
#include <QString>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdint>
#include <span>
#include <utility>

namespace scanner {
namespace {

namespace fs = std::filesystem;

/// For one image within the decoder, in MiB. With what a decoder holds beside it and what is made of it, a
/// picture stays below 512 MB. JPEG, PNG and WebP shrink while they decode, so it does not bind them.
constexpr int mostImageMebibytes = 128;
constexpr double mostHeldBytes = 256e6;     ///< coefficients of a JPEG
constexpr double mostPixelScans = 2e9;      ///< pixels of a JPEG times its scans: about 2 s
constexpr std::chrono::seconds patience{2}; ///< of the processor: the machine may be busy, the stick slow

/// A file that gives out when a decoder has worked on it for too long: a few bytes may ask for much work.
class FileWithEnd : public QFile {
public:
    explicit FileWithEnd(const fs::path& path)
        : QFile(QFile::decodeName(path.c_str())) {}

    void begin() { m_budget = reader::TimeBudget::ofThread(patience); }
    bool isOver() const { return m_budget.isSpent(); }

protected:
    qint64 readData(char* into, qint64 most) override { return isOver() ? -1 : QFile::readData(into, most); }

private:
    reader::TimeBudget m_budget;
};

FileFault faultOf(const QImageReader& reader, const QSize& size, bool isKnownKind) {
    if (reader.error() == QImageReader::UnsupportedFormatError && !isKnownKind) return FileFault::NotAPicture;
    const double bytes = 4.0 * size.width() * size.height();
    return bytes > mostImageMebibytes * 1048576.0 ? FileFault::TooBig : FileFault::Damaged;
}

QSize shrunk(const QSize& size, int maxPixels) {
    const double share = std::sqrt(maxPixels / (static_cast<double>(size.width()) * size.height()));
    const int width = std::clamp(static_cast<int>(size.width() * share), 1, maxPixels);
    return {width, std::clamp(static_cast<int>(size.height() * share), 1, maxPixels / width)};
}

bool isBig(const QSize& size, int maxPixels) {
    return static_cast<double>(size.width()) * size.height() > maxPixels;
}

DecodedPicture failed(FileFault fault, const QString& detail) {
    return {FileError{fault, detail.toStdString()}, {}, {}};
}

/// What the file's head asks for, before anything is decoded.
constexpr qint64 mostFileBytes = 128 << 20;

bool asksTooMuch(const QSize& stored, std::span<const std::uint8_t> bytes) {
    const double pixels = static_cast<double>(stored.width()) * stored.height();
    const JpegCost cost = jpegCost(bytes);
    return pixels > mostPixelsInFile || cost.heldBytes > mostHeldBytes ||
           pixels * cost.scans > mostPixelScans;
}

DecodedPicture decode(QImageReader& reader, FileWithEnd& file, int maxPixels) {
    // Read and not mapped: a file that becomes shorter meanwhile, on a stick that is pulled out say, would
    // end the program.
    if (file.size() > mostFileBytes) return failed(FileFault::TooBig, QStringLiteral("by its size"));
    const QByteArray held = file.read(mostFileBytes);
    if (held.isEmpty() || !file.seek(0)) return failed(FileFault::NotReadable, file.errorString());
    const std::span<const std::uint8_t> bytes(reinterpret_cast<const std::uint8_t*>(held.constData()),
                                              static_cast<std::size_t>(held.size()));
    const QSize stored = reader.size();
    if (asksTooMuch(stored, bytes)) return failed(FileFault::TooBig, QStringLiteral("by its head"));
    // Shrinking while decoding keeps the big picture out of memory. A head may also say nothing, or less than
    // is there: then the picture itself tells.
    const bool isShrunk = !stored.isEmpty() && isBig(stored, maxPixels);
    if (isShrunk) reader.setScaledSize(shrunk(stored, maxPixels));
    QImage image = reader.read();
    if (image.isNull())
        return failed(file.isOver() ? FileFault::TooBig : faultOf(reader, stored, beginsLikePicture(bytes)),
                      reader.errorString());
    const bool quarterTurn = reader.transformation().testFlag(QImageIOHandler::TransformationRotate90);
    const QSize upright = !isShrunk ? image.size() : quarterTurn ? stored.transposed() : stored;
    if (isBig(image.size(), maxPixels))
        image =
            image.scaled(shrunk(image.size(), maxPixels), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    return {std::nullopt, std::move(image), upright};
}

} // namespace

DecodedPicture decodePicture(const fs::path& path, int maxPixels) {
    if (auto error = faultOfFile(path)) return {std::move(error), {}, {}};
    FileWithEnd file(path);
    file.begin();
    if (!file.open(QIODevice::ReadOnly)) return failed(FileFault::NotReadable, file.errorString());

    QImageReader::setAllocationLimit(mostImageMebibytes);
    QImageReader reader(&file);
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true);
    return decode(reader, file, maxPixels);
}

LoadedPicture loadPicture(const fs::path& path, int maxPixels) {
    DecodedPicture decoded = decodePicture(path, maxPixels);
    LoadedPicture picture;
    picture.error = std::move(decoded.error);
    if (picture.error) return picture;
    picture.grey = greyOf(decoded.image);
    picture.width = decoded.upright.width();
    picture.height = decoded.upright.height();
    return picture;
}

} // namespace scanner
