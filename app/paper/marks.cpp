#include "app/paper/marks.h"

#include <QPainter>
#include <QPolygonF>

#include <algorithm>

namespace app {

void paintMark(QPainter& painter, Mark mark, const QRectF& box, const QColor& tone) {
    const double side = std::min(box.width(), box.height());
    const QRectF square(box.center().x() - side / 2, box.center().y() - side / 2, side, side);
    const double stroke = side / 6;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(tone);
    switch (mark) {
    case Mark::StillToFind:
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(tone, stroke));
        painter.drawEllipse(square.adjusted(stroke / 2, stroke / 2, -stroke / 2, -stroke / 2));
        break;
    case Mark::Look:
        // A little wider than the square, so that it weighs as much to the eye.
        painter.drawPolygon(QPolygonF({QPointF(square.center().x(), square.top()),
                                       QPointF(square.right() + side * 0.06, square.bottom()),
                                       QPointF(square.left() - side * 0.06, square.bottom())}));
        break;
    case Mark::Found:
        painter.drawRect(square.adjusted(side * 0.07, side * 0.07, -side * 0.07, -side * 0.07));
        break;
    case Mark::NotAsked:
        painter.drawRect(
            QRectF(square.left() + side / 5, square.center().y() - stroke / 2, side * 0.6, stroke));
        break;
    }
    painter.restore();
}

QChar characterOf(Mark mark) {
    switch (mark) {
    case Mark::StillToFind:
        return QChar(0x25EF);
    case Mark::Look:
        return QChar(0x25B2);
    case Mark::Found:
        return QChar(0x25A0);
    case Mark::NotAsked:
        break;
    }
    return QChar(0x2013);
}

} // namespace app
