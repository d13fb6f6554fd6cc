#pragma once

#include "scanner/grey_picture.h"

class QImage;
class QVideoFrame;

namespace scanner {

/// Luma of a picture: (77 R + 150 G + 29 B) / 256, the weights of ITU-R BT.601 in 256ths. Clear
/// pixels are seen on white paper. A null picture gives an empty one. Any thread.
GreyPicture greyOf(const QImage& image);

/// Luma of a camera's or player's frame in the frame's own pixels, as the format stores it where it does. The
/// frame is mapped, copied and unmapped before this returns: a frame held longer stalls the camera. A frame
/// that cannot be mapped gives an empty picture. Any thread that may map the frame.
GreyPicture greyOf(const QVideoFrame& frame);

} // namespace scanner
