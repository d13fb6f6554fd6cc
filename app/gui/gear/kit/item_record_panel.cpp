#include "app/gui/gear/kit/item_record_panel.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/reason_form.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_kit.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {
namespace {

QString dayOf(const core::ServiceEntry& record) {
    const auto day = core::CalendarDay::parse(record.day);
    return day ? inWords(*day) : text(record.day);
}

QString recordInWords(const core::ServiceEntry& record) {
    const QString rule =
        record.part.empty()
            ? text(record.rule)
            : ItemRecordPanel::tr("%1, %2", "part, rule").arg(text(record.part), text(record.rule));
    return record.passed ? ItemRecordPanel::tr("%1, %2: passed").arg(rule, dayOf(record))
                         : ItemRecordPanel::tr("%1, %2: not passed").arg(rule, dayOf(record));
}

} // namespace

ItemRecordPanel::ItemRecordPanel(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "itemRecordPanel", parent)
    , m_eventRow(new QWidget(this))
    , m_events(new FlowLayout(m_eventRow))
    , m_recordRow(new QWidget(this))
    , m_record(new ChoiceBox(m_recordRow))
    , m_error(wordsButton(m_recordRow, tr("Made in error…"), "recordErrorButton"))
    , m_reason(new ReasonForm("recordError",
                              tr("Why does this record not count? It stays in the history with your reason."),
                              tr("Withdraw this record"), this)) {
    build();
    connect(m_error, &QPushButton::clicked, this, [this] { showReason(!m_reason->isVisibleTo(this)); });
    connect(m_record, &QComboBox::currentIndexChanged, this, [this] { showReason(false); });
    connect(m_reason, &ReasonForm::pressed, this, &ItemRecordPanel::withdraw);
}

void ItemRecordPanel::build() {
    m_events->setContentsMargins(0, 0, 0, 0);
    m_record->setObjectName("serviceRecordBox");
    m_record->setAccessibleName(tr("service records of this item"));
    m_record->takeRoom(6);
    auto* records = new QHBoxLayout(m_recordRow);
    records->setContentsMargins(0, 0, 0, 0);
    records->setSpacing(spaceUnit);
    records->addWidget(m_record, 1);
    records->addWidget(m_error);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit / 2);
    layout->addWidget(m_eventRow);
    layout->addWidget(m_recordRow);
    layout->addWidget(m_reason);
    m_eventRow->hide();
    m_recordRow->hide();
    showReason(false);
}

void ItemRecordPanel::say(const QString& sentence, bool toLookAt) {
    emit said(sentence, toLookAt);
}

void ItemRecordPanel::open(const QString& code) {
    if (m_code != code) showReason(false);
    m_code = code;
    read(
        [code = code.toStdString()](core::Club& club) {
            return Read{club.kit().eventsFor(code), club.kit().serviceRecords(code)};
        },
        [this](Read read) { take(std::move(read)); });
}

void ItemRecordPanel::take(Read read) {
    m_records = std::move(read.records);
    showEvents(read.events);
    const QString before = m_record->currentText();
    {
        const QSignalBlocker blocked(m_record);
        m_record->clear();
        for (const core::ServiceEntry& record : m_records)
            m_record->addItem(recordInWords(record));
        m_record->setCurrentIndex(std::max(0, m_record->findText(before)));
    }
    m_recordRow->setVisible(!m_records.empty());
    if (m_record->currentText() != before) showReason(false);
}

void ItemRecordPanel::showEvents(const std::vector<std::string>& events) {
    while (QLayoutItem* item = m_events->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_eventRow->setVisible(!events.empty());
    if (events.empty()) return;
    m_events->addWidget(wordsIn("remark", tr("It was used or inflated, today:"), m_eventRow));
    for (const std::string& event : events) {
        auto* button = wordsButton(m_eventRow, withCapital(text(event)), "happenedButton");
        connect(button, &QPushButton::clicked, this, [this, event] { happened(event); });
        m_events->addWidget(button);
    }
}

void ItemRecordPanel::happened(const std::string& event) {
    write(
        [code = m_code.toStdString(), event](core::Club& club, const std::string& by, core::Moment moment) {
            return club.kit().happened(code, event, moment.today, by, moment);
        },
        [this](const core::Happened& happened) {
            emit settled(happened.isNew ? tr("Recorded for today: %1. What its rules ask for is due now.")
                                              .arg(text(happened.event))
                                        : tr("%1 is recorded for today already. Nothing was changed.")
                                              .arg(withCapital(text(happened.event))));
        });
}

void ItemRecordPanel::showReason(bool isShown) {
    m_reason->setVisible(isShown);
    m_eventRow->setVisible(!isShown && m_events->count() > 0); // there is room for one of them
    m_reason->begin();
    if (isShown) m_reason->takeKeyboard();
}

void ItemRecordPanel::withdraw(const QString& why) {
    const int chosen = m_record->currentIndex();
    if (chosen < 0 || chosen >= static_cast<int>(m_records.size())) return;
    write(
        [code = m_code.toStdString(), record = m_records[static_cast<std::size_t>(chosen)],
         why = why.toStdString()](core::Club& club, const std::string& by, core::Moment moment) {
            return club.kit().withdrawRecord(code, record, why, by, moment);
        },
        [this](core::Done) {
            showReason(false);
            emit settled(tr("Withdrawn: the record counts no more, and the item's days and state are what "
                            "they were before it."));
        });
}

} // namespace app
