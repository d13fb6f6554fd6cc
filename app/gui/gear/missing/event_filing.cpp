#include "app/gui/gear/missing/event_filing.h"

#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QLineEdit>
#include <QPushButton>

namespace app {

EventFiling::EventFiling(QWidget* parent)
    : QWidget(parent)
    , m_check(new ChoiceBox(this))
    , m_event(new ChoiceBox(this))
    , m_file(wordsButton(this, tr("File it there"), "fileCheckButton")) {
    setObjectName("eventFiling");
    m_check->setObjectName("filedCheckBox");
    m_check->setAccessibleName(tr("a check that belongs to another event"));
    m_check->takeRoom(16);
    m_event->setObjectName("otherEventBox");
    m_event->setEditable(true);
    m_event->setInsertPolicy(QComboBox::NoInsert);
    m_event->takeRoom(9);
    m_event->lineEdit()->setObjectName("otherEventEdit");
    m_event->lineEdit()->setAccessibleName(tr("the event that it belongs to"));
    m_event->lineEdit()->setPlaceholderText(tr("another event"));
    auto* row = new FlowLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    addWithWord(*row, tr("Wrongly filed?"), m_check, true);
    row->addWidget(m_event);
    row->addWidget(m_file);
    connect(m_event, &QComboBox::editTextChanged, this, &EventFiling::adapt);
    connect(m_event->lineEdit(), &QLineEdit::returnPressed, this,
            [this] { m_file->setFocus(Qt::TabFocusReason); });
    connect(m_file, &QPushButton::clicked, this, [this] {
        emit filePressed(m_check->currentData().toString(), m_event->currentText().trimmed());
    });
    setChecks({}, {}, core::CalendarDay::fromNumber(1));
}

void EventFiling::setChecks(const std::vector<core::FiledCheck>& checks, const QStringList& events,
                            core::CalendarDay today) {
    m_check->clear();
    for (const core::FiledCheck& check : checks)
        m_check->addItem(tr("%1, %2, %3", "boat, phase, when")
                             .arg(text(check.boat), nameInWords(check.phase), inWords(check.openedAt, today)),
                         text(check.check));
    m_event->clear();
    m_event->addItems(events);
    m_event->setEditText({});
    setVisible(!checks.empty());
    adapt();
}

void EventFiling::adapt() {
    m_file->setEnabled(m_check->count() > 0 && !m_event->currentText().trimmed().isEmpty());
}

} // namespace app
