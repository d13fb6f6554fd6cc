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
constexpr int tickColumn = 44;
constexpr int margin = spaceUnit;
constexpr int narrowest = 48; ///< a column cut to fit

QFont cellFont(const QTableView& table) {
    return fontOf(static_cast<const PlainTable&>(table).isSmall() ? TextRole::Footnote : TextRole::Remark);
}

/// As the cells', in bold.
QFont headingFont(const QWidget* table) {
    if (!static_cast<const PlainTable*>(table)->isSmall()) return fontOf(TextRole::Heading);
    QFont font = fontOf(TextRole::Footnote);
    font.setBold(true);
    return font;
}

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
        const QFont font = cellFont(*table);
        painter->setFont(font);
        painter->setPen(palette.ink);
        const int align = index.data(Qt::TextAlignmentRole).toInt();
        painter->drawText(
            box, align, QFontMetrics(font).elidedText(index.data().toString(), Qt::ElideRight, box.width()));
        if (isCurrent && table->hasFocus()) drawRing(*painter, option.rect, index, palette);
        painter->restore();
    }

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const QFontMetrics metrics(cellFont(*static_cast<const QTableView*>(parent())));
        int marks = index.data(PlainTableModel::MarkRole).isValid() ? markColumn : 0;
        if (index.data(Qt::CheckStateRole).isValid()) marks += tickColumn;
        return {metrics.horizontalAdvance(index.data().toString()) + 2 * margin + marks + 2,
                std::max(QStyledItemDelegate::sizeHint(option, index).height(), 44)};
    }

    /// Ticks are the table's own to set.
    bool editorEvent(QEvent*, QAbstractItemModel*, const QStyleOptionViewItem&, const QModelIndex&) override {
        return false;
    }

private:
    /// A box as tall as the marks, with a tick in it.
    static void drawTick(QPainter& painter, QPoint leftMiddle, bool isTicked, const Palette& palette) {
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

    void setSorted(int section, bool isBackwards) {
        m_sorted = section;
        m_isBackwards = isBackwards;
        viewport()->update();
    }

    int widthOf(int section, bool wrapped) const {
        const QFontMetrics metrics(headingFont(parentWidget()));
        const QString words = model()->headerData(section, Qt::Horizontal, Qt::DisplayRole).toString();
        int width = 0;
        for (const QString& part : wrapped ? words.split(' ') : QStringList{words})
            width = std::max(width, metrics.horizontalAdvance(part));
        return width + 2 * margin + 4 + (sectionsClickable() ? sortMark : 0);
    }

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override {
        const Palette& palette = currentPalette();
        painter->save();
        painter->fillRect(rect, palette.ground);
        painter->setPen(palette.line);
        painter->drawLine(rect.bottomLeft(), rect.bottomRight());
        painter->setFont(headingFont(parentWidget()));
        painter->setPen(palette.quiet);
        painter->drawText(rect.adjusted(margin, 0, -margin, 0),
                          model()->headerData(section, Qt::Horizontal, Qt::TextAlignmentRole).toInt() |
                              (m_isWrapped ? Qt::TextWordWrap : 0),
                          model()->headerData(section, Qt::Horizontal, Qt::DisplayRole).toString());
        if (section == m_sorted) drawSorted(*painter, rect, palette);
        painter->restore();
    }

    QSize sectionSizeFromContents(int section) const override {
        return {widthOf(section, m_isWrapped),
                m_isWrapped ? 40 + QFontMetrics(headingFont(parentWidget())).lineSpacing() : 40};
    }

private:
    static constexpr int sortMark = 20; ///< its width

    /// A triangle that points to the smaller end.
    void drawSorted(QPainter& painter, const QRect& rect, const Palette& palette) const {
        const QPointF middle(rect.right() - 12, rect.center().y());
        const double up = m_isBackwards ? -1 : 1;
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette.ink);
        painter.drawPolygon(QPolygonF(
            {middle + QPointF(-7, 5 * up), middle + QPointF(7, 5 * up), middle + QPointF(0, -6 * up)}));
    }

    bool m_isWrapped = false;
    int m_sorted = -1;
    bool m_isBackwards = false;
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

