#pragma once

#include "scanner/files/file_fault.h"
#include "scanner/grey_picture.h"

#include <QImage>
#include <QSize>

#include <filesystem>
#include <optional>

namespace scanner {

/// A picture file made ready for the reader: turned upright as its EXIF orientation says, and shrunk if it
/// was big.
struct LoadedPicture {
    std::optional<FileError> error; ///< then the rest is empty
    GreyPicture grey;
    int width = 0; ///< of the upright picture before it was shrunk, in pixels; corners are told in these
    int height = 0;

    /// Original pixels per pixel of `grey`; 1 unless it was shrunk.
    double scaleX() const { return static_cast<double>(width) / grey.width; }
    double scaleY() const { return static_cast<double>(height) / grey.height; }
};

/// A phone's picture of 12 megapixels stays as it is. Beyond that, time and memory grow and tags do not get
/// clearer.
constexpr int mostPixels = 4096 * 3072;

/// A larger one is not decoded at all, whatever its file looks like.
constexpr double mostPixelsInFile = 64e6;

/// A picture file in its colours, upright, and shrunk if it was big.
struct DecodedPicture {
    std::optional<FileError> error; ///< then the rest is empty
    QImage image;
    QSize upright; ///< its sides before it was shrunk, in pixels
};

/// Reads one picture in any format that Qt knows here; what counts is the content, not the name. TooBig for
/// more than mostPixelsInFile, and for what could not be decoded in 400 MB of memory or in 2 s of processor
/// time. Never throws. Any thread.
DecodedPicture decodePicture(const std::filesystem::path& path, int maxPixels = mostPixels);

/// The same, made ready for the reader.
LoadedPicture loadPicture(const std::filesystem::path& path, int maxPixels = mostPixels);

} // namespace scanner
