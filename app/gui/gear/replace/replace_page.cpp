#include "app/gui/gear/replace/replace_page.h"

#include "app/gui/gear/replace/arrival_panel.h"
#include "app/gui/gear/replace/life_plot.h"
#include "app/gui/gear/replace/stock_plot.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/plain_table.h"
#include "app/paper/order_sheet.h"
#include "app/paper/whole_file.h"
#include "app/text/cautions.h"
#include "app/text/plan_sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_plans.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

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
        order =
            (row.late ? ReplacePage::tr("late: %1") : ReplacePage::tr("by %1")).arg(inWords(*row.orderBy));
    QString number;
    if (row.runsShort()) number = row.quantity ? QString::number(*row.quantity) : ReplacePage::tr("again");
    return {keyOf(row),
            mark,
            markWordOf(mark),
            {kitInWords(row), QString::number(row.wanted), QString::number(row.stock), order, number,
             row.cost ? moneyInWords(*row.cost) : QString()}};
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
        years << budgetInWords(year);
    return years.isEmpty() ? QString() : ReplacePage::tr("Cost, %1.").arg(years.join(ReplacePage::tr("; ")));
}

ReplacePage::ReplacePage(GearTools given, QWidget* parent)
    : GearPage(std::move(given), "replacePage", parent)
    , m_months(new ChoiceBox(this))
    , m_confidence(new ChoiceBox(this))
    , m_summary(wordsLabel(this, "heading", "replaceSummaryLabel"))
    , m_cost(wordsLabel(this, "remark", "replaceCostLabel"))
    , m_rows(new PlainTableModel(this))
    , m_table(new PlainTable(*m_rows, this))
    , m_chosen(wordsLabel(this, "remark", "replaceChosenLabel"))
    , m_choices(new QButtonGroup(this))
    , m_parts(new QStackedWidget(this))
    , m_stock(new StockPlot(this))
    , m_life(new QWidget(this))
    , m_lifePlot(new LifePlot(m_life))
    , m_lifeLabel(wordsLabel(m_life, "remark", "replaceLifeLabel"))
    , m_arrival(new ArrivalPanel(tools(), this)) {
    build();
    connect(m_months, &QComboBox::activated, this, &ReplacePage::refresh);
    connect(m_confidence, &QComboBox::activated, this, &ReplacePage::refresh);
    connect(m_table, &PlainTable::rowChosen, this, &ReplacePage::showRow);
    connect(m_arrival, &ArrivalPanel::arrived, this, &ReplacePage::refresh);
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
    m_table->setObjectName("replaceTable");
    m_table->setAccessibleName(tr("what runs short, by order-by day"));
    m_table->setMinimumHeight(168);
    auto* head = new QHBoxLayout;
    head->setSpacing(spaceUnit);
    head->addWidget(m_summary, 1);
    addWithWord(*head, tr("plan for"), m_months);
    addWithWord(*head, tr("confidence"), m_confidence);
    m_confidence->setAccessibleName(tr("confidence that no kit runs short"));
    QVBoxLayout& layout = column(spaceUnit);
    layout.addLayout(head);
    layout.addWidget(m_cost);
    layout.addWidget(m_table, 12);
    layout.addWidget(buildBeside(), 10);
    layout.addWidget(saidLabel("replaceSaidLabel"));
    addCaution(layout, "replaceCautionLabel", planCaution());
}

