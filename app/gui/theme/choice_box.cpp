#include "app/gui/theme/choice_box.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"

#include <QPainter>
#include <QPolygonF>

namespace app {

void ChoiceBox::paintEvent(QPaintEvent* event) {
    QComboBox::paintEvent(event);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(currentPalette().ink);
    const QPointF middle(width() - 22, height() / 2.0);
    painter.drawPolygon(
        QPolygonF({middle + QPointF(-8, -5), middle + QPointF(8, -5), middle + QPointF(0, 6)}));
}

} // namespace app
