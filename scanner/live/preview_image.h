#pragma once

#include <QImage>

#include <cstdint>

class QVideoFrame;

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

/// A picture to look at, not to read from: every n-th pixel, so that it is at most `maxWidth` wide. RGB32.
QImage previewOf(const YuvView& frame, int maxWidth);

/// The same of a camera's frame. Maps, copies and unmaps it before it returns; null if it cannot be mapped.
QImage previewOf(const QVideoFrame& frame, int maxWidth);

} // namespace scanner
