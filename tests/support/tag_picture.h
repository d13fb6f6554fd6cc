#pragma once

#include <QColor>
#include <QImage>
#include <QSize>

#include <string>
#include <vector>

namespace support {

/// A QR symbol, level H, with the four modules of quiet zone that ISO/IEC 18004 asks for, made by
/// libqrencode, which shares no code with the decoder under test. Black on white, `module` pixels a module.
QImage qrSymbol(const std::string& text, int module = 6);

/// The symbols side by side, middle height, on a ground of this size and colour. They must fit.
QImage tagPicture(const std::vector<std::string>& texts, QSize size = {1280, 720},
                  QColor ground = Qt::lightGray, int module = 6);

} // namespace support
