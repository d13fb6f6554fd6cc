#include "app/gui/widgets/plain_table.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/cell_painter.h"
#include "app/gui/widgets/plain_header.h"

#include <QEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <QSignalBlocker>

#include <algorithm>
#include <numeric>
#include <utility>

namespace app {
namespace {

constexpr int narrowest = 48; ///< a column cut to fit
constexpr int margin = CellPainter::margin, markColumn = CellPainter::markColumn,
              tickColumn = CellPainter::tickColumn, lowestRow = CellPainter::lowestRow;

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
    for (int column = 0; column < m_model.columnCount(); ++column)
        setColumnHidden(column, m_leftOut.contains(column));
    m_isTight = false;
    if (m_model.columnCount() > 0 && !fitColumns() && !m_isSmall) {
        m_isTight = true; // smaller words before any is cut
        fitColumns();
    }
    const int around = m_isSmall ? spaceUnit / 2 : spaceUnit;
    const int lines = 2 * QFontMetrics(CellPainter::fontOf(*this)).lineSpacing() + around;
    verticalHeader()->setDefaultSectionSize(hasTwoLines() ? std::max(lowestRow, lines) : lowestRow);
    if (m_leastRows == 0) return;
    const bool hasBar = horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff;
    setMinimumHeight(horizontalHeader()->sizeHint().height() +
                     m_leastRows * verticalHeader()->defaultSectionSize() +
                     (hasBar ? horizontalScrollBar()->sizeHint().height() : 0));
}

/// False: something had to be cut.
bool PlainTable::fitColumns() {
    m_isTwoLines = false;
    const auto sumOf = [](const std::vector<int>& all) { return std::accumulate(all.begin(), all.end(), 0); };
    const std::vector<int> inOneLine = widthsOfWords(false), wrapped = widthsOfWords(true);
    const bool isWrapped = sumOf(inOneLine) > viewport()->width() && sumOf(wrapped) < sumOf(inOneLine);
    if (static_cast<PlainHeader*>(horizontalHeader())->setWrapped(isWrapped)) updateGeometries();
    std::vector<int> widths = isWrapped ? wrapped : inOneLine;
    m_isTwoLines = !m_isFolded && sumOf(widths) > viewport()->width();
    if (m_isTwoLines) widths = widthsOfWords(isWrapped);
    const int excess = sumOf(widths) - viewport()->width();
    if (excess < 0) shareOut(widths, wrapped, -excess);
    const bool isTooWide = excess > 0 && cutWidest(widths, excess) > 0;
    setHorizontalScrollBarPolicy(isTooWide ? Qt::ScrollBarAsNeeded : Qt::ScrollBarAlwaysOff);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    for (int column = 0; column < m_model.columnCount(); ++column)
        if (!isColumnHidden(column)) setColumnWidth(column, widths[static_cast<std::size_t>(column)]);
    return excess <= 0;
}

/// The first column takes it; but first each whose cells need a second line only for want of it.
void PlainTable::shareOut(std::vector<int>& widths, const std::vector<int>& inOneLine, int room) const {
    for (std::size_t column = 0; m_isTwoLines && column < widths.size(); ++column) {
        const int wanted = inOneLine[column] - widths[column];
        if (wanted <= 0 || wanted > room) continue;
        widths[column] += wanted;
        room -= wanted;
    }
    widths.front() += room;
}

/// Takes `excess` off the widest columns, so that none is cut before the wider ones; a number is never cut,
/// nor a heading, and marks are no words. What could not be taken off is left.
int PlainTable::cutWidest(std::vector<int>& widths, int excess) const {
    const auto* header = static_cast<const PlainHeader*>(horizontalHeader());
    const int marks = m_model.isTickable() ? tickColumn + markColumn : 0;
    widths.front() -= marks;
    const auto least = [&](int column) { return std::max(narrowest, header->widthOf(column, true)); };
    while (excess > 0) {
        int widest = -1;
        for (int column = 0; column < m_model.columnCount(); ++column)
            if (!isColumnHidden(column) && !m_model.isNumber(column) && widths[column] > least(column) &&
                (widest < 0 || widths[column] > widths[widest]))
                widest = column;
        if (widest < 0) break;
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

void PlainTable::setLeastRows(int rows) {
    m_leastRows = rows;
    fit();
}

void PlainTable::leaveOut(int column, bool isOut) {
    if (isOut)
        m_leftOut.insert(column);
    else
        m_leftOut.erase(column);
    fit();
}

void PlainTable::fold(const std::map<int, int>& beneath) {
    std::set<int> leftOut;
    for (const auto& [column, other] : beneath)
        leftOut.insert(other);
    const bool isFolded = !beneath.empty();
    if (m_isFolded == isFolded && m_leftOut == leftOut) return;
    m_isFolded = isFolded;
    m_leftOut = std::move(leftOut);
    const QString chosen = this->chosen();
    m_model.setBeneath(beneath);      // fits the columns
    const QSignalBlocker quiet(this); // the same row as before
    choose(chosen);
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
