#include "app/gui/gear/replace/replace_page.h"

#include "app/gui/gear/replace/arrival_panel.h"
#include "app/gui/gear/replace/replace_row_panel.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/beside_or_over.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/plain_table.h"
#include "app/paper/order_sheet.h"
#include "app/paper/whole_file.h"
#include "app/text/cautions.h"
#include "app/text/plan_sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_plans.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

constexpr int widthForBoth = 1400; ///< of the table and a row's plot beside it
constexpr int leastRows = 6;       ///< of the table in view; in a lower window the page scrolls

QString keyOf(const core::ReplacementRow& row) {
    return QString::fromStdString(row.kitType + '\x1f' + row.size);
}

Mark markOf(const core::ReplacementRow& row, core::CalendarDay today) {
    if (!row.runsShort()) return Mark::Found;
    return row.late || *row.firstShort <= today ? Mark::Look : Mark::StillToFind;
}

QString markWordOf(Mark mark) {
    if (mark == Mark::Look) return ReplacePage::tr("late");
    return mark == Mark::Found ? ReplacePage::tr("enough") : ReplacePage::tr("to order");
}

TableRow tableRowOf(const core::ReplacementRow& row, const core::ReplacementPlan& plan) {
    const Mark mark = markOf(row, plan.today);
    QString order = ReplacePage::tr("enough");
    if (row.runsShort())
        // In two lines the day stays whole.
        order = (row.late ? ReplacePage::tr("late: %1") : ReplacePage::tr("by %1"))
                    .arg(inWords(*row.orderBy).replace(QLatin1Char(' '), QChar::Nbsp));
    QString number;
    if (row.runsShort()) number = row.quantity ? QString::number(*row.quantity) : ReplacePage::tr("again");
    return {keyOf(row),
            mark,
            markWordOf(mark),
            {kitInWords(row), QString::number(row.wanted), QString::number(row.stock), order, number,
             row.cost && row.runsShort() ? moneyInWords(*row.cost) : QString()}};
}

QString nothingToPlan() {
    return ReplacePage::tr("There is nothing to plan yet. What each boat must carry is written on the page "
                           "Manifests, what there is of it on the page Kit.");
}

} // namespace

struct ReplacePage::Read {
    QString club;
    core::ReplacementPlan plan;
    std::vector<core::KitLife> lives;
};

QString summaryOf(const core::ReplacementPlan& plan) {
    const auto count = [&](auto holds) {
        return static_cast<int>(std::count_if(plan.rows.begin(), plan.rows.end(), holds));
    };
    const int isShort = count([](const core::ReplacementRow& row) { return row.runsShort(); });
    const int late = count([](const core::ReplacementRow& row) { return row.late; });
    if (isShort == 0) return ReplacePage::tr("Nothing runs short.");
    QStringList words{counted(isShort, QT_TRANSLATE_N_NOOP("Words", "%n kind of kit runs short"),
                              QT_TRANSLATE_N_NOOP("Words", "%n kinds of kit run short"))};
    if (late > 0)
        words << counted(late, QT_TRANSLATE_N_NOOP("Words", "%n order is late"),
                         QT_TRANSLATE_N_NOOP("Words", "%n orders are late"));
    return ReplacePage::tr("%1.").arg(listed(words));
}

QString costOf(const core::ReplacementPlan& plan) {
    QStringList years;
    for (const core::BudgetYear& year : plan.budget)
        years << budgetInWords(year).replace(QLatin1Char(' '), QChar::Nbsp);
    return years.isEmpty() ? QString() : ReplacePage::tr("Cost, %1.").arg(years.join(ReplacePage::tr("; ")));
}

