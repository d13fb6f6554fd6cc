#pragma once

#include "app/gui/check/check_row.h"

#include <QWidget>

#include <vector>

namespace app {

class RowList;
class RowListModel;

/// The lists of a check: what is still to find, to look at, found, and the points; on a wide page the points
/// have a column of their own. Beneath each stands how many lines are below what is in view.
class CheckLists : public QWidget {
    Q_OBJECT

public:
    explicit CheckLists(QWidget* parent = nullptr);

    void setRows(std::vector<CheckRow> rows);
    void setWide(bool wide);
    const std::vector<CheckRow>& rows() const { return m_rows; }
    /// The line of an item that was seen; null when there is none.
    const CheckRow* rowOfSeen(const QString& code) const;
    const CheckRow* rowOfTag(const QString& tag) const; ///< the same by the tag that is on it
    /// Underlines the line for a while, and shows what is still to find.
    void markChanged(const QString& key);
    void setClock(const QString& point, const QString& shown); ///< empty: the clock of that point stands
    QString currentCode() const;
    bool isOnItem() const; ///< the keyboard is on the line of an item
    void takeKeyboard();
    void goToPoints();

signals:
    void lookPressed(const QString& point, bool done);
    void clockPressed(const QString& point);
    void kitPressed(const QString& code);
    void valueTyped(const QString& point, double value);

private:
    RowList* addView(RowListModel& model, const QString& name, const QString& aloud);
    QWidget* withCount(RowList& view, const RowListModel& model);
    void press(RowList& view, const QString& key);
    void share();
    const CheckRow* rowOf(const QString& key) const; ///< null: not there
    RowListModel& modelOf(const QString& key) const;

    std::vector<CheckRow> m_rows;
    bool m_isWide = false;
    RowListModel* m_model;       ///< everything, or all but the points on a wide page
    RowListModel* m_pointsModel; ///< the points on a wide page
    RowList* m_view;
    RowList* m_pointsView;
    QWidget* m_pointsColumn = nullptr;
};

} // namespace app
