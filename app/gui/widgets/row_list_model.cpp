#include "app/gui/widgets/row_list_model.h"

#include "app/gui/theme/dress.h"

#include <QLocale>
#include <QTimer>

#include <algorithm>
#include <utility>

namespace app {

RowListModel::RowListModel(QObject* parent)
    : QAbstractListModel(parent) {}

void RowListModel::setRows(const std::vector<ListRow>& rows) {
    // Lines go and come between what stays the same at both ends: the view keeps its place and its current
    // line.
    const auto sameKey = [](const ListRow& a, const ListRow& b) { return a.key == b.key; };
    const int before = static_cast<int>(m_rows.size());
    const int after = static_cast<int>(rows.size());
    const int shorter = std::min(before, after);
    int head = 0;
    while (head < shorter && sameKey(m_rows[head], rows[head]))
        ++head;
    int tail = 0;
    while (tail < shorter - head && sameKey(m_rows[before - 1 - tail], rows[after - 1 - tail]))
        ++tail;
    if (head < before - tail) {
        beginRemoveRows({}, head, before - tail - 1);
        m_rows.erase(m_rows.begin() + head, m_rows.end() - tail);
        endRemoveRows();
    }
    if (head < after - tail) {
        beginInsertRows({}, head, after - tail - 1);
        m_rows.insert(m_rows.begin() + head, rows.begin() + head, rows.end() - tail);
        endInsertRows();
    }
    for (int row = 0; row < after; ++row) {
        if (m_rows[row] == rows[row]) continue;
        m_rows[row] = rows[row];
        announce(row);
    }
}

void RowListModel::announce(int row) {
    emit dataChanged(index(row), index(row));
}

int RowListModel::indexOfKey(const QString& key) const {
    const auto found =
        std::find_if(m_rows.begin(), m_rows.end(), [&](const ListRow& row) { return row.key == key; });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

int RowListModel::indexOfCode(const QString& code) const {
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const ListRow& row) {
        return !row.code.isEmpty() && row.code == code;
    });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

QString RowListModel::codeOf(const QString& key) const {
    const int row = indexOfKey(key);
    return row < 0 ? QString() : m_rows[row].code;
}

void RowListModel::markChanged(const QString& key) {
    const int row = indexOfKey(key);
    if (row < 0) return;
    if (isMotionReduced())
        for (const QString& before : std::exchange(m_justChanged, {}))
            if (const int at = indexOfKey(before); at >= 0) announce(at);
    m_justChanged.insert(key);
    announce(row);
    if (isMotionReduced()) return; // it stays until the next change
    QTimer::singleShot(2000, this, [this, key] {
        m_justChanged.remove(key);
        if (const int now = indexOfKey(key); now >= 0) announce(now);
    });
}

void RowListModel::showAside(const QString& key, const QString& shown) {
    const QString old = m_asideKey;
    m_asideKey = shown.isEmpty() ? QString() : key;
    m_asideShown = shown;
    for (const QString& changed : {old, key})
        if (const int row = indexOfKey(changed); row >= 0) announce(row);
}

int RowListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant RowListModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    ListRow row = m_rows[index.row()];
    if (!m_asideKey.isEmpty() && row.key == m_asideKey) row.aside = m_asideShown;
    switch (role) {
    case Qt::DisplayRole:
        return row.title;
    case Qt::EditRole:
        return row.number && row.number->value ? QVariant(*row.number->value) : QVariant();
    case Qt::AccessibleTextRole:
        return row.aloud();
    case RowRole:
        return QVariant::fromValue(row);
    case JustChangedRole:
        return m_justChanged.contains(row.key);
    default:
        return {};
    }
}

Qt::ItemFlags RowListModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    const ListRow& row = m_rows[index.row()];
    if (row.isHeading) return Qt::ItemIsEnabled | Qt::ItemNeverHasChildren;
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    if (row.number) flags |= Qt::ItemIsEditable;
    return flags;
}

bool RowListModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !(flags(index) & Qt::ItemIsEditable)) return false;
    bool isNumber = false;
    const double number = value.toString().trimmed().replace(',', '.').toDouble(&isNumber);
    if (!isNumber) return false;
    emit numberTyped(m_rows[index.row()].key, number);
    return true;
}

} // namespace app
