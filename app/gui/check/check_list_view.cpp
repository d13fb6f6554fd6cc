#include "app/gui/check/check_list_view.h"

#include "app/gui/check/check_list_model.h"
#include "app/gui/check/check_row_delegate.h"
#include "app/gui/theme/type_scale.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>

namespace app {

CheckListView::CheckListView(CheckListModel& model, QWidget* parent)
    : QListView(parent)
    , m_model(model)
    , m_delegate(new CheckRowDelegate(this)) {
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

QString CheckListView::currentCode() const {
    const QModelIndex current = currentIndex();
    return current.isValid() ? m_model.rows()[current.row()].code : QString();
}

bool CheckListView::isTyping() const {
    return state() == QAbstractItemView::EditingState;
}

void CheckListView::press(const QModelIndex& index) {
    if (!index.isValid()) return;
    const CheckRow row = m_model.rows()[index.row()];
    if (row.kind == CheckRow::Kind::Kit && !row.code.isEmpty()) emit kitPressed(row.code);
    if (row.kind != CheckRow::Kind::Point) return;
    switch (row.pointKind) {
    case core::PointKind::Look:
        emit lookPressed(row.title, row.mark != Mark::Found);
        break;
    case core::PointKind::Measure:
        edit(index);
        break;
    case core::PointKind::Timed:
        emit clockPressed(row.title);
        break;
    }
}

void CheckListView::keyPressEvent(QKeyEvent* event) {
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

void CheckListView::mouseReleaseEvent(QMouseEvent* event) {
    QListView::mouseReleaseEvent(event);
    if (event->button() == Qt::LeftButton) press(indexAt(event->pos()));
}

void CheckListView::resizeEvent(QResizeEvent* event) {
    QListView::resizeEvent(event);
    // Remarks wrap to the new width, so every height may change.
    scheduleDelayedItemsLayout();
}

QModelIndex CheckListView::nextLine(int from, int step) const {
    for (int row = from + step; row >= 0 && row < m_model.rowCount(); row += step)
        if (m_model.rows()[row].kind != CheckRow::Kind::Heading) return m_model.index(row);
    return {};
}

QModelIndex CheckListView::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
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
