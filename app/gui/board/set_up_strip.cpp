#include "app/gui/board/set_up_strip.h"

#include "app/gui/gear/setup/set_up_words.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace app {

SetUpStrip::SetUpStrip(QWidget* parent)
    : QWidget(parent)
    , m_words(wordsLabel(this, "remark", "setUpStripLabel")) {
    setObjectName("setUpStrip");
    setProperty("role", "panel");
    setAttribute(Qt::WA_StyledBackground);
    auto* goOn = wordsButton(this, tr("Go on setting up"), "setUpGoOnButton");
    auto* away = wordsButton(this, tr("Put away"), "setUpAwayButton");
    away->setProperty("role", "plain");
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(2 * spaceUnit, spaceUnit, 2 * spaceUnit, spaceUnit);
    row->setSpacing(spaceUnit);
    row->addWidget(m_words, 1);
    row->addWidget(goOn);
    row->addWidget(away);
    connect(goOn, &QPushButton::clicked, this, &SetUpStrip::goOnPressed);
    connect(away, &QPushButton::clicked, this, &SetUpStrip::putAwayPressed);
    setVisible(false);
}

void SetUpStrip::setTicks(const std::vector<core::SetUpTick>& ticks) {
    setVisible(!ticks.empty() && !core::isSetUp(ticks));
    m_words->setText(tr("Setting up: %1").arg(setUpInWords(ticks)));
}

} // namespace app