ReplacePage::ReplacePage(GearTools given, QWidget* parent)
    : GearPage(std::move(given), "replacePage", parent)
    , m_months(new ChoiceBox(this))
    , m_confidence(new ChoiceBox(this))
    , m_summary(wordsLabel(this, "heading", "replaceSummaryLabel"))
    , m_cost(wordsLabel(this, "remark", "replaceCostLabel"))
    , m_empty(wordsLabel(this, "quiet", "replaceEmptyLabel"))
    , m_rows(new PlainTableModel(this))
    , m_table(new PlainTable(*m_rows, this))
    , m_open(wordsButton(this, tr("Stock, life, arrivals…"), "replaceShowButton"))
    , m_row(new ReplaceRowPanel(tools(), this)) {
    build();
    connect(m_months, &QComboBox::activated, this, &ReplacePage::refresh);
    connect(m_confidence, &QComboBox::activated, this, &ReplacePage::refresh);
    connect(m_table, &PlainTable::rowChosen, this, &ReplacePage::showRow);
    connect(m_table, &PlainTable::rowPressed, this, &ReplacePage::open);
    connect(m_open, &QPushButton::clicked, this, &ReplacePage::open);
    connect(m_body, &BesideOrOver::arranged, this, &ReplacePage::adaptToBody);
    connect(m_body, &BesideOrOver::left, this, [this] {
        m_isAsked = m_body->hasRoomForBoth();
        m_table->setFocus(Qt::OtherFocusReason);
    });
    connect(&arrival(), &ArrivalPanel::arrived, this, &ReplacePage::refresh);
}

void ReplacePage::build() {
    m_months->setObjectName("replaceMonthsBox");
    for (const int months : {12, 24, 36, 60})
        m_months->addItem(tr("%1 months").arg(months), months);
    m_months->setCurrentIndex(2);
    m_confidence->setObjectName("replaceConfidenceBox");
    for (const int percent : {80, 90, 95, 99})
        m_confidence->addItem(tr("%1 %").arg(percent), percent / 100.0);
    m_confidence->setCurrentIndex(2);
    QVBoxLayout& layout = column(spaceUnit);
    m_head = buildHead();
    layout.addWidget(m_head);
    m_body = new BesideOrOver("replace", buildList(), m_row, widthForBoth, this);
    m_row->addBack(m_body->backButton());
    layout.addWidget(m_body, 1);
    layout.addWidget(saidLabel("replaceSaidLabel"));
    addCaution(layout, "replaceCautionLabel", planCaution());
}

QWidget* ReplacePage::buildHead() {
    auto* head = new QWidget(this);
    auto* row = new FlowLayout;
    row->addExpanding(m_cost);
    addWithWord(*row, tr("plan for"), m_months);
    addWithWord(*row, tr("confidence"), m_confidence);
    m_confidence->setAccessibleName(tr("confidence that no kit runs short"));
    auto* column = new QVBoxLayout(head);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spaceUnit / 2);
    column->addWidget(m_summary);
    column->addLayout(row);
    return head;
}

QWidget* ReplacePage::buildList() {
    m_table->setObjectName("replaceTable");
    m_table->setAccessibleName(tr("what runs short, by order-by day"));
    m_table->setSmall(true);
    m_table->setLeastRows(leastRows);
    m_empty->setText(nothingToPlan());
    m_empty->hide();
    auto* list = new QWidget(this);
    auto* column = new QVBoxLayout(list);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spaceUnit);
    column->addWidget(m_empty);
    column->addWidget(m_table, 1);
    column->addLayout(buildFoot());
    return list;
}

/// What opens the chosen row, and the sheets of the whole plan.
QLayout* ReplacePage::buildFoot() {
    auto* foot = new FlowLayout;
    foot->addWidget(m_open);
    foot->addStretch();
    const auto paper = [&](const QString& words, const char* name, Paper which) {
        auto* button = wordsButton(this, words, name);
        connect(button, &QPushButton::clicked, this, [this, which] { save(which); });
        button->setEnabled(false);
        foot->addWidget(button);
        m_papers.push_back(button);
    };
    paper(tr("Order sheet…"), "orderSheetButton", Paper::Sheet);
    paper(tr("CSV…"), "orderCsvButton", Paper::Csv);
    paper(tr("Calendar…"), "orderCalendarButton", Paper::Calendar);
    return foot;
}

ArrivalPanel& ReplacePage::arrival() {
    return m_row->arrival();
}

