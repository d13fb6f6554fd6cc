#pragma once

#include "scanner/files/file_fault.h"

#include <QByteArray>

#include <filesystem>
#include <optional>

class QImage;

namespace scanner {

/// A photograph to be kept: as much of it as a person needs to see, in few bytes.
struct SmallJpeg {
    std::optional<FileError> error; ///< then there are no bytes
    QByteArray bytes;
};

/// The picture as a JPEG in sRGB, upright, its longer side at most `longest` pixels, of at most `mostBytes`
/// (10,000 or more): its quality is stepped down until it fits, and then its sides. Nothing that stood beside
/// the picture goes with it: no place, time, camera, comment or profile. Any thread.
QByteArray smallJpegOf(const QImage& image, int longest, int mostBytes);

/// The same of a picture file in any format; see decodePicture for what is refused.
SmallJpeg smallJpegOf(const std::filesystem::path& path, int longest, int mostBytes);

} // namespace scanner
