#pragma once

#include "app/gui/widgets/list_row.h"
#include "core/answers/due_list.h"
#include "core/base/calendar_day.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace app {

/// What is to be seen of the due list.
struct DueFilter {
    QString kitType; ///< empty: all
    QString size;    ///< of that kit type; empty: all

    bool operator==(const DueFilter&) const = default;
};

/// One column of the calendar.
struct DueMonth {
    QString name;      ///< "March 2026", "overdue, undated or due now"
    QString shortName; ///< "Mar"
    int year = 0;      ///< 0: what has passed
    std::vector<core::DueRow> rows;
    std::vector<int> counts; ///< of each kind
};

/// What falls due, month by month. The first column holds what has passed, is due without a day or undated;
/// the second is today's month.
struct DueCalendar {
    QStringList kinds; ///< kit types, most first, the last being "other kit" when there are many; or sizes
    std::vector<DueMonth> months;

    int totalOf(int kind) const;
    int most() const; ///< the fullest column
    int coming() const;
};

inline constexpr int dueMonths = 24;
inline constexpr int mostKinds = 7; ///< that patterns can be told apart

/// How many days the due list must reach for them.
int daysOfDueMonths(core::CalendarDay today);
/// Of one kit type it is stacked by size.
DueCalendar dueCalendarOf(const std::vector<core::DueRow>& rows, const DueFilter& filter,
                          core::CalendarDay today);

/// A column's items with their reasons, as lines of a list.
std::vector<ListRow> linesOf(const DueMonth& month, core::CalendarDay today);
QString inWords(const DueMonth& month, const QStringList& kinds); ///< "March 2026: 2 × flare, 1 × radio"
QString summaryOf(const DueCalendar& calendar);

} // namespace app
