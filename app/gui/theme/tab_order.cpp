#include "app/gui/theme/tab_order.h"

#include <QLayout>
#include <QScrollArea>

#include <vector>

namespace app {
namespace {

void collectStops(const QLayout& layout, std::vector<QWidget*>& stops);

void collectStops(QWidget& widget, std::vector<QWidget*>& stops) {
    if (widget.focusPolicy() & Qt::TabFocus) stops.push_back(&widget);
    if (const auto* area = qobject_cast<QScrollArea*>(&widget); area && area->widget())
        collectStops(*area->widget(), stops);
    else if (const QLayout* layout = widget.layout())
        collectStops(*layout, stops);
}

void collectStops(const QLayout& layout, std::vector<QWidget*>& stops) {
    for (int i = 0; i < layout.count(); ++i) {
        QLayoutItem& item = *layout.itemAt(i);
        if (QWidget* widget = item.widget())
            collectStops(*widget, stops);
        else if (const QLayout* inner = item.layout())
            collectStops(*inner, stops);
    }
}

} // namespace

void tabAsLaidOut(QWidget& page) {
    std::vector<QWidget*> stops;
    collectStops(page, stops);
    for (std::size_t i = 1; i < stops.size(); ++i)
        QWidget::setTabOrder(stops[i - 1], stops[i]);
}

} // namespace app
