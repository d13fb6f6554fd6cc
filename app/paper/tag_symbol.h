#pragma once

#include <QColor>
#include <QPainterPath>
#include <QPointF>

#include <string>

class QPainter;

namespace app {

/// A club tag's symbol: QR version 1, level H (ISO/IEC 18004), which ten characters of a tag code fill
/// exactly.
inline constexpr int symbolModules = 21;
inline constexpr int quietModules = 4; ///< that the standard asks for on each side
inline constexpr int zoneModules = symbolModules + 2 * quietModules; ///< the symbol with its quiet zone

/// The dark modules as one path, a module being 1 × 1, the symbol's top left corner at (0, 0). One path, so
/// that no seam shows between neighbours when it is filled. `code` is a tag code.
QPainterPath symbolPath(const std::string& code);

/// Fills the dark modules. `corner` is the quiet zone's, and a module so wide, in the painter's units.
void drawSymbol(QPainter& painter, QPointF corner, double module, const std::string& code,
                const QColor& ink = Qt::black);

} // namespace app