void ReplacePage::showEvent(QShowEvent* event) {
    arrival().refresh();
    GearPage::showEvent(event);
}

/// Where there is room for both, the chosen kit's plot stands beside the table without being asked for.
void ReplacePage::adaptToBody() {
    const bool hasRoom = m_body->hasRoomForBoth();
    if (!m_isAsked && hasRoom != m_body->isOpen()) return hasRoom ? m_body->open() : m_body->close();
    m_head->setVisible(!m_body->isOver());
    m_open->setVisible(!m_body->isOpen());
}

void ReplacePage::open() {
    if (m_rows->rowCount() == 0) return;
    m_isAsked = true;
    m_body->open();
    m_row->takeKeyboard();
}

void ReplacePage::refresh() {
    core::ReplacementQuestion question;
    question.months = m_months->currentData().toInt();
    question.confidence = m_confidence->currentData().toDouble();
    read(
        [question, today = today()](core::Club& club) -> core::Result<Read> {
            auto plan = club.plans().replacement(question, today);
            if (!plan) return plan.error();
            return Read{text(club.name()), std::move(*plan), club.plans().kitLives(today)};
        },
        [this](const core::Result<Read>& read) { take(read); });
}

void ReplacePage::take(const core::Result<Read>& read) {
    if (!read) {
        sayError(read.error());
        return;
    }
    forgetError();
    m_club = read->club;
    m_plan = read->plan;
    m_lives = read->lives;
    m_summary->setText(summaryOf(*m_plan));
    m_cost->setText(costOf(*m_plan));
    for (QPushButton* button : m_papers)
        button->setEnabled(m_plan->runsShort());
    fillTable();
    emit planned();
}

void ReplacePage::fillTable() {
    const QString before = m_table->chosen();
    std::vector<TableRow> rows;
    for (const core::ReplacementRow& row : m_plan->rows)
        rows.push_back(tableRowOf(row, *m_plan));
    m_rows->setTable({{tr("kit"), false},
                      {tr("wanted"), true},
                      {tr("stock"), true},
                      {tr("order"), false},
                      {tr("number"), true},
                      {tr("cost"), true}},
                     rows);
    m_table->choose(m_rows->indexOfKey(before) >= 0 || rows.empty() ? before : rows.front().key);
    m_empty->setVisible(rows.empty());
    m_open->setEnabled(!rows.empty());
    showRow(m_table->chosen());
}

const core::ReplacementRow* ReplacePage::rowOf(const QString& key) const {
    if (!m_plan) return nullptr;
    const auto found = std::find_if(m_plan->rows.begin(), m_plan->rows.end(),
                                    [&](const core::ReplacementRow& row) { return keyOf(row) == key; });
    return found == m_plan->rows.end() ? nullptr : &*found;
}

void ReplacePage::showRow(const QString& key) {
    if (const core::ReplacementRow* row = rowOf(key))
        m_row->showRow(*row, *m_plan, m_lives);
    else
        m_row->showNothingYet(nothingToPlan());
}

void ReplacePage::save(Paper paper) {
    const char* const ending = paper == Paper::Sheet ? "pdf" : paper == Paper::Csv ? "csv" : "ics";
    const QString proposed = tr("order %1.%2").arg(text(m_plan->today.iso()), QLatin1String(ending));
    const QString file = fileToSave(tools().choosers, this, proposed);
    if (file.isEmpty()) return;
    core::Outcome written = core::Done{};
    const std::string path = file.toStdString();
    if (paper == Paper::Sheet) {
        if (const auto sheets = writeOrderSheet(path, m_club.toStdString(), *m_plan); !sheets)
            written = sheets.error();
    } else {
        const std::string text = paper == Paper::Csv
                                     ? orderCsv(*m_plan)
                                     : orderCalendar(m_club.toStdString(), *m_plan, tools().time().at);
        written = writeWholeFile(path, QByteArray::fromStdString(text));
    }
    if (written)
        say(tr("Saved: %1").arg(text(file)));
    else
        sayError(written.error());
    emit saved();
}

} // namespace app
