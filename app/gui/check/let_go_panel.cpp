#include "app/gui/check/let_go_panel.h"

#include "app/gui/club/check_state.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/reason_form.h"
#include "app/text/act_words.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {

LetGoPanel::LetGoPanel(QWidget* parent)
    : QWidget(parent)
    , m_newest(wordsLabel(this, "quiet", "letGoNewestLabel"))
    , m_reason(new ReasonForm("closeUnsigned", tr("Why is it closed without a signature?"),
                              tr("Close it unsigned"), this)) {
    setObjectName("letGoPanel");
    auto* back = wordsButton(this, tr("Back to the check"), "letGoBackButton");
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(spaceUnit, 2 * spaceUnit, spaceUnit, spaceUnit);
    layout->setSpacing(spaceUnit);
    layout->addWidget(wordsIn("heading", tr("Close this check unsigned"), this));
    layout->addWidget(
        wordsIn("remark",
                tr("Nobody signs it and nothing is marked as missing. What was seen, and what was "
                   "damaged, stays recorded; hours of a trip do not count."),
                this));
    layout->addWidget(m_newest);
    layout->addSpacing(spaceUnit);
    layout->addWidget(m_reason);
    layout->addSpacing(2 * spaceUnit);
    layout->addWidget(back, 0, Qt::AlignLeft);
    layout->addStretch(1);
    connect(m_reason, &ReasonForm::pressed, this, &LetGoPanel::closePressed);
    connect(back, &QPushButton::clicked, this, &LetGoPanel::backPressed);
}

void LetGoPanel::begin(const CheckState& state, const QString& drafts) {
    m_newest->setText(state.newest ? tr("Recorded last: %1.").arg(actInWords(*state.newest)) : QString());
    m_newest->setVisible(state.newest.has_value());
    m_reason->begin(drafts);
    m_reason->takeKeyboard();
}

} // namespace app
