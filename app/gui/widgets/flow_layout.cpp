#include "app/gui/widgets/flow_layout.h"

#include "app/gui/theme/type_scale.h"

#include <algorithm>

namespace app {

FlowLayout::~FlowLayout() {
    qDeleteAll(m_items);
}

QLayoutItem* FlowLayout::takeAt(int index) {
    return index >= 0 && index < count() ? m_items.takeAt(index) : nullptr;
}

QSize FlowLayout::minimumSize() const {
    QSize size;
    for (const QLayoutItem* item : m_items)
        if (!item->isEmpty()) size = size.expandedTo(item->minimumSize());
    return size;
}

void FlowLayout::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    arrange(rect, true);
}

/// Of one line: words stand in the middle of the fields' height. Gives the line's height.
int FlowLayout::placeLine(const QList<QLayoutItem*>& line, QPoint at, bool doMove) const {
    int height = 0;
    for (const QLayoutItem* item : line)
        height = std::max(height, item->sizeHint().height());
    for (QLayoutItem* item : line) {
        const QSize size = item->sizeHint();
        if (doMove) item->setGeometry(QRect(at + QPoint(0, (height - size.height()) / 2), size));
        at.rx() += size.width() + spaceUnit;
    }
    return height;
}

int FlowLayout::arrange(const QRect& rect, bool doMove) const {
    int y = rect.y(), used = 0;
    QList<QLayoutItem*> line;
    const auto endLine = [&] {
        if (line.isEmpty()) return;
        y += placeLine(line, {rect.x(), y}, doMove) + spaceUnit / 2;
        line.clear();
        used = 0;
    };
    for (QLayoutItem* item : m_items) {
        if (item->isEmpty()) continue;
        const int width = item->sizeHint().width();
        if (!line.isEmpty() && used + width > rect.width()) endLine();
        line << item;
        used += width + spaceUnit;
    }
    endLine();
    return y - rect.y();
}

} // namespace app
