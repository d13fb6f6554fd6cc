#include "app/gui/widgets/plain_table.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"

#include <QEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>
#include <numeric>
#include <utility>

namespace app {
namespace {

constexpr int markColumn = 36;
constexpr int margin = spaceUnit;
constexpr int narrowest = 48; ///< a column cut to fit

/// A cell's text, the mark before the first one, and a ring around the row that has the keyboard.
class CellPainter : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const Palette& palette = currentPalette();
        const auto* table = static_cast<const QTableView*>(parent());
        const bool isCurrent = index.row() == table->currentIndex().row();
        painter->save();
        if (isCurrent) painter->fillRect(option.rect, palette.panel);
        QRect box = option.rect.adjusted(margin, 0, -margin, 0);
        const QVariant mark = index.data(PlainTableModel::MarkRole);
        if (mark.isValid()) {
            const int side = 20;
            const Mark shape = static_cast<Mark>(mark.toInt());
            paintMark(*painter, shape, QRectF(box.left(), box.center().y() - side / 2.0, side, side),
                      toneOf(shape, palette));
            box.setLeft(box.left() + markColumn);
        }
        painter->setFont(fontOf(TextRole::Remark));
        painter->setPen(palette.ink);
        const int align = index.data(Qt::TextAlignmentRole).toInt();
        painter->drawText(
            box, align, option.fontMetrics.elidedText(index.data().toString(), Qt::ElideRight, box.width()));
        if (isCurrent && table->hasFocus()) drawRing(*painter, option.rect, index, palette);
        painter->restore();
    }

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const QFontMetrics metrics(fontOf(TextRole::Remark));
        const int mark = index.data(PlainTableModel::MarkRole).isValid() ? markColumn : 0;
        return {metrics.horizontalAdvance(index.data().toString()) + 2 * margin + mark + 2,
                std::max(QStyledItemDelegate::sizeHint(option, index).height(), 44)};
    }

private:
    static void drawRing(QPainter& painter, const QRect& rect, const QModelIndex& index,
                         const Palette& palette) {
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
};

/// Headings as quiet bold words over a line; in two lines where the columns need the room.
class PlainHeader : public QHeaderView {
public:
    explicit PlainHeader(QWidget* parent)
        : QHeaderView(Qt::Horizontal, parent) {
        setSectionsClickable(false);
        setHighlightSections(false);
        setFocusPolicy(Qt::NoFocus);
    }

    /// Whether that makes it higher or lower.
    bool setWrapped(bool wrapped) {
        if (m_isWrapped == wrapped) return false;
        m_isWrapped = wrapped;
        headerDataChanged(Qt::Horizontal, 0, count() - 1); // forgets its height
        return true;
    }

    int widthOf(int section, bool wrapped) const {
        const QFontMetrics metrics(fontOf(TextRole::Heading));
        const QString words = model()->headerData(section, Qt::Horizontal, Qt::DisplayRole).toString();
        int width = 0;
        for (const QString& part : wrapped ? words.split(' ') : QStringList{words})
            width = std::max(width, metrics.horizontalAdvance(part));
        return width + 2 * margin + 4;
    }

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override {
        const Palette& palette = currentPalette();
        painter->save();
        painter->fillRect(rect, palette.ground);
        painter->setPen(palette.line);
        painter->drawLine(rect.bottomLeft(), rect.bottomRight());
        painter->setFont(fontOf(TextRole::Heading));
        painter->setPen(palette.quiet);
        painter->drawText(rect.adjusted(margin, 0, -margin, 0),
                          model()->headerData(section, Qt::Horizontal, Qt::TextAlignmentRole).toInt() |
                              (m_isWrapped ? Qt::TextWordWrap : 0),
                          model()->headerData(section, Qt::Horizontal, Qt::DisplayRole).toString());
        painter->restore();
    }

    QSize sectionSizeFromContents(int section) const override {
        return {widthOf(section, m_isWrapped),
                m_isWrapped ? 40 + QFontMetrics(fontOf(TextRole::Heading)).lineSpacing() : 40};
    }

private:
    bool m_isWrapped = false;
};

} // namespace

PlainTable::PlainTable(PlainTableModel& model, QWidget* parent)
    : QTableView(parent)
    , m_model(model) {
    setModel(&model);
    setItemDelegate(new CellPainter(this));
    setHorizontalHeader(new PlainHeader(this));
    verticalHeader()->hide();
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    setCornerButtonEnabled(false);
    setTabKeyNavigation(false);
    setSelectionMode(QAbstractItemView::NoSelection);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setWordWrap(false);
    horizontalHeader()->setMinimumSectionSize(narrowest);
    connect(&model, &QAbstractItemModel::modelReset, this, &PlainTable::fit);
    fit();
}

