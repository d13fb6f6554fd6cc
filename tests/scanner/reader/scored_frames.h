#pragma once

#include "scanner/grey_picture.h"

#include <QImage>
#include <QJsonArray>
#include <QString>

#include <optional>

class QJsonObject;

/// Frames whose symbols are known: a folder with pictures and a truth.json that lists them.
namespace scored {

/// The entries of truth.json, at most `most`; nullopt when there is none. Each has "file", "stratum", "tags"
/// (text, sym, role, corners) and, in a burst, "burst" and "k".
std::optional<QJsonArray> framesIn(const QString& folder, int most = 1 << 30);

/// Grey, one byte a pixel; null when the file cannot be read.
QImage pictureOf(const QString& folder, const QJsonObject& frame);

/// Good while the image lives.
scanner::GreyView viewOf(const QImage& image);

/// Processor time of this thread so far: a busy machine does not stretch it as it stretches the wall's time.
double cpuMilliseconds();

} // namespace scored
