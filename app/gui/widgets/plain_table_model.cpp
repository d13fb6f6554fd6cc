#include "app/gui/widgets/plain_table_model.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace app {

void PlainTableModel::setTable(const std::vector<TableColumn>& columns, std::vector<TableRow> rows) {
    beginResetModel();
    m_columns = columns;
    m_rows = std::move(rows);
    m_shown.resize(m_rows.size());
    std::iota(m_shown.begin(), m_shown.end(), 0);
    endResetModel();
}

void PlainTableModel::setShown(std::vector<int> places) {
    beginResetModel();
    m_shown = std::move(places);
    endResetModel();
}

void PlainTableModel::setBeneath(std::map<int, int> beneath) {
    beginResetModel();
    m_beneath = std::move(beneath);
    endResetModel();
}

int PlainTableModel::beneath(int column) const {
    const auto found = m_beneath.find(column);
    return found == m_beneath.end() || found->second >= columnCount() ? -1 : found->second;
}

void PlainTableModel::setTicked(std::set<QString> keys) {
    m_ticked = std::move(keys);
    if (rowCount() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, 0), {Qt::CheckStateRole});
}

int PlainTableModel::indexOfKey(const QString& key) const {
    const auto found = std::find_if(m_shown.begin(), m_shown.end(), [&](int place) {
        return m_rows[static_cast<std::size_t>(place)].key == key;
    });
    return found == m_shown.end() ? -1 : static_cast<int>(found - m_shown.begin());
}

int PlainTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}

Qt::ItemFlags PlainTableModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    return m_isTickable && index.column() == 0 ? flags | Qt::ItemIsUserCheckable : flags;
}

int PlainTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

/// The mark's meaning in the place of the first heading.
QString PlainTableModel::readAloud(const TableRow& row, int column) const {
    const bool isOfMark = column == 0 && !row.markWord.isEmpty();
    QString words = QStringLiteral("%1: %2").arg(isOfMark ? row.markWord : m_columns[column].heading,
                                                 row.cells.value(column));
    if (const int other = beneath(column); other >= 0 && !row.cells.value(other).isEmpty())
        words += QStringLiteral(", %1: %2").arg(m_columns[other].heading, row.cells.value(other));
    return words;
}

QVariant PlainTableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const TableRow& row = shown(index.row());
    const QString cell = row.cells.value(index.column());
    switch (role) {
    case Qt::DisplayRole:
    case Qt::ToolTipRole:
        return cell;
    case Qt::AccessibleTextRole:
        return readAloud(row, index.column());
    case Qt::TextAlignmentRole:
        return headerData(index.column(), Qt::Horizontal, role);
    case Qt::CheckStateRole:
        if (!m_isTickable || index.column() > 0) return {};
        return m_ticked.contains(row.key) ? Qt::Checked : Qt::Unchecked;
    case BeneathRole: {
        const int other = beneath(index.column());
        return other < 0 ? QVariant() : row.cells.value(other);
    }
    case MarkRole:
        return index.column() == 0 && row.mark ? QVariant(static_cast<int>(*row.mark)) : QVariant();
    default:
        return {};
    }
}

QVariant PlainTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) return {};
    if (role == Qt::DisplayRole) {
        const int other = beneath(section);
        return other < 0 ? m_columns[section].heading
                         : QStringLiteral("%1, %2").arg(m_columns[section].heading, m_columns[other].heading);
    }
    if (role == Qt::TextAlignmentRole)
        return static_cast<int>(Qt::AlignVCenter |
                                (m_columns[section].isNumber ? Qt::AlignRight : Qt::AlignLeft));
    return {};
}

} // namespace app
