#include "app/paper/tag_symbol.h"

#include <QPainter>

#include <cassert>
#include <memory>
#include <qrencode.h>

namespace app {
namespace {

using Symbol = std::unique_ptr<QRcode, void (*)(QRcode*)>;

Symbol encoded(const std::string& code) {
    // Version 1 is asked for and kept: a longer text would make the library choose a bigger one.
    Symbol symbol(QRcode_encodeString(code.c_str(), 1, QR_ECLEVEL_H, QR_MODE_8, 1), QRcode_free);
    assert(symbol && symbol->width == symbolModules);
    return symbol;
}

} // namespace

QPainterPath symbolPath(const std::string& code) {
    const Symbol symbol = encoded(code);
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (int y = 0; y < symbolModules; ++y)
        for (int x = 0; x < symbolModules;) {
            const int from = x;
            while (x < symbolModules && (symbol->data[y * symbolModules + x] & 1) != 0)
                ++x;
            if (x > from) path.addRect(from, y, x - from, 1);
            if (x < symbolModules && x == from) ++x;
        }
    return path;
}

void drawSymbol(QPainter& painter, QPointF corner, double module, const std::string& code,
                const QColor& ink) {
    painter.save();
    painter.translate(corner + QPointF(quietModules, quietModules) * module);
    painter.scale(module, module);
    painter.fillPath(symbolPath(code), ink);
    painter.restore();
}

} // namespace app
