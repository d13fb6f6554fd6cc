#include "app/gui/widgets/choice_box.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"

#include <QAbstractItemView>
#include <QHelpEvent>
#include <QPainter>
#include <QPolygonF>
#include <QScreen>
#include <QScrollBar>
#include <QStyleOptionComboBox>
#include <QStylePainter>
#include <QToolTip>

#include <algorithm>

namespace app {

ChoiceBox::ChoiceBox(QWidget* parent)
    : QComboBox(parent) {
    setSizeAdjustPolicy(AdjustToContents); // names come after the first show
}

void ChoiceBox::takeRoom(int leastLetters) {
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(leastLetters);
}

/// Its base forgets the padding of the style sheet, and that what is chosen may be bold.
QSize ChoiceBox::sizeHint() const {
    return QComboBox::sizeHint() + QSize(2 * spaceUnit, 0);
}

QSize ChoiceBox::minimumSizeHint() const {
    return QComboBox::minimumSizeHint() + QSize(2 * spaceUnit, 0);
}

void ChoiceBox::paintEvent(QPaintEvent* event) {
    if (isEditable())
        QComboBox::paintEvent(event);
    else
        paintChosen();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(currentPalette().ink);
    const QPointF middle(width() - 22, height() / 2.0);
    painter.drawPolygon(
        QPolygonF({middle + QPointF(-8, -5), middle + QPointF(8, -5), middle + QPointF(0, 6)}));
}

/// As its base does, but what is longer than the box ends in dots.
void ChoiceBox::paintChosen() {
    QStylePainter painter(this);
    painter.setPen(palette().color(QPalette::Text));
    QStyleOptionComboBox option;
    initStyleOption(&option);
    painter.drawComplexControl(QStyle::CC_ComboBox, option);
    const QRect room =
        style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this);
    option.currentText = fontMetrics().elidedText(option.currentText, Qt::ElideRight, room.width());
    painter.drawControl(QStyle::CE_ComboBoxLabel, option);
}

/// As wide as its words: the box itself may be narrower.
void ChoiceBox::showPopup() {
    const int wanted =
        view()->sizeHintForColumn(0) + 4 * spaceUnit + view()->verticalScrollBar()->sizeHint().width();
    view()->setMinimumWidth(std::min(wanted, screen()->availableSize().width() / 2));
    QComboBox::showPopup();
}

bool ChoiceBox::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip && toolTip().isEmpty()) {
        QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), currentText(), this);
        return true;
    }
    return QComboBox::event(event);
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
