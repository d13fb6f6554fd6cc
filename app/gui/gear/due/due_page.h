#pragma once

#include "app/gui/gear/due/due_calendar.h"
#include "app/gui/widgets/gear_page.h"

#include <vector>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace app {

class ChoiceBox;
class RowList;
class DueChart;
class RowListModel;
class PlainTable;
class PlainTableModel;

/// What falls due: a calendar of months, beneath it what the chosen month holds and why. The same numbers
/// stand in a table for whoever cannot see a chart. Read anew whenever the page is shown.
class DuePage : public GearPage {
    Q_OBJECT

public:
    explicit DuePage(GearTools tools, QWidget* parent = nullptr);

    void refresh() override;
    const DueCalendar& calendar() const { return m_calendar; }

private:
    void build();
    struct Read;

    void take(Read read);
    void fillSizes();
    void showCalendar();
    void showNumbers();
    void showMonth(int month);
    void showLines(int month, const std::vector<ListRow>& lines);
    void showTable(bool table);
    DueFilter filter() const;
    std::vector<core::DueRow> shownRows() const;

    core::CalendarDay m_today;
    std::vector<core::DueRow> m_rows;
    DueCalendar m_calendar;
    QLabel* m_summary;
    ChoiceBox* m_kitTypes;
    ChoiceBox* m_sizes;
    QPushButton* m_tableButton;
    QStackedWidget* m_stack;
    DueChart* m_chart;
    PlainTableModel* m_numbers;
    PlainTable* m_table;
    QLabel* m_monthLabel;
    RowListModel* m_lines;
    RowList* m_list;
};

} // namespace app
