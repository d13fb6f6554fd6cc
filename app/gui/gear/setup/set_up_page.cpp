#include "app/gui/gear/setup/set_up_page.h"

#include "app/gui/gear/setup/fit_out_panel.h"
#include "app/gui/gear/setup/set_up_notes.h"
#include "app/gui/gear/setup/set_up_row.h"
#include "app/gui/gear/setup/set_up_words.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "core/club/club_answers.h"
#include "core/register/sheets.h"

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace app {

SetUpPage::SetUpPage(GearTools given, QWidget* parent)
    : GearPage(std::move(given), "setUpPage", parent)
    , m_summary(wordsLabel(this, "heading", "setUpSummaryLabel"))
    , m_spreadsheet(wordsButton(this, tr("Import a spreadsheet…"), "setUpSpreadsheetButton"))
    , m_away(wordsButton(this, {}, "setUpPutAwayButton"))
    , m_stack(new QStackedWidget(this))
    , m_fitOut(new FitOutPanel(tools(), this)) {
    m_stack->addWidget(buildSteps());
    m_stack->addWidget(m_fitOut);
    column(2 * spaceUnit).addWidget(m_stack);
    connect(m_fitOut, &FitOutPanel::leaveWanted, this, &SetUpPage::showSteps);
    connect(m_spreadsheet, &QPushButton::clicked, this, [this] { tools().showPage("spreadsheet"); });
    connect(m_away, &QPushButton::clicked, this, [this] {
        SetUpNotes notes(tools().club.file());
        notes.putAway(notes.isWanted());
        adaptAway();
    });
}

QWidget* SetUpPage::buildSteps() {
    auto* rows = new QWidget;
    auto* list = new QVBoxLayout(rows);
    list->setContentsMargins(0, 0, spaceUnit, 0);
    list->setSpacing(0);
    for (int i = 0; i <= static_cast<int>(core::SetUpStep::Last); ++i) {
        const auto step = static_cast<core::SetUpStep>(i);
        m_rows.push_back(new SetUpRow(step, rows));
        list->addWidget(m_rows.back());
        connect(m_rows.back(), &SetUpRow::pressed, this, [this, step] { press(step); });
    }
    list->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setWidget(rows);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_away->setProperty("role", "plain");
    auto* foot = new QHBoxLayout;
    foot->setSpacing(spaceUnit);
    foot->addWidget(m_spreadsheet);
    foot->addStretch(1);
    foot->addWidget(m_away);
    auto* steps = new QWidget;
    auto* layout = new QVBoxLayout(steps);
    layout->setContentsMargins({});
    layout->setSpacing(spaceUnit);
    layout->addWidget(m_summary);
    layout->addWidget(scroll, 1);
    layout->addLayout(foot);
    return steps;
}

void SetUpPage::refresh() {
    read([arePrinted = SetUpNotes(tools().club.file()).arePrinted(),
          today = today()](core::Club& club) { return club.answers().setUp(arePrinted, today); },
         [this](const std::vector<core::SetUpTick>& ticks) { take(ticks); });
    if (m_stack->currentWidget() == m_fitOut) m_fitOut->refresh();
}

void SetUpPage::take(const std::vector<core::SetUpTick>& ticks) {
    m_ticks = ticks;
    const auto done = std::count_if(ticks.begin(), ticks.end(), [](const auto& tick) { return tick.isDone; });
    m_summary->setText(core::isSetUp(ticks)
                           ? setUpInWords(ticks)
                           : tr("%1 of %2 are done, in any order.").arg(done).arg(ticks.size()));
    bool isFirst = true;
    for (std::size_t i = 0; i < std::min(ticks.size(), m_rows.size()); ++i) {
        m_rows[i]->setTick(ticks[i]);
        m_rows[i]->setUsual(isFirst && !ticks[i].isDone);
        isFirst = isFirst && ticks[i].isDone;
    }
    adaptAway();
}

void SetUpPage::adaptAway() {
    const SetUpNotes notes(tools().club.file());
    m_away->setText(notes.isWanted() ? tr("Take it off the board") : tr("Say it on the board"));
    m_away->setVisible(!core::isSetUp(m_ticks));
}

void SetUpPage::press(core::SetUpStep step) {
    switch (step) {
    case core::SetUpStep::People:
        tools().showSheet(core::SheetId::People, {});
        break;
    case core::SetUpStep::Boats:
        tools().showSheet(core::SheetId::Boats, {});
        break;
    case core::SetUpStep::Rules:
        tools().showSheet(core::SheetId::KitTypes, {});
        break;
    case core::SetUpStep::Kit:
        showFitOut();
        break;
    case core::SetUpStep::Tags:
        tools().showPage("tags");
        break;
    case core::SetUpStep::FirstCheck:
        if (tools().showBoard) tools().showBoard();
        break;
    }
}

void SetUpPage::showFitOut(const QString& boat) {
    const auto& kit = std::find_if(m_ticks.begin(), m_ticks.end(),
                                   [](const auto& tick) { return tick.step == core::SetUpStep::Kit; });
    const bool isLacking = kit != m_ticks.end() && !kit->lacking.empty();
    m_stack->setCurrentWidget(m_fitOut);
    m_fitOut->show(boat.isEmpty() && isLacking ? QString::fromStdString(kit->lacking.front()) : boat);
}

void SetUpPage::showSteps() {
    m_stack->setCurrentIndex(0);
    refresh();
}

} // namespace app
