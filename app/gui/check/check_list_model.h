#pragma once

#include "app/gui/check/check_row.h"

#include <QAbstractListModel>
#include <QSet>

#include <vector>

namespace app {

/// The lines of a check, headings among them, for a list view. Holds values only; says exactly what changed.
class CheckListModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role { RowRole = Qt::UserRole, JustChangedRole };

    explicit CheckListModel(QObject* parent = nullptr);

    void setRows(const std::vector<CheckRow>& rows);
    const std::vector<CheckRow>& rows() const { return m_rows; }
    int indexOfKey(const QString& key) const; ///< -1: not there
    int indexOfCode(const QString& code) const;

    /// Underlines the line of that key for two seconds.
    void markChanged(const QString& key);
    /// What a running clock shows; empty stops showing it.
    void setClock(const QString& key, const QString& shown);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// A measure or seconds: emits `valueTyped`; the row itself changes when the check's answer comes back.
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

signals:
    void valueTyped(const QString& point, double value);

private:
    void announce(int row);

    std::vector<CheckRow> m_rows;
    QSet<QString> m_justChanged;
    QString m_clockKey;
    QString m_clockShown;
};

} // namespace app
