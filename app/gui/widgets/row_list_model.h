#pragma once

#include "app/gui/widgets/list_row.h"

#include <QAbstractListModel>
#include <QSet>

#include <vector>

namespace app {

/// The lines of a list, headings among them. Holds values only; says exactly what changed, so that the list
/// keeps its place and its current line.
class RowListModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role { RowRole = Qt::UserRole, JustChangedRole };

    explicit RowListModel(QObject* parent = nullptr);

    void setRows(const std::vector<ListRow>& rows);
    const std::vector<ListRow>& rows() const { return m_rows; }
    int indexOfKey(const QString& key) const;   ///< -1: not there
    int indexOfCode(const QString& code) const; ///< of the first line about that item; -1: there is none
    QString codeOf(const QString& key) const;   ///< of the line of that key; empty when it is about no item

    /// Underlines the line of that key for two seconds.
    void markChanged(const QString& key);
    /// What stands at the right of that line for now, a running clock say; empty: what its row says. One line
    /// at a time.
    void showAside(const QString& key, const QString& shown);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// Takes a number, with a point or a comma, for a line that has one: emits `numberTyped`. The row stays
    /// as it is until new rows come.
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

signals:
    void numberTyped(const QString& key, double number); ///< into the line of that key

private:
    void announce(int row);

    std::vector<ListRow> m_rows;
    QSet<QString> m_justChanged;
    QString m_asideKey;
    QString m_asideShown;
};

} // namespace app
