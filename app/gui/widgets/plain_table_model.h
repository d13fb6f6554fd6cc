#pragma once

#include "app/gui/theme/marks.h"

#include <QAbstractTableModel>
#include <QString>
#include <QStringList>

#include <map>
#include <optional>
#include <set>
#include <vector>

namespace app {

/// One row of a table, ready to be shown.
struct TableRow {
    QString key;              ///< the same for the same thing from answer to answer
    std::optional<Mark> mark; ///< stands before the first cell
    QString markWord;         ///< what it means here
    QStringList cells;
};

/// A column's heading; numbers stand at the right.
struct TableColumn {
    QString heading;
    bool isNumber = false;
};

/// The rows of a table, all or some of them in an order of their own; holds values only. Rows may be ticked,
/// so that something is done with several.
class PlainTableModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Role { MarkRole = Qt::UserRole, BeneathRole };

    using QAbstractTableModel::QAbstractTableModel;

    void setTable(const std::vector<TableColumn>& columns, std::vector<TableRow> rows);
    /// Shows these of the rows, by their places among all, in this order.
    void setShown(std::vector<int> places);
    const std::vector<TableRow>& rows() const { return m_rows; } ///< all of them
    const TableRow& shown(int row) const { return m_rows[static_cast<std::size_t>(m_shown[row])]; }
    int indexOfKey(const QString& key) const; ///< among those that are shown; -1: not there
    bool isNumber(int column) const { return m_columns[column].isNumber; }

    /// By column another whose cells stand beneath its own, as BeneathRole, and are headed and read with
    /// them.
    void setBeneath(std::map<int, int> beneath);

    void setTickable(bool isTickable) { m_isTickable = isTickable; }
    bool isTickable() const { return m_isTickable; }
    const std::set<QString>& ticked() const { return m_ticked; } ///< keys, shown or not
    void setTicked(std::set<QString> keys);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    int beneath(int column) const; ///< -1: none
    QString readAloud(const TableRow& row, int column) const;

    std::vector<TableColumn> m_columns;
    std::vector<TableRow> m_rows;
    std::vector<int> m_shown; ///< places in m_rows
    std::map<int, int> m_beneath;
    std::set<QString> m_ticked;
    bool m_isTickable = false;
};

} // namespace app
