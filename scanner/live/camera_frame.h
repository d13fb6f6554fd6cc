#pragma once

#include "scanner/grey_picture.h"

#include <QImage>

class QVideoFrame;

namespace scanner {

/// Luma of a camera's frame in the frame's own pixels, as the format stores it where it does. The frame is
/// mapped, copied and unmapped before this returns: a frame held longer stalls the camera. A frame that
/// cannot be mapped gives an empty picture. Any thread that may map the frame.
GreyPicture greyOf(const QVideoFrame& frame);

/// The frame in colour to look at, not to read from: every n-th pixel, so that it is at most `maxWidth` (1 or
/// more) pixels wide. Mapped, copied and unmapped as above; null if it cannot be mapped.
QImage previewOf(const QVideoFrame& frame, int maxWidth);

} // namespace scanner
