#pragma once

#include "app/gui/theme/marks.h"

#include <QAbstractTableModel>
#include <QString>
#include <QStringList>

#include <optional>
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

/// The rows of a table; holds values only.
class PlainTableModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Role { MarkRole = Qt::UserRole };

    using QAbstractTableModel::QAbstractTableModel;

    void setTable(const std::vector<TableColumn>& columns, const std::vector<TableRow>& rows);
    const std::vector<TableRow>& rows() const { return m_rows; }
    int indexOfKey(const QString& key) const; ///< -1: not there
    bool isNumber(int column) const { return m_columns[column].isNumber; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<TableColumn> m_columns;
    std::vector<TableRow> m_rows;
};

} // namespace app
