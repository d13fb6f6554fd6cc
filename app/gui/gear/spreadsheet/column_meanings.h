#pragma once

#include <QWidget>

#include "core/register/sheets.h"

#include <QStringList>

#include <string>
#include <vector>

class QTableView;

namespace core {
struct TableLayout;
}

namespace app {

class ChoiceBox;

/// Above each column of the table a list of what it may mean. It moves with the table.
class ColumnMeanings : public QWidget {
    Q_OBJECT

public:
    ColumnMeanings(QTableView& table, QWidget* parent);

    /// One list for each column of the layout; their first is in the table's column `first`.
    void setLayoutOf(const core::TableLayout& layout, core::SheetId sheet, int first);
    void clear();
    /// Tab goes from `before` through the lists to the table.
    void putBehind(QWidget& before);

signals:
    void meaningChosen(const QString& heading, const QString& meaning); ///< empty: left out

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build(const core::TableLayout& layout, core::SheetId sheet);
    void place();

    QTableView& m_table;
    std::vector<ChoiceBox*> m_boxes;
    QStringList m_headings;
    core::SheetId m_sheet = core::SheetId::Items;
    int m_first = 0;
};

} // namespace app
