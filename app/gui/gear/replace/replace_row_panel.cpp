#include "app/gui/gear/replace/replace_row_panel.h"

#include "app/gui/gear/replace/arrival_panel.h"
#include "app/gui/gear/replace/life_plot.h"
#include "app/gui/gear/replace/stock_plot.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/part_stack.h"
#include "app/text/cautions.h"
#include "app/text/plan_sentences.h"
#include "app/text/words.h"
#include "core/plan/lasting/kit_life.h"
#include "core/plan/replacement/replacement_plan.h"

#include <QButtonGroup>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

#include <algorithm>

namespace app {

ReplaceRowPanel::ReplaceRowPanel(const GearTools& tools, QWidget* parent)
    : QWidget(parent)
    , m_row(new FlowLayout)
    , m_chosen(wordsLabel(this, "remark", "replaceChosenLabel"))
    , m_choices(new QButtonGroup(this))
    , m_parts(new PartStack(this))
    , m_stock(new StockPlot(this))
    , m_life(new QWidget(this))
    , m_lifePlot(new LifePlot(m_life))
    , m_lifeLabel(wordsLabel(m_life, "remark", "replaceLifeLabel"))
    , m_arrival(new ArrivalPanel(tools, this)) {
    setObjectName("replaceRowPanel");
    build();
}

void ReplaceRowPanel::build() {
    auto* lifeLayout = new QVBoxLayout(m_life);
    lifeLayout->setContentsMargins(0, 0, 0, 0);
    lifeLayout->addWidget(m_lifePlot, 1);
    lifeLayout->addWidget(m_lifeLabel);
    auto* caution = wordsLabel(m_life, "footnote", "replaceLifeCautionLabel");
    caution->setText(lastingCaution());
    lifeLayout->addWidget(caution);
    addPart(tr("stock"), "replaceStockChoice", m_stock);
    addPart(tr("how long it lasts"), "replaceLifeChoice", m_life);
    addPart(tr("arrived"), "replaceArrivedChoice", m_arrival);
    m_choices->button(0)->setChecked(true);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit / 2);
    layout->addLayout(m_row);
    layout->addWidget(m_chosen);
    layout->addWidget(m_parts, 1);
}

void ReplaceRowPanel::addPart(const QString& name, const char* objectName, QWidget* part) {
    auto* choice = new QRadioButton(name, this);
    choice->setObjectName(objectName);
    m_choices->addButton(choice, m_parts->addWidget(part));
    m_row->addWidget(choice);
    connect(choice, &QRadioButton::toggled, this, [this, part](bool chosen) {
        if (!chosen) return;
        m_parts->setCurrentWidget(part);
        m_chosen->setVisible(part == m_stock); // the others name the kit themselves, and need the room
    });
}

void ReplaceRowPanel::addBack(QPushButton* back) {
    m_row->insertWidget(0, back);
}

void ReplaceRowPanel::takeKeyboard() {
    m_choices->checkedButton()->setFocus(Qt::TabFocusReason);
}

void ReplaceRowPanel::showRow(const core::ReplacementRow& row, const core::ReplacementPlan& plan,
                              const std::vector<core::KitLife>& lives) {
    QStringList words{tr("%1: %2 in stock, %3 wanted").arg(kitInWords(row)).arg(row.stock).arg(row.wanted)};
    if (row.runsShort()) words << shortInWords(row, plan.today) << quantityInWords(row);
    words << orderInWords(row, plan) << chancesInWords(row, plan);
    words.removeAll(QString());
    m_chosen->setText(withCapital(words.join(tr("; "))) + QLatin1Char('.'));
    m_stock->setRow(row, plan);
    showLife(row, lives);
    m_arrival->setKit(row.kitType, row.size, std::max(1, row.quantity.value_or(row.pack)));
}

void ReplaceRowPanel::showNothingYet(const QString& sentence) {
    m_stock->sayNothingYet(sentence);
    m_lifePlot->sayNothingYet(sentence);
    m_chosen->clear();
    m_lifeLabel->clear();
}

void ReplaceRowPanel::showLife(const core::ReplacementRow& row, const std::vector<core::KitLife>& lives) {
    const auto life = std::find_if(lives.begin(), lives.end(),
                                   [&](const core::KitLife& each) { return each.kitType == row.kitType; });
    m_lifePlot->setVisible(life != lives.end());
    if (life == lives.end()) {
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

} // namespace app
