#include "app/gui/gear/spreadsheet/sheet_table_view.h"

#include "app/gui/gear/spreadsheet/sheet_table_model.h"
#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QStyledItemDelegate>

namespace app {
namespace {

constexpr int sheetRowHeight = 44;
constexpr int sheetColumnWidth = 232; ///< a list above it can be read
constexpr int sheetNumberWidth = 88;
constexpr int sheetReasonWidth = 360;

/// The row that the keyboard is on stands on the panel's ground, with a ring.
class SheetCellPainter : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const Palette& palette = currentPalette();
        const auto* table = static_cast<const QTableView*>(parent());
        const bool isCurrent = index.row() == table->currentIndex().row();
        if (isCurrent) painter->fillRect(option.rect, palette.panel);
        QStyleOptionViewItem plain = option;
        plain.state &= ~(QStyle::State_Selected | QStyle::State_HasFocus | QStyle::State_MouseOver);
        plain.rect.adjust(spaceUnit, 0, -spaceUnit, 0);
        QStyledItemDelegate::paint(painter, plain, index);
        if (!isCurrent || !table->hasFocus()) return;
        painter->save();
        painter->setPen(QPen(palette.focus, 3, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter->drawLine(option.rect.topLeft() + QPoint(0, 1), option.rect.topRight() + QPoint(0, 1));
        painter->drawLine(option.rect.bottomLeft() - QPoint(0, 1), option.rect.bottomRight() - QPoint(0, 1));
        painter->restore();
    }
};

} // namespace

SheetTableView::SheetTableView(SheetTableModel& model, QWidget* parent)
    : QTableView(parent) {
    setModel(&model);
    setItemDelegate(new SheetCellPainter(this));
    setFont(fontOf(TextRole::Remark));
    setFrameShape(QFrame::NoFrame);
    setShowGrid(false);
    setWordWrap(false);
    setTabKeyNavigation(false);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionMode(QAbstractItemView::NoSelection);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalHeader()->setVisible(false);
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed); // none is measured
    verticalHeader()->setDefaultSectionSize(sheetRowHeight);
    horizontalHeader()->setDefaultSectionSize(sheetColumnWidth);
    horizontalHeader()->setSectionsClickable(false);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    horizontalHeader()->setFont(fontOf(TextRole::Heading));
    horizontalHeader()->setStyleSheet(
        QStringLiteral("QHeaderView { background: palette(window); border: none; }"
                       "QHeaderView::section { background: palette(window); border: none; padding: 4px 8px;"
                       " border-bottom: 1px solid palette(mid); }"));
    connect(&model, &QAbstractItemModel::modelReset, this, [this] {
        if (this->model()->columnCount() == 0) return;
        setColumnWidth(SheetTableModel::NumberColumn, sheetNumberWidth);
        setColumnWidth(SheetTableModel::ReasonColumn, sheetReasonWidth);
    });
}

void SheetTableView::setReasonShown(bool isShown) {
    if (model()->columnCount() > 0) setColumnHidden(SheetTableModel::ReasonColumn, !isShown);
}

void SheetTableView::goTo(int row) {
    setCurrentIndex(model()->index(row, SheetTableModel::NumberColumn));
    scrollTo(model()->index(row, SheetTableModel::NumberColumn));
}

void SheetTableView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    viewport()->update();
    emit rowChanged();
}

void SheetTableView::keyPressEvent(QKeyEvent* event) {
    const bool left = event->key() == Qt::Key_Left;
    if (left || event->key() == Qt::Key_Right) {
        horizontalScrollBar()->setValue(horizontalScrollBar()->value() +
                                        (left ? -sheetColumnWidth : sheetColumnWidth));
        return;
    }
    QTableView::keyPressEvent(event);
}

} // namespace app
