#include "app/gui/gear/due/due_page.h"

#include "app/gui/gear/due/due_chart.h"
#include "app/gui/printout/paper_button.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/plain_table.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/paper/lists/club_lists.h"
#include "app/text/cautions.h"
#include "app/text/text.h"
#include "core/club/club_answers.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <set>

namespace app {
namespace {

constexpr int leastChart = 280; ///< its height, so that the key beside it is read

} // namespace

/// What the club's thread makes ready, for a big club has thousands of rows.
struct DuePage::Read {
    std::vector<core::DueRow> rows;
    QStringList kitTypes; ///< each once
    DueCalendar calendar;
    DueFilter filter; ///< of the calendar
    int month = 0;
    std::vector<ListRow> lines; ///< of that month
};

DuePage::DuePage(GearTools given, QWidget* parent)
    : GearPage(std::move(given), "duePage", parent)
    , m_today(today())
    , m_summary(wordsLabel(this, "remark", "dueSummaryLabel"))
    , m_kitTypes(new ChoiceBox(this))
    , m_sizes(new ChoiceBox(this))
    , m_tableButton(wordsButton(this, {}, "dueTableButton"))
    , m_stack(new QStackedWidget(this))
    , m_chart(new DueChart(this))
    , m_numbers(new PlainTableModel(this))
    , m_table(new PlainTable(*m_numbers, this))
    , m_monthLabel(wordsLabel(this, "heading", "dueMonthLabel"))
    , m_lines(new RowListModel(this))
    , m_list(new RowList(*m_lines, this)) {
    build();
    connect(m_kitTypes, &QComboBox::activated, this, [this] {
        fillSizes();
        showCalendar();
    });
    connect(m_sizes, &QComboBox::activated, this, [this] { showCalendar(); });
    connect(m_tableButton, &QPushButton::clicked, this,
            [this] { showTable(m_stack->currentWidget() == m_chart); });
    connect(m_chart, &DueChart::monthPressed, this, &DuePage::showMonth);
    connect(m_table, &PlainTable::rowPressed, this, [this](const QString& key) { showMonth(key.toInt()); });
    connect(m_list, &RowList::rowPressed, this, [this](const QString& key) {
        if (tools().showItem) tools().showItem(m_lines->codeOf(key));
    });
    showTable(false);
}

void DuePage::build() {
    m_kitTypes->setObjectName("dueKitTypeBox");
    m_sizes->setObjectName("dueSizeBox");
    m_table->setObjectName("dueTable");
    m_table->setAccessibleName(tr("what falls due, month by month, in numbers"));
    m_list->setObjectName("dueList");
    m_list->setAccessibleName(tr("what falls due in the chosen month, and why"));
    m_chart->setMinimumHeight(leastChart);
    m_stack->addWidget(m_chart);
    m_stack->addWidget(m_table);

    auto* head = new FlowLayout;
    m_kitTypes->takeRoom(12);
    m_sizes->takeRoom(9);
    addWithWord(*head, tr("kit type"), m_kitTypes, true);
    addWithWord(*head, tr("size"), m_sizes);
    head->addWidget(m_tableButton);
    head->addWidget(
        shownListButton([this] { return dueTable(shownRows(), daysOfDueMonths(m_today), m_today); }));
    QVBoxLayout& layout = column(spaceUnit);
    layout.addLayout(head);
    layout.addWidget(m_summary);
    layout.addWidget(m_stack, 13);
    layout.addWidget(m_monthLabel);
    layout.addWidget(m_list, 10);
    addCaution(layout, "dueCautionLabel", dueCaution() + QLatin1Char(' ') + whoPrevails());
}

void DuePage::refresh() {
    m_today = today();
    read(
        [today = m_today, filter = filter(), month = m_chart->month()](core::Club& club) {
            Read read{club.answers().dueList(today, daysOfDueMonths(today)), {}, {}, filter, month, {}};
            std::set<std::string> kitTypes;
            for (const core::DueRow& row : read.rows)
                kitTypes.insert(row.kitType);
            read.kitTypes = texts({kitTypes.begin(), kitTypes.end()});
            read.calendar = dueCalendarOf(read.rows, filter, today);
            read.lines = linesOf(read.calendar.months[static_cast<std::size_t>(month)], today);
            return read;
        },
        [this](Read read) { take(std::move(read)); });
}

void DuePage::take(Read read) {
    m_rows = std::move(read.rows);
    m_calendar = std::move(read.calendar);
    fillBox(*m_kitTypes, tr("all kit"), read.kitTypes);
    fillSizes();
    if (filter() == read.filter && m_chart->month() == read.month) {
        showNumbers();
        showLines(read.month, read.lines);
    } else {
        showCalendar(); // something else was chosen meanwhile
    }
}

void DuePage::fillSizes() {
    QStringList sizes;
    for (const core::DueRow& row : m_rows)
        if (text(row.kitType) == m_kitTypes->currentData().toString()) sizes << text(row.size);
    fillBox(*m_sizes, tr("all sizes"), sizes);
    m_sizes->setEnabled(m_sizes->count() > 1);
}

DueFilter DuePage::filter() const {
    return {m_kitTypes->currentData().toString(), m_sizes->currentData().toString()};
}

/// Of the kit that is chosen, all months.
std::vector<core::DueRow> DuePage::shownRows() const {
    std::vector<core::DueRow> rows;
    for (const DueMonth& month : m_calendar.months)
        rows.insert(rows.end(), month.rows.begin(), month.rows.end());
    return rows;
}

void DuePage::showCalendar() {
    m_calendar = dueCalendarOf(m_rows, filter(), m_today);
    showNumbers();
    showMonth(m_chart->month());
}

void DuePage::showNumbers() {
    m_summary->setText(summaryOf(m_calendar));
    m_chart->setCalendar(m_calendar);
    std::vector<TableColumn> columns{{tr("month"), false}, {tr("all"), true}};
    for (const QString& kind : m_calendar.kinds)
        columns.push_back({kind, true});
    std::vector<TableRow> rows;
    for (const DueMonth& month : m_calendar.months) {
        QStringList cells{month.name, QString::number(month.rows.size())};
        for (const int count : month.counts)
            cells << (count == 0 ? QStringLiteral("–") : QString::number(count));
        rows.push_back({QString::number(rows.size()), std::nullopt, {}, cells});
    }
    m_numbers->setTable(columns, rows);
}

void DuePage::showMonth(int month) {
    if (month < 0 || month >= static_cast<int>(m_calendar.months.size())) return;
    const auto& chosen = m_calendar.months[static_cast<std::size_t>(month)];
    showLines(month, linesOf(chosen, m_today));
}

void DuePage::showLines(int month, const std::vector<ListRow>& lines) {
    const DueMonth& chosen = m_calendar.months[static_cast<std::size_t>(month)];
    m_chart->setMonth(month);
    m_table->choose(QString::number(month));
    m_monthLabel->setText(inWords(chosen, m_calendar.kinds));
    m_lines->setRows(lines);
    m_list->scrollToTop();
}

void DuePage::showTable(bool table) {
    m_stack->setCurrentWidget(table ? static_cast<QWidget*>(m_table) : m_chart);
    m_tableButton->setText(table ? tr("As a chart") : tr("As a table"));
}

} // namespace app
