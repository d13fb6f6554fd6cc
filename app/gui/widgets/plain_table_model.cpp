#include "app/gui/widgets/plain_table_model.h"

#include <algorithm>

namespace app {

void PlainTableModel::setTable(const std::vector<TableColumn>& columns, const std::vector<TableRow>& rows) {
    beginResetModel();
    m_columns = columns;
    m_rows = rows;
    endResetModel();
}

int PlainTableModel::indexOfKey(const QString& key) const {
    const auto found =
        std::find_if(m_rows.begin(), m_rows.end(), [&](const TableRow& row) { return row.key == key; });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

int PlainTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int PlainTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

QVariant PlainTableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const TableRow& row = m_rows[index.row()];
    const QString cell = row.cells.value(index.column());
    switch (role) {
    case Qt::DisplayRole:
    case Qt::ToolTipRole:
        return cell;
    case Qt::AccessibleTextRole:
        if (index.column() > 0 || row.markWord.isEmpty())
            return QStringLiteral("%1: %2").arg(m_columns[index.column()].heading, cell);
        return QStringLiteral("%1: %2").arg(row.markWord, cell);
    case Qt::TextAlignmentRole:
        return headerData(index.column(), Qt::Horizontal, role);
    case MarkRole:
        return index.column() == 0 && row.mark ? QVariant(static_cast<int>(*row.mark)) : QVariant();
    default:
        return {};
    }
}

QVariant PlainTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) return {};
    if (role == Qt::DisplayRole) return m_columns[section].heading;
    if (role == Qt::TextAlignmentRole)
        return static_cast<int>(Qt::AlignVCenter |
                                (m_columns[section].isNumber ? Qt::AlignRight : Qt::AlignLeft));
    return {};
}

} // namespace app
