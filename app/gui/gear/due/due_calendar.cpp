#include "app/gui/gear/due/due_calendar.h"

#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <map>
#include <numeric>

namespace app {
namespace {

struct DueCalendarText {
    Q_DECLARE_TR_FUNCTIONS(DueCalendar)
};

bool holds(const DueFilter& filter, const core::DueRow& row) {
    return (filter.kitType.isEmpty() || row.kitType == filter.kitType.toStdString()) &&
           (filter.size.isEmpty() || row.size == filter.size.toStdString());
}

QString kindOf(const core::DueRow& row, const DueFilter& filter) {
    if (filter.kitType.isEmpty()) return text(row.kitType);
    return row.size.empty() ? DueCalendarText::tr("no size") : text(row.size);
}

/// Kinds by how many due days they have, most first; what is beyond the patterns goes together.
QStringList kindsOf(const std::vector<core::DueRow>& rows, const DueFilter& filter) {
    std::map<QString, int> counts;
    for (const core::DueRow& row : rows)
        ++counts[kindOf(row, filter)];
    std::vector<std::pair<QString, int>> byCount(counts.begin(), counts.end());
    std::stable_sort(byCount.begin(), byCount.end(),
                     [](const auto& a, const auto& b) { return a.second > b.second; });
    QStringList kinds;
    for (const auto& kind : byCount)
        kinds << kind.first;
    if (kinds.size() > mostKinds) kinds = kinds.mid(0, mostKinds - 1) << DueCalendarText::tr("other kit");
    return kinds;
}

/// 0: passed; 1: today's month.
int columnOf(const core::DueRow& row, core::CalendarDay today) {
    if (!row.due.due || *row.due.due < today) return 0;
    return 1 + 12 * (row.due.due->year() - today.year()) + row.due.due->month() - today.month();
}

std::vector<DueMonth> emptyMonths(core::CalendarDay today) {
    std::vector<DueMonth> months{
        {DueCalendarText::tr("overdue, undated or due now"), DueCalendarText::tr("overdue"), 0, {}, {}}};
    for (int i = 0; i < dueMonths; ++i) {
        const int number = today.month() - 1 + i;
        const int year = today.year() + number / 12;
        const int month = number % 12 + 1;
        const QString name = inWords(*core::CalendarDay::from(year, month, 1)).section(' ', 1);
        months.push_back({name, name.left(3), year, {}, {}});
    }
    return months;
}

Mark markOf(const core::DueRow& row) {
    if (row.due.isPassedStop()) return Mark::Look;
    return row.due.state == core::DueState::Later ? Mark::NotAsked : Mark::StillToFind;
}

QString dueMarkWord(Mark mark) {
    if (mark == Mark::Look) return DueCalendarText::tr("does not count any more");
    return mark == Mark::NotAsked ? DueCalendarText::tr("later")
                                  : DueCalendarText::tr("due soon, or with a remark");
}

ListRow lineOf(const core::DueRow& row, core::CalendarDay today) {
    QString title = text(row.kitType);
    if (!row.size.empty()) title += DueCalendarText::tr(" (%1)").arg(text(row.size));
    if (!row.boat.empty()) title += DueCalendarText::tr(" · %1").arg(text(row.boat));
    const QString part = text(row.due.rule.part);
    const QString rule = text(row.due.rule.name);
    const QString remark =
        DueCalendarText::tr("%1: %2; %3.")
            .arg(withCapital(part.isEmpty() ? rule : DueCalendarText::tr("%1, %2").arg(part, rule)),
                 dueInWords(row.due, today), explanationOf(row.due));
    const Mark mark = markOf(row);
    const QString key = text(row.item.id + '/' + row.due.rule.part + '/' + row.due.rule.name);
    return plainRow(key, mark, dueMarkWord(mark), title, remark, row.item);
}

} // namespace

int DueCalendar::totalOf(int kind) const {
    return std::accumulate(months.begin(), months.end(), 0,
                           [&](int sum, const DueMonth& month) { return sum + month.counts[kind]; });
}

int DueCalendar::most() const {
    std::size_t most = 0;
    for (const DueMonth& month : months)
        most = std::max(most, month.rows.size());
    return static_cast<int>(most);
}

int DueCalendar::coming() const {
    std::size_t sum = 0;
    for (std::size_t i = 1; i < months.size(); ++i)
        sum += months[i].rows.size();
    return static_cast<int>(sum);
}

int daysOfDueMonths(core::CalendarDay today) {
    const auto first = core::CalendarDay::from(today.year(), today.month(), 1);
    return core::daysBetween(today, first->plusMonths(dueMonths - 1).lastOfMonth());
}

DueCalendar dueCalendarOf(const std::vector<core::DueRow>& rows, const DueFilter& filter,
                          core::CalendarDay today) {
    std::vector<core::DueRow> seen;
    std::copy_if(rows.begin(), rows.end(), std::back_inserter(seen), [&](const core::DueRow& row) {
        return holds(filter, row) && columnOf(row, today) <= dueMonths;
    });
    DueCalendar calendar{kindsOf(seen, filter), emptyMonths(today)};
    for (DueMonth& month : calendar.months)
        month.counts.assign(static_cast<std::size_t>(calendar.kinds.size()), 0);
    for (const core::DueRow& row : seen) {
        DueMonth& month = calendar.months[static_cast<std::size_t>(columnOf(row, today))];
        const auto kind = calendar.kinds.indexOf(kindOf(row, filter));
        ++month.counts[static_cast<std::size_t>(kind < 0 ? calendar.kinds.size() - 1 : kind)];
        month.rows.push_back(row);
    }
    return calendar;
}

std::vector<ListRow> linesOf(const DueMonth& month, core::CalendarDay today) {
    std::vector<ListRow> lines;
    std::transform(month.rows.begin(), month.rows.end(), std::back_inserter(lines),
                   [today](const core::DueRow& row) { return lineOf(row, today); });
    return lines;
}

QString inWords(const DueMonth& month, const QStringList& kinds) {
    QStringList parts;
    for (int kind = 0; kind < kinds.size(); ++kind)
        if (const int count = month.counts[static_cast<std::size_t>(kind)]; count > 0)
            parts << DueCalendarText::tr("%1 × %2").arg(count).arg(kinds[kind]);
    if (parts.isEmpty()) return DueCalendarText::tr("%1: nothing.").arg(withCapital(month.name));
    return DueCalendarText::tr("%1: %2.").arg(withCapital(month.name), listed(parts));
}

QString summaryOf(const DueCalendar& calendar) {
    const int passed = static_cast<int>(calendar.months.front().rows.size());
    const QString coming =
        calendar.coming() == 0
            ? DueCalendarText::tr("Nothing falls due in 24 months.")
            : counted(calendar.coming(), QT_TRANSLATE_N_NOOP("Words", "%n falls due in 24 months."),
                      QT_TRANSLATE_N_NOOP("Words", "%n fall due in 24 months."));
    if (passed == 0) return coming;
    return DueCalendarText::tr("%1 %2").arg(
        coming, counted(passed, QT_TRANSLATE_N_NOOP("Words", "%n is overdue or undated."),
                        QT_TRANSLATE_N_NOOP("Words", "%n are overdue or undated.")));
}

} // namespace app
