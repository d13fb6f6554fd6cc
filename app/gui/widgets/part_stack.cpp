#include "app/gui/widgets/part_stack.h"

#include <QEvent>
#include <QLayout>
#include <QResizeEvent>

#include <algorithm>

namespace app {

int leastHeightOf(const QWidget& part, int width) {
    const int least = std::max(part.minimumSizeHint().height(), part.minimumHeight());
    if (!part.hasHeightForWidth() || !part.layout()) return least;
    return std::max(least, part.layout()->totalMinimumHeightForWidth(width));
}

PartStack::PartStack(QWidget* parent)
    : QStackedWidget(parent) {
    layout()->setSizeConstraint(QLayout::SetNoConstraint); // it would keep to the largest
    connect(this, &QStackedWidget::currentChanged, this, &PartStack::updateGeometry);
}

QSize PartStack::sizeHint() const {
    return currentWidget() ? currentWidget()->sizeHint() : QStackedWidget::sizeHint();
}

QSize PartStack::minimumSizeHint() const {
    const QWidget* part = currentWidget();
    if (!part) return {0, 0};
    const int width = std::max(part->minimumSizeHint().width(), part->minimumWidth());
    return {width, leastHeightOf(*part, std::max(width, this->width()))};
}

bool PartStack::event(QEvent* event) {
    if (event->type() == QEvent::LayoutRequest) updateGeometry();
    return QStackedWidget::event(event);
}

void PartStack::resizeEvent(QResizeEvent* event) {
    QStackedWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) updateGeometry();
}

} // namespace app