/// Takes `excess` off the widest columns, so that none is cut before the wider ones; a number is never cut,
/// and marks are no words. What could not be taken off is left.
int PlainTable::cutWidest(std::vector<int>& widths, int excess) const {
    const int marks = m_model.isTickable() ? tickColumn + markColumn : 0;
    widths.front() -= marks;
    while (excess > 0) {
        int widest = -1;
        for (int column = 0; column < m_model.columnCount(); ++column)
            if (!m_model.isNumber(column) && (widest < 0 || widths[column] > widths[widest])) widest = column;
        if (widest < 0 || widths[widest] <= narrowest) break;
        --widths[widest];
        --excess;
    }
    widths.front() += marks;
    return excess;
}

void PlainTable::setSmall(bool isSmall) {
    m_isSmall = isSmall;
    fit();
}

void PlainTable::leaveOut(int column, bool isOut) {
    if (isOut)
        m_leftOut.insert(column);
    else
        m_leftOut.erase(column);
    fit();
}

void PlainTable::leaveOut(std::set<int> columns) {
    if (m_leftOut == columns) return;
    m_leftOut = std::move(columns);
    fit();
}

void PlainTable::showSorted(int column, bool isBackwards) {
    auto* header = static_cast<PlainHeader*>(horizontalHeader());
    if (!header->sectionsClickable()) {
        header->setSectionsClickable(true);
        connect(header, &QHeaderView::sectionClicked, this, &PlainTable::sortWanted);
        fit();
    }
    header->setSorted(column, isBackwards);
}

void PlainTable::tick(int row) {
    const QString& key = m_model.shown(row).key;
    std::set<QString> ticked = m_model.ticked();
    if (!ticked.erase(key)) ticked.insert(key);
    m_tickedLast = key;
    m_model.setTicked(std::move(ticked));
    emit ticksChanged();
}

void PlainTable::tickTo(int row) {
    const int from = m_model.indexOfKey(m_tickedLast);
    if (from < 0) return tick(row);
    std::set<QString> ticked = m_model.ticked();
    for (int at = std::min(from, row); at <= std::max(from, row); ++at)
        ticked.insert(m_model.shown(at).key);
    m_model.setTicked(std::move(ticked));
    emit ticksChanged();
}

bool PlainTable::isOnTick(const QPoint& at, const QModelIndex& index) const {
    return m_model.isTickable() && index.column() == 0 &&
           at.x() < visualRect(index).left() + margin + tickColumn;
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
    return row >= 0 && row < m_model.rowCount() ? m_model.shown(row).key : QString();
}

void PlainTable::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (m_model.isTickable() && !chosen().isEmpty() && event->key() == Qt::Key_Space) {
        if (event->modifiers() & Qt::ShiftModifier)
            tickTo(currentIndex().row());
        else
            tick(currentIndex().row());
        return;
    }
    if (m_model.isTickable() && event->matches(QKeySequence::SelectAll)) {
        std::set<QString> all = m_model.ticked();
        for (int row = 0; row < m_model.rowCount(); ++row)
            all.insert(m_model.shown(row).key);
        m_model.setTicked(std::move(all));
        emit ticksChanged();
        return;
    }
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
    if (event->button() != Qt::LeftButton || !index.isValid()) return;
    const bool isRange = event->modifiers() & Qt::ShiftModifier,
               isOne = event->modifiers() & Qt::ControlModifier;
    if (m_model.isTickable() && isRange)
        tickTo(index.row());
    else if (m_model.isTickable() && (isOne || isOnTick(event->pos(), index)))
        tick(index.row());
    else
        emit rowPressed(m_model.shown(index.row()).key);
}

void PlainTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    viewport()->update();
    if (current.isValid() && current.row() != previous.row())
        emit rowChosen(m_model.shown(current.row()).key);
}

void PlainTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) viewport()->update();
}

} // namespace app
