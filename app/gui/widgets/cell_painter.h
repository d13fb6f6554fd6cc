#pragma once

#include <QStyledItemDelegate>

class QPainter;

namespace app {

class PlainTable;
struct Palette;

/// Paints the cells of a PlainTable, its parent: a cell's text, in a folded table in two lines, the tick and
/// the mark before the first one, and a ring around the row that has the keyboard.
class CellPainter : public QStyledItemDelegate {
public:
    // Widths and a height in pixels.
    static constexpr int markColumn = 36, tickColumn = 44, margin = 8, lowestRow = 44;

    explicit CellPainter(PlainTable* table);

    static QFont fontOf(const PlainTable& table);
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

protected:
    /// Ticks are the table's own to set.
    bool editorEvent(QEvent*, QAbstractItemModel*, const QStyleOptionViewItem&, const QModelIndex&) override {
        return false;
    }

private:
    const PlainTable& m_table;
};

} // namespace app
