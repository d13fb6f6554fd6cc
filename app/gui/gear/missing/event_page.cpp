#include "app/gui/gear/missing/event_page.h"

#include "app/gui/gear/missing/event_filing.h"
#include "app/gui/gear/missing/event_words.h"
#include "app/gui/printout/paper_button.h"
#include "app/gui/printout/shown_list.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {

EventPage::EventPage(GearTools given, QWidget* parent)
    : GearPage(std::move(given), "eventPage", parent)
    , m_event(new ChoiceBox(this))
    , m_summary(wordsLabel(this, "heading", "eventSummaryLabel"))
    , m_lines(new RowListModel(this))
    , m_list(new RowList(*m_lines, this))
    , m_filing(new EventFiling(this)) {
    build();
    connect(m_filing, &EventFiling::filePressed, this, &EventPage::file);
    connect(m_event, &QComboBox::activated, this, [this] { show(m_event->currentText()); });
    connect(m_event->lineEdit(), &QLineEdit::returnPressed, this, [this] { show(m_event->currentText()); });
    connect(m_list, &RowList::rowPressed, this,
            [this](const QString& key) { tools().showItem(m_lines->codeOf(key)); });
}

void EventPage::build() {
    m_event->setObjectName("eventBox");
    m_event->setEditable(true);
    m_event->setInsertPolicy(QComboBox::NoInsert);
    m_event->lineEdit()->setObjectName("eventEdit");
    m_event->lineEdit()->setAccessibleName(tr("name of an event, or a day"));
    m_list->setObjectName("eventList");
    m_list->setAccessibleName(tr("what went out and came back"));
    auto* showIt = wordsButton(this, tr("Show"), "eventShowButton", true);
    connect(showIt, &QPushButton::clicked, this, [this] { show(m_event->currentText()); });
    auto* head = new FlowLayout;
    addWithWord(*head, tr("Event, or day"), m_event, true);
    head->addWidget(showIt);
    head->addWidget(shownListButton([this] {
        return tableOf(tr("Event %1").arg(m_event->currentText()), m_summary->text(), m_lines->rows());
    }));
    QVBoxLayout& layout = column(2 * spaceUnit);
    layout.addLayout(head);
    layout.addWidget(m_summary);
    layout.addWidget(m_list, 1);
    layout.addWidget(m_filing);
    layout.addWidget(saidLabel("eventSaidLabel"));
}

/// Offers the events that checks were filed under, and today; shows what was asked for last, else the newest.
void EventPage::refresh() {
    ask([](core::Club& club) { return club.events().names(); },
        [this](const std::vector<std::string>& events) {
            const QString day = text(today().iso());
            const QString before = m_event->currentText();
            m_event->clear();
            for (const std::string& event : events)
                m_event->addItem(text(event));
            m_event->addItem(day);
            m_event->setEditText(before.isEmpty() ? m_event->itemText(0) : before);
            show(m_event->currentText());
        });
}

void EventPage::show(const QString& event) {
    if (event.trimmed().isEmpty()) return;
    m_event->setEditText(event);
    read(
        [name = event.trimmed().toStdString()](core::Club& club) {
            Read read{club.events().tally(name), {}, club.events().checksOf(name)};
            if (!read.tally) return read;
            for (const core::BoatTally& boat : read.tally->boats)
                for (const core::ItemName& lost : boat.notReturned)
                    if (const auto item = club.kit().item(lost.id)) read.kitTypes[lost.id] = item->kitType;
            return read;
        },
        [this](const Read& read) { take(read); });
}

void EventPage::take(const Read& read) {
    if (read.tally) {
        m_summary->setText(summaryOf(*read.tally));
        m_lines->setRows(linesOf(*read.tally, read.kitTypes, today()));
    } else {
        m_summary->setText(tr("Nothing was filed under that: give the name of a patrol, training day or "
                              "carnival that checks were filed under, or a day like 2026-03-14."));
        m_lines->setRows({});
    }
    m_list->scrollToTop();
    QStringList events;
    for (int i = 0; i + 1 < m_event->count(); ++i) // behind them is today
        events << m_event->itemText(i);
    m_filing->setChecks(read.checks, events, today());
}

void EventPage::file(const QString& check, const QString& event) {
    write([check = check.toStdString(), event = event.toStdString()](
              core::Club& club, const std::string& /*by*/,
              core::Moment moment) { return club.events().fileUnder(check, event, moment); },
          [this, event](core::Done) {
              say(tr("The check is filed under %1 now.").arg(event));
              refresh();
          });
}

} // namespace app
