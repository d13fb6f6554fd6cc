#pragma once

#include <QCameraFormat>
#include <QList>

namespace scanner {

/// The format to ask a camera for: nearest to 1280 × 720 in pixels, then nearest to 30 frames a second, then
/// one that needs no decoding. Null if there is none: the camera chooses then.
QCameraFormat chooseFormat(const QList<QCameraFormat>& formats);

} // namespace scanner
