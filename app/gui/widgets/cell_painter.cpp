#include "app/gui/widgets/cell_painter.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/marks.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/plain_table.h"

#include <QPainter>

#include <algorithm>
#include <utility>

namespace app {
namespace {

/// Where words are broken into two lines so that both are as short as they can be; -1: in one.
qsizetype breakOf(const QString& words, const QFontMetrics& metrics) {
    qsizetype best = -1;
    int least = metrics.horizontalAdvance(words);
    for (auto at = words.indexOf(' '); at >= 0; at = words.indexOf(' ', at + 1)) {
        const int width =
            std::max(metrics.horizontalAdvance(words.left(at)), metrics.horizontalAdvance(words.mid(at + 1)));
        if (width < least) {
            least = width;
            best = at;
        }
    }
    return best;
}

/// What stands in a cell of two lines: another column's cell beneath its own, or, where it has no other, the
/// second half of what does not fit.
std::pair<QString, QString> linesOf(const QModelIndex& index, const QFontMetrics& metrics, int width) {
    const QString words = index.data().toString();
    const QVariant beneath = index.data(PlainTableModel::BeneathRole);
    if (beneath.isValid() || metrics.horizontalAdvance(words) <= width) return {words, beneath.toString()};
    const qsizetype at = breakOf(words, metrics);
    return at < 0 ? std::pair(words, QString()) : std::pair(words.left(at), words.mid(at + 1));
}

void paintLine(QPainter& painter, const QRect& box, const QString& words, const QModelIndex& index) {
    painter.drawText(box, index.data(Qt::TextAlignmentRole).toInt(),
                     painter.fontMetrics().elidedText(words, Qt::ElideRight, box.width()));
}

/// The second line quietly, where it is another column's.
void paintLines(QPainter& painter, const QRect& box, const QModelIndex& index, const Palette& palette) {
    const QFontMetrics metrics = painter.fontMetrics();
    const auto [above, beneath] = linesOf(index, metrics, box.width());
    if (beneath.isEmpty()) return paintLine(painter, box, above, index);
    const int line = metrics.lineSpacing(), top = box.center().y() - line;
    paintLine(painter, QRect(box.left(), top, box.width(), line), above, index);
    if (index.data(PlainTableModel::BeneathRole).isValid()) painter.setPen(palette.quiet);
    paintLine(painter, QRect(box.left(), top + line, box.width(), line), beneath, index);
}

/// A box as tall as the marks, with a tick in it.
void drawTick(QPainter& painter, QPoint leftMiddle, bool isTicked, const Palette& palette) {
    constexpr int side = 22;
    const QRect box(leftMiddle.x(), leftMiddle.y() - side / 2, side, side);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette.ink, 2));
    painter.setBrush(isTicked ? QBrush(palette.ink) : QBrush(Qt::NoBrush));
    painter.drawRoundedRect(box, 3, 3);
    if (!isTicked) return;
    painter.setPen(QPen(palette.ground, 3));
    const QPoint tick[] = {box.topLeft() + QPoint(5, 11), box.topLeft() + QPoint(10, 16),
                           box.topLeft() + QPoint(17, 6)};
    painter.drawPolyline(tick, 3);
}

void drawRing(QPainter& painter, const QRect& rect, const QModelIndex& index, const Palette& palette) {
    const int last = index.model()->columnCount() - 1;
    const QRect inner = rect.adjusted(0, 1, -1, -2);
    painter.setPen(QPen(palette.focus, 3, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawLine(inner.topLeft(), inner.topRight());
    painter.drawLine(inner.bottomLeft(), inner.bottomRight());
    if (index.column() == 0)
        painter.drawLine(inner.topLeft() + QPoint(1, 0), inner.bottomLeft() + QPoint(1, 0));
    if (index.column() == last)
        painter.drawLine(inner.topRight() - QPoint(1, 0), inner.bottomRight() - QPoint(1, 0));
}

} // namespace

CellPainter::CellPainter(PlainTable* table)
    : QStyledItemDelegate(table)
    , m_table(*table) {}

QFont CellPainter::fontOf(const PlainTable& table) {
    return app::fontOf(table.isSmall() ? TextRole::Footnote : TextRole::Remark);
}

void CellPainter::paint(QPainter* painter, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const {
    const Palette& palette = currentPalette();
    const bool isCurrent = index.row() == m_table.currentIndex().row();
    painter->save();
    if (isCurrent) painter->fillRect(option.rect, palette.panel);
    QRect box = option.rect.adjusted(margin, 0, -margin, 0);
    const QVariant tick = index.data(Qt::CheckStateRole);
    if (tick.isValid()) {
        drawTick(*painter, QPoint(box.left(), box.center().y()), tick.toInt() == Qt::Checked, palette);
        box.setLeft(box.left() + tickColumn);
    }
    const QVariant mark = index.data(PlainTableModel::MarkRole);
    if (mark.isValid()) {
        const int side = 20;
        const Mark shape = static_cast<Mark>(mark.toInt());
        paintMark(*painter, shape, QRectF(box.left(), box.center().y() - side / 2.0, side, side),
                  toneOf(shape, palette));
        box.setLeft(box.left() + markColumn);
    }
    painter->setFont(fontOf(m_table));
    painter->setPen(palette.ink);
    if (m_table.isFolded())
        paintLines(*painter, box, index, palette);
    else
        paintLine(*painter, box, index.data().toString(), index);
    if (isCurrent && m_table.hasFocus()) drawRing(*painter, option.rect, index, palette);
    painter->restore();
}

QSize CellPainter::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const QFontMetrics metrics(fontOf(m_table));
    int marks = index.data(PlainTableModel::MarkRole).isValid() ? markColumn : 0;
    if (index.data(Qt::CheckStateRole).isValid()) marks += tickColumn;
    const auto [above, beneath] = linesOf(index, metrics, m_table.isFolded() ? 0 : QWIDGETSIZE_MAX);
    int width = metrics.horizontalAdvance(above);
    if (m_table.isFolded()) width = std::max(width, metrics.horizontalAdvance(beneath));
    return {width + 2 * margin + marks + 2,
            std::max(QStyledItemDelegate::sizeHint(option, index).height(), lowestRow)};
}

} // namespace app