/// What is shown of the chosen row, and the sheets of the whole plan.
QWidget* ReplacePage::buildBeside() {
    auto* beside = new QWidget(this);
    auto* lifeLayout = new QVBoxLayout(m_life);
    lifeLayout->setContentsMargins(0, 0, 0, 0);
    lifeLayout->addWidget(m_lifePlot, 1);
    lifeLayout->addWidget(m_lifeLabel);
    auto* caution = wordsLabel(m_life, "footnote", "replaceLifeCautionLabel");
    caution->setText(lastingCaution());
    lifeLayout->addWidget(caution);
    auto* choices = new QHBoxLayout;
    choices->setSpacing(spaceUnit);
    addPart(*choices, tr("stock"), "replaceStockChoice", m_stock);
    addPart(*choices, tr("how long it lasts"), "replaceLifeChoice", m_life);
    addPart(*choices, tr("arrived"), "replaceArrivedChoice", m_arrival);
    choices->addStretch(1);
    const auto paper = [&](const QString& words, const char* name, Paper which) {
        auto* button = wordsButton(beside, words, name);
        connect(button, &QPushButton::clicked, this, [this, which] { save(which); });
        button->setEnabled(false);
        choices->addWidget(button);
        m_papers.push_back(button);
    };
    paper(tr("Order sheet…"), "orderSheetButton", Paper::Sheet);
    paper(tr("CSV…"), "orderCsvButton", Paper::Csv);
    paper(tr("Calendar…"), "orderCalendarButton", Paper::Calendar);
    m_choices->button(0)->setChecked(true);
    auto* layout = new QVBoxLayout(beside);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit / 2);
    layout->addLayout(choices);
    layout->addWidget(m_chosen);
    layout->addWidget(m_parts, 1);
    return beside;
}

void ReplacePage::addPart(QHBoxLayout& row, const QString& name, const char* objectName, QWidget* part) {
    auto* choice = new QRadioButton(name, this);
    choice->setObjectName(objectName);
    m_choices->addButton(choice, m_parts->addWidget(part));
    row.addWidget(choice);
    connect(choice, &QRadioButton::toggled, this, [this, part](bool chosen) {
        if (!chosen) return;
        m_parts->setCurrentWidget(part);
        m_chosen->setVisible(part == m_stock); // the others name the kit themselves, and need the room
    });
}

void ReplacePage::showEvent(QShowEvent* event) {
    m_arrival->refresh();
    GearPage::showEvent(event);
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
    m_club = read->club;
    m_plan = read->plan;
    m_lives = read->lives;
    m_summary->setText(summaryOf(*m_plan));
    m_cost->setText(costOf(*m_plan));
    m_cost->setVisible(!m_cost->text().isEmpty());
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
    showRow(m_table->chosen());
}

const core::ReplacementRow* ReplacePage::rowOf(const QString& key) const {
    if (!m_plan) return nullptr;
    const auto found = std::find_if(m_plan->rows.begin(), m_plan->rows.end(),
                                    [&](const core::ReplacementRow& row) { return keyOf(row) == key; });
    return found == m_plan->rows.end() ? nullptr : &*found;
}

void ReplacePage::showRow(const QString& key) {
    const core::ReplacementRow* row = rowOf(key);
    if (!row) return;
    QStringList words{
        tr("%1: %2 in stock, %3 wanted").arg(kitInWords(*row)).arg(row->stock).arg(row->wanted)};
    if (row->runsShort()) words << shortInWords(*row, m_plan->today) << quantityInWords(*row);
    words << orderInWords(*row, *m_plan) << chancesInWords(*row, *m_plan);
    words.removeAll(QString());
    m_chosen->setText(withCapital(words.join(tr("; "))) + QLatin1Char('.'));
    m_stock->setRow(*row, *m_plan);
    showLife(*row);
    m_arrival->setKit(row->kitType, row->size, std::max(1, row->quantity.value_or(row->pack)));
}

void ReplacePage::showLife(const core::ReplacementRow& row) {
    const auto life = std::find_if(m_lives.begin(), m_lives.end(),
                                   [&](const core::KitLife& each) { return each.kitType == row.kitType; });
    m_lifePlot->setVisible(life != m_lives.end());
    if (life == m_lives.end()) {
        m_lifeLabel->setText(tr("There is no item of it yet."));
        return;
    }
    m_lifePlot->setLife(*life);
    QStringList words{endingsInWords(*life), medianInWords(*life), weibullInWords(*life)};
    for (const core::AllowedLife& allowed : life->allowed)
        words << allowedInWords(allowed);
    words.removeAll(QString());
    m_lifeLabel->setText(withCapital(tr("%1: %2").arg(kitInWords(row), words.join(tr("; ")))) +
                         QLatin1Char('.'));
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
