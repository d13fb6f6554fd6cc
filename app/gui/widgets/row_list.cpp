#include "app/gui/widgets/row_list.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/row_list_delegate.h"
#include "app/gui/widgets/row_list_model.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>

namespace app {

RowList::RowList(RowListModel& model, QWidget* parent)
    : QListView(parent)
    , m_model(model)
    , m_delegate(new RowListDelegate(this)) {
    setModel(&model);
    setItemDelegate(m_delegate);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionMode(QAbstractItemView::NoSelection);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setResizeMode(QListView::Adjust);
    // A list of thousands is measured a piece at a time, between whatever else there is to do.
    setLayoutMode(QListView::Batched);
    setBatchSize(200);
    setWordWrap(true);
    setMouseTracking(true);
    verticalScrollBar()->setSingleStep(4 * spaceUnit);
    m_delegate->setFingerHeight(fingerHeight(screen()));
}

QString RowList::currentKey() const {
    const QModelIndex current = currentIndex();
    return current.isValid() ? m_model.rows()[current.row()].key : QString();
}

bool RowList::isTyping() const {
    return state() == QAbstractItemView::EditingState;
}

void RowList::typeNumber(const QString& key) {
    edit(m_model.index(m_model.indexOfKey(key)));
}

void RowList::press(const QModelIndex& index) {
    if (!index.isValid()) return;
    const ListRow& row = m_model.rows()[index.row()];
    if (row.isPressable) emit rowPressed(QString(row.key)); // a copy: what hears it may set new rows
}

void RowList::keyPressEvent(QKeyEvent* event) {
    const QModelIndex current = currentIndex();
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if ((enter || event->key() == Qt::Key_Space) && !isTyping()) {
        press(current);
        return;
    }
    if (event->key() == Qt::Key_F2 && current.isValid()) {
        edit(current);
        return;
    }
    // Letters are codes, not a search in the list.
    if (!event->text().isEmpty() && event->text().at(0).isPrint()) {
        event->ignore();
        return;
    }
    QListView::keyPressEvent(event);
}

void RowList::mouseReleaseEvent(QMouseEvent* event) {
    QListView::mouseReleaseEvent(event);
    if (event->button() == Qt::LeftButton) press(indexAt(event->pos()));
}

void RowList::resizeEvent(QResizeEvent* event) {
    QListView::resizeEvent(event);
    // Remarks wrap to the new width, so every height may change.
    scheduleDelayedItemsLayout();
}

QModelIndex RowList::nextLine(int from, int step) const {
    for (int row = from + step; row >= 0 && row < m_model.rowCount(); row += step)
        if (!m_model.rows()[row].isHeading) return m_model.index(row);
    return {};
}

QModelIndex RowList::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
    const int here = currentIndex().row(); // -1 when there is none
    QModelIndex next;
    if (action == MoveDown || action == MoveNext)
        next = nextLine(here, 1);
    else if (action == MoveUp || action == MovePrevious)
        next = nextLine(here, -1);
    else if (action == MoveHome)
        next = nextLine(-1, 1);
    else if (action == MoveEnd)
        next = nextLine(m_model.rowCount(), -1);
    else
        next = QListView::moveCursor(action, modifiers);
    return next.isValid() ? next : currentIndex();
}

} // namespace app
