#include "app/gui/widgets/flow_layout.h"

#include "app/gui/theme/type_scale.h"

#include <QHBoxLayout>
#include <QWidget>

#include <algorithm>

namespace app {
namespace {

/// Words that wrap need no more than that of a line that they share.
constexpr int roomForWords = 280;

bool isLeftOut(QLayoutItem& item) {
    return item.isEmpty() && !item.spacerItem();
}

int wantedBy(const QLayoutItem& item) {
    const int hint = item.sizeHint().width();
    return item.hasHeightForWidth() ? std::max(item.minimumSize().width(), std::min(hint, roomForWords))
                                    : hint;
}

int heightOf(const QLayoutItem& item, int width) {
    return item.hasHeightForWidth() ? item.heightForWidth(width) : item.sizeHint().height();
}

} // namespace

FlowLayout::~FlowLayout() {
    while (QLayoutItem* item = takeAt(0))
        delete item; // a row among them takes itself out of what it is in
}

void FlowLayout::addExpanding(QWidget* widget) {
    addWidget(widget);
    m_expanding << m_items.back();
}

void FlowLayout::insertWidget(int index, QWidget* widget) {
    addWidget(widget);
    m_items.move(m_items.size() - 1, index);
}

void FlowLayout::addStretch() {
    addItem(new QSpacerItem(0, 0));
    m_expanding << m_items.back();
}

QHBoxLayout* FlowLayout::addRow(bool isExpanding) {
    auto* row = new QHBoxLayout;
    row->setSpacing(spaceUnit);
    addChildLayout(row);
    addItem(row);
    if (isExpanding) m_expanding << row;
    return row;
}

QLayoutItem* FlowLayout::takeAt(int index) {
    if (index < 0 || index >= count()) return nullptr;
    m_expanding.removeAll(m_items[index]);
    return m_items.takeAt(index);
}

QSize FlowLayout::sizeHint() const {
    QSize size;
    for (QLayoutItem* item : m_items) {
        if (isLeftOut(*item)) continue;
        size.rwidth() += wantedBy(*item) + (item->spacerItem() ? 0 : spaceUnit);
        size.setHeight(std::max(size.height(), item->sizeHint().height()));
    }
    return size.grownBy(contentsMargins());
}

QSize FlowLayout::minimumSize() const {
    QSize size;
    for (const QLayoutItem* item : m_items)
        if (!item->isEmpty()) size = size.expandedTo(item->minimumSize());
    return size.grownBy(contentsMargins());
}

void FlowLayout::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    arrange(rect.marginsRemoved(contentsMargins()), true);
}

int FlowLayout::heightForWidth(int width) const {
    const QMargins around = contentsMargins();
    const int height = arrange(QRect(0, 0, width - around.left() - around.right(), 0), false);
    return height + around.top() + around.bottom();
}

/// Words stand in the middle of the fields' height. Gives the line's height.
int FlowLayout::placeLine(QList<Placed> line, const QRect& room, bool doMove) const {
    int left = room.width() + spaceUnit, expanding = 0, height = 0;
    for (const Placed& each : line) {
        left -= each.width + (each.item->spacerItem() ? 0 : spaceUnit);
        expanding += m_expanding.contains(each.item);
    }
    for (Placed& each : line) {
        if (left > 0 && m_expanding.contains(each.item)) each.width += left / expanding;
        height = std::max(height, heightOf(*each.item, each.width));
    }
    int x = room.x();
    for (const Placed& each : line) {
        const int own = heightOf(*each.item, each.width);
        if (doMove) each.item->setGeometry(QRect(x, room.y() + (height - own) / 2, each.width, own));
        x += each.width + (each.item->spacerItem() ? 0 : spaceUnit);
    }
    return height;
}

int FlowLayout::arrange(const QRect& rect, bool doMove) const {
    int y = rect.y(), used = 0;
    QList<Placed> line;
    const auto endLine = [&] {
        if (line.isEmpty()) return;
        y += placeLine(line, QRect(rect.x(), y, rect.width(), 0), doMove) + spaceUnit / 2;
        line.clear();
        used = 0;
    };
    for (QLayoutItem* item : m_items) {
        if (isLeftOut(*item)) continue;
        const int width = std::min(wantedBy(*item), std::max(rect.width(), item->minimumSize().width()));
        if (used > 0 && used + width > rect.width()) {
            const Placed last = line.back();
            const bool isRight = last.item->spacerItem(); // and so in the next line
            if (isRight) line.removeLast();
            endLine();
            if (isRight) line << last;
        }
        line << Placed{item, width};
        if (!item->spacerItem()) used += width + spaceUnit;
    }
    endLine();
    return std::max(0, y - rect.y() - spaceUnit / 2);
}

} // namespace app
