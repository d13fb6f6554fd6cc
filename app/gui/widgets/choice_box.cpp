#include "app/gui/widgets/choice_box.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"

#include <QPainter>
#include <QPolygonF>

#include <algorithm>

namespace app {

void ChoiceBox::takeRoom(int leastLetters) {
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(leastLetters);
}

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

void fillBox(QComboBox& box, const QString& all, QStringList names) {
    names.removeDuplicates();
    names.removeAll(QString());
    names.sort();
    const QString before = box.currentData().toString();
    box.clear();
    box.addItem(all, QString());
    for (const QString& name : names)
        box.addItem(name, name);
    box.setCurrentIndex(std::max(0, box.findData(before)));
}

} // namespace app
