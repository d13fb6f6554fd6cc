#pragma once

#include "app/gui/theme/marks.h"

#include <QAbstractTableModel>
#include <QString>
#include <QStringList>
#include <QTableView>

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

/// Holds values only.
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

/// A table in the house's type, as wide as its place: its first column takes the room that is left, or the
/// widest are cut. Up and down choose a row, Enter or a press opens it.
class PlainTable : public QTableView {
    Q_OBJECT

public:
    explicit PlainTable(PlainTableModel& model, QWidget* parent = nullptr);

    void choose(const QString& key);
    QString chosen() const;                ///< key of the current row; empty when there is none
    void leaveOut(int column, bool isOut); ///< where there is no room for it

signals:
    void rowChosen(const QString& key);
    void rowPressed(const QString& key);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();
    void fitOnce();
    std::vector<int> widthsOfWords(bool wrapped) const;
    int cutWidest(std::vector<int>& widths, int excess) const;

    PlainTableModel& m_model;
    bool m_isFitting = false;
    bool m_mustFit = false;
    std::set<int> m_leftOut;
};

} // namespace app
