#include "app/gui/check/check_head.h"

#include "app/gui/check/people_bar.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace app {

CheckHead::CheckHead(QWidget* parent)
    : QWidget(parent)
    , m_boat(new QLabel(this))
    , m_phase(new QLabel(this))
    , m_begun(wordsLabel(this, "footnote", "begunLabel"))
    , m_people(new PeopleBar(this)) {
    setProperty("role", "panel");
    setAttribute(Qt::WA_StyledBackground);
    m_boat->setObjectName("boatLabel");
    m_boat->setProperty("role", "boatName");
    m_phase->setObjectName("phaseLabel");
    m_phase->setProperty("role", "phase");
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(3 * spaceUnit, spaceUnit, 3 * spaceUnit, spaceUnit);
    layout->setSpacing(2 * spaceUnit);
    auto* names = new QVBoxLayout; // the people have the width
    names->setSpacing(0);
    names->addStretch(1);
    names->addWidget(m_boat);
    names->addWidget(m_phase);
    names->addWidget(m_begun);
    names->addStretch(1);
    layout->addLayout(names, 1);
    layout->addWidget(m_people, 3);
    connect(m_people, &PeopleBar::namesChosen, this, &CheckHead::namesChosen);
}

void CheckHead::begin(const QString& boat, core::Phase phase) {
    m_boat->setText(boat);
    m_phase->setText(nameInWords(phase));
    m_begun->hide();
    m_people->setEnabled(true);
}

void CheckHead::setState(const CheckState& state) {
    m_people->setPeople(texts(state.people), texts(state.names));
    if (!state.open.resumed) return;
    const core::CalendarDay day = state.open.openedAt.localDay();
    const QString begun = day == state.answer.today ? inWords(state.open.openedAt, day) : inWords(day);
    m_begun->setText(tr("begun %1").arg(begun));
    m_begun->show();
}

void CheckHead::openDriver() {
    m_people->openDriver();
}

void CheckHead::setNamesOpen(bool isOpen) {
    m_people->setEnabled(isOpen);
}

} // namespace app
