#pragma once

#include "scanner/grey_picture.h"

#include <QImage>

#include <cstdint>

namespace scanner {

/// One channel of a frame: rows `stride` bytes apart, samples `step` bytes apart.
struct Channel {
    const std::uint8_t* data = nullptr;
    int stride = 0;
    int step = 1;
};

/// A frame of Y′CbCr with chroma halved across, and halved down unless `chromaRowsFull`. Video range (ITU-R
/// BT.601).
struct YuvView {
    int width = 0;
    int height = 0;
    Channel luma;
    Channel cb;
    Channel cr;
    bool chromaRowsFull = false;
};

/// A picture to look at, not to read from: every n-th pixel, so that it is at most `maxWidth` (1 or more)
/// pixels wide. RGB32. Any thread.
QImage previewOf(const YuvView& frame, int maxWidth);

/// The same of a grey picture, in grey. Null if the picture is empty.
QImage previewOf(const GreyPicture& grey, int maxWidth);

} // namespace scanner
