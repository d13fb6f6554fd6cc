#include "app/gui/gear/record/record_page.h"

#include "app/gui/gear/record/evidence_panel.h"
#include "app/gui/gear/record/history_panel.h"
#include "app/gui/gear/record/verify_panel.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/part_stack.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QRadioButton>
#include <QVBoxLayout>

namespace app {

RecordPage::RecordPage(const GearTools& tools, QWidget* parent)
    : GearPage(tools, "recordPage", parent)
    , m_verify(new VerifyPanel(tools, this))
    , m_evidence(new EvidencePanel(tools, this))
    , m_history(new HistoryPanel(tools, this))
    , m_row(new FlowLayout)
    , m_choices(new QButtonGroup(this))
    , m_panels(new PartStack(this)) {
    addPanel(tr("What was aboard"), "recordEvidenceChoice", *m_evidence);
    addPanel(tr("History"), "recordHistoryChoice", *m_history);
    addPanel(tr("Is the record unaltered?"), "recordVerifyChoice", *m_verify);
    QVBoxLayout& layout = column(spaceUnit);
    layout.setContentsMargins(3 * spaceUnit, spaceUnit, 3 * spaceUnit, spaceUnit);
    layout.setSpacing(0);
    layout.addLayout(m_row);
    layout.addWidget(m_panels, 1);
    showPanel(*m_evidence);
}

void RecordPage::addPanel(const QString& name, const char* objectName, QWidget& panel) {
    auto* choice = new QRadioButton(name, this);
    choice->setObjectName(objectName);
    m_choices->addButton(choice, m_panels->addWidget(&panel));
    m_row->addWidget(choice);
    connect(choice, &QRadioButton::toggled, this, [this, &panel](bool chosen) {
        if (chosen) m_panels->setCurrentWidget(&panel);
    });
}

void RecordPage::showPanel(QWidget& panel) {
    m_choices->button(m_panels->indexOf(&panel))->setChecked(true);
}

bool RecordPage::takeScan(const QString& text, core::SeenBy /*how*/) {
    if (m_panels->currentWidget() != m_history) return false;
    m_history->tell(text);
    return true;
}

void RecordPage::refresh() {
    m_evidence->refresh();
    m_history->refresh();
}

} // namespace app
