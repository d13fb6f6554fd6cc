#include "app/gui/widgets/part_stack.h"

#include <QEvent>
#include <QLayout>

namespace app {

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
    return part ? part->minimumSizeHint().expandedTo(part->minimumSize()) : QSize(0, 0);
}

bool PartStack::hasHeightForWidth() const {
    const QLayout* part = currentWidget() ? currentWidget()->layout() : nullptr;
    return part && part->hasHeightForWidth();
}

int PartStack::heightForWidth(int width) const {
    const QLayout* part = currentWidget() ? currentWidget()->layout() : nullptr;
    return part ? part->totalMinimumHeightForWidth(width) : -1;
}

bool PartStack::event(QEvent* event) {
    if (event->type() == QEvent::LayoutRequest) updateGeometry();
    return QStackedWidget::event(event);
}

} // namespace app
