#include "app/gui/gear/spreadsheet/sheet_table_model.h"

#include "app/gui/gear/spreadsheet/sheet_words.h"
#include "app/gui/theme/dress.h"
#include "app/gui/theme/marks.h"
#include "app/gui/theme/palette.h"
#include "app/text/outlook_sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QPainter>
#include <QPixmap>
#include <QStringList>

#include <algorithm>

namespace app {
namespace {

constexpr int markSide = 20;

QPixmap lookMark() {
    QPixmap pixmap(markSide, markSide);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    paintMark(painter, Mark::Look, QRectF(0, 0, markSide, markSide), toneOf(Mark::Look, currentPalette()));
    return pixmap;
}

} // namespace

void SheetTableModel::setTable(std::shared_ptr<const core::Workbook> book, const core::TableLayout& layout) {
    beginResetModel();
    m_book = std::move(book);
    m_layout = layout;
    m_table = nullptr;
    for (const core::SheetTable& table : m_book->tables)
        if (table.name == layout.table) m_table = &table;
    m_first = 0;
    if (m_table)
        while (m_first < m_table->rows.size() && m_table->rows[m_first].number <= layout.headingRow)
            ++m_first;
    m_reasons.clear();
    m_byRow.clear();
    endResetModel();
}

void SheetTableModel::clear() {
    beginResetModel();
    m_book.reset();
    m_table = nullptr;
    m_layout = {};
    m_reasons.clear();
    m_byRow.clear();
    endResetModel();
}

void SheetTableModel::setReasons(std::vector<core::RejectedRow> reasons, Told told, core::SheetId sheet) {
    m_sheet = sheet;
    m_told = told;
    m_reasons = std::move(reasons);
    m_byRow.clear();
    for (std::size_t i = 0; i < m_reasons.size(); ++i)
        m_byRow[m_reasons[i].row].push_back(i);
    if (rowCount() == 0) return;
    emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    emit headerDataChanged(Qt::Horizontal, ReasonColumn, ReasonColumn);
}

const std::vector<std::size_t>* SheetTableModel::reasonsIn(int row) const {
    if (!m_table || row < 0 || row >= rowCount()) return nullptr;
    const auto found = m_byRow.find(m_table->rows[m_first + static_cast<std::size_t>(row)].number);
    return found == m_byRow.end() ? nullptr : &found->second;
}

QString SheetTableModel::inWords(const core::RejectedRow& reason) const {
    if (m_told == Told::Warned) return warningInWords(reason.reason);
    const QString words = refusalInWords(m_sheet, reason.reason);
    return reason.column.empty() ? words : tr("%1: %2").arg(text(reason.column), words);
}

QString SheetTableModel::reasonOf(int row) const {
    const auto* places = reasonsIn(row);
    if (!places) return {};
    QStringList reasons;
    for (const std::size_t place : *places)
        reasons << inWords(m_reasons[place]);
    return reasons.join(QStringLiteral("; "));
}

int SheetTableModel::nextWithReason(int row) const {
    const int count = rowCount();
    for (int step = 1; step <= count && !m_byRow.empty(); ++step)
        if (const int at = (row + step) % count; reasonsIn(at)) return at;
    return -1;
}

bool SheetTableModel::isRefused(int row, int column) const {
    const auto* places = reasonsIn(row);
    return places && std::any_of(places->begin(), places->end(), [&](std::size_t place) {
               return m_reasons[place].column == m_layout.columns[static_cast<std::size_t>(column)].heading;
           });
}

int SheetTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || !m_table ? 0 : static_cast<int>(m_table->rows.size() - m_first);
}

int SheetTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() || !m_table ? 0 : ownColumns + static_cast<int>(m_layout.columns.size());
}

QVariant SheetTableModel::data(const QModelIndex& index, int role) const {
    if (!m_table || !index.isValid()) return {};
    const core::TableRow& row = m_table->rows[m_first + static_cast<std::size_t>(index.row())];
    const int column = index.column() - ownColumns;
    const bool isShown = role == Qt::DisplayRole || role == Qt::ToolTipRole || role == Qt::AccessibleTextRole;
    if (isShown && index.column() == NumberColumn) return role == Qt::ToolTipRole ? QVariant() : row.number;
    if (isShown && index.column() == ReasonColumn) return reasonOf(index.row());
    if (isShown) return text(row.at(m_layout.columns[static_cast<std::size_t>(column)].at).text).simplified();
    const bool isRefusedHere = column >= 0 ? isRefused(index.row(), column)
                                           : index.column() == ReasonColumn && reasonsIn(index.row());
    if (role == Qt::ForegroundRole && isRefusedHere) return currentPalette().look;
    if (role == Qt::DecorationRole && isRefusedHere) return lookMark();
    if (role == Qt::TextAlignmentRole && index.column() == NumberColumn)
        return static_cast<int>(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

QVariant SheetTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (!m_table || orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    if (section == NumberColumn) return tr("Row");
    if (section == ReasonColumn)
        return m_told == Told::Warned ? tr("Is it meant so?") : tr("Why it is refused");
    return text(m_layout.columns[static_cast<std::size_t>(section - ownColumns)].heading).simplified();
}

} // namespace app