/// How wide each column's words are; 0 for one that is left out.
std::vector<int> PlainTable::widthsOfWords(bool wrapped) const {
    const auto* header = static_cast<const PlainHeader*>(horizontalHeader());
    std::vector<int> widths;
    for (int column = 0; column < m_model.columnCount(); ++column)
        widths.push_back(isColumnHidden(column)
                             ? 0
                             : std::max(sizeHintForColumn(column), header->widthOf(column, wrapped)));
    return widths;
}

/// Higher headings may bring a scroll bar, and it takes room: then the columns are fitted to what is left.
void PlainTable::fit() {
    m_mustFit = true;
    if (std::exchange(m_isFitting, true)) return;
    for (int round = 0; round < 3 && std::exchange(m_mustFit, false); ++round)
        fitOnce();
    m_isFitting = false;
}

void PlainTable::fitOnce() {
    verticalHeader()->setDefaultSectionSize(44);
    if (m_model.columnCount() == 0) return;
    for (int column = 0; column < m_model.columnCount(); ++column)
        setColumnHidden(column, m_leftOut.contains(column));
    const auto sumOf = [](const std::vector<int>& all) { return std::accumulate(all.begin(), all.end(), 0); };
    std::vector<int> widths = widthsOfWords(false);
    const std::vector<int> wrapped = widthsOfWords(true);
    const bool isWrapped = sumOf(widths) > viewport()->width() && sumOf(wrapped) < sumOf(widths);
    if (static_cast<PlainHeader*>(horizontalHeader())->setWrapped(isWrapped)) updateGeometries();
    if (isWrapped) widths = wrapped;
    const int excess = sumOf(widths) - viewport()->width();
    if (excess < 0) widths.front() -= excess;
    const bool isTooWide = excess > 0 && cutWidest(widths, excess) > 0;
    setHorizontalScrollBarPolicy(isTooWide ? Qt::ScrollBarAsNeeded : Qt::ScrollBarAlwaysOff);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    for (int column = 0; column < m_model.columnCount(); ++column)
        if (!isColumnHidden(column)) setColumnWidth(column, widths[static_cast<std::size_t>(column)]);
}

/// Takes `excess` off the widest columns, so that none is cut before the wider ones; a number is never cut.
/// What could not be taken off is left.
int PlainTable::cutWidest(std::vector<int>& widths, int excess) const {
    while (excess > 0) {
        int widest = -1;
        for (int column = 0; column < m_model.columnCount(); ++column)
            if (!m_model.isNumber(column) && (widest < 0 || widths[column] > widths[widest])) widest = column;
        if (widest < 0 || widths[widest] <= narrowest) break;
        --widths[widest];
        --excess;
    }
    return excess;
}

void PlainTable::leaveOut(int column, bool isOut) {
    if (isOut)
        m_leftOut.insert(column);
    else
        m_leftOut.erase(column);
    fit();
}

void PlainTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    fit();
}

void PlainTable::choose(const QString& key) {
    const int row = m_model.indexOfKey(key);
    if (row >= 0) setCurrentIndex(m_model.index(row, 0));
}

QString PlainTable::chosen() const {
    const int row = currentIndex().row();
    return row >= 0 && row < m_model.rowCount() ? m_model.rows()[row].key : QString();
}

void PlainTable::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if ((enter || event->key() == Qt::Key_Space) && !chosen().isEmpty()) {
        emit rowPressed(chosen());
        return;
    }
    // Letters are codes, not a search in the table.
    if (!event->text().isEmpty() && event->text().at(0).isPrint()) {
        event->ignore();
        return;
    }
    QTableView::keyPressEvent(event);
}

void PlainTable::mouseReleaseEvent(QMouseEvent* event) {
    QTableView::mouseReleaseEvent(event);
    const QModelIndex index = indexAt(event->pos());
    if (event->button() == Qt::LeftButton && index.isValid())
        emit rowPressed(m_model.rows()[index.row()].key);
}

void PlainTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    viewport()->update();
    if (current.isValid() && current.row() != previous.row())
        emit rowChosen(m_model.rows()[current.row()].key);
}

void PlainTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) viewport()->update();
}

} // namespace app
