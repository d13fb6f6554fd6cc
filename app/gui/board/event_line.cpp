#include "app/gui/board/event_line.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/text/errors.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <utility>

namespace app {

TodaysEvent readTodaysEvent(const core::Club& club, core::Moment now) {
    TodaysEvent event{club.events().held(now.at), {}, now.today};
    for (const std::string& name : club.events().names())
        event.names << text(name);
    return event;
}

EventLine::EventLine(QWidget* parent)
    : QWidget(parent)
    , m_words(wordsLabel(this, "remark", "todaysEventLabel"))
    , m_name(new ChoiceBox(this))
    , m_begin(wordsButton(this, tr("Begin"), "beginEventButton"))
    , m_end(wordsButton(this, tr("End it"), "endEventButton")) {
    setObjectName("eventLine");
    m_words->setWordWrap(false);
    m_name->setObjectName("todaysEventBox");
    m_name->setEditable(true);
    m_name->setInsertPolicy(QComboBox::NoInsert);
    m_name->takeRoom(14);
    m_name->lineEdit()->setObjectName("todaysEventEdit");
    m_name->lineEdit()->setAccessibleName(tr("today's event: a patrol, training day or carnival"));
    m_name->lineEdit()->setPlaceholderText(tr("patrol, training …"));
    m_name->setAccessibleName(m_name->lineEdit()->accessibleName());
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    layout->addStretch(1);
    for (QWidget* part : std::initializer_list<QWidget*>{m_words, m_name, m_begin, m_end})
        layout->addWidget(part);
    connect(m_name, &QComboBox::editTextChanged, this,
            [this](const QString& typed) { m_begin->setEnabled(!typed.trimmed().isEmpty()); });
    connect(m_name->lineEdit(), &QLineEdit::returnPressed, this,
            [this] { m_begin->setFocus(Qt::TabFocusReason); });
    connect(m_begin, &QPushButton::clicked, this, &EventLine::begin);
    connect(m_end, &QPushButton::clicked, this, &EventLine::endPressed);
    setEvent({});
}

void EventLine::setEvent(const TodaysEvent& event) {
    const bool isHeld = event.held.has_value();
    m_words->setText(isHeld ? tr("Today's event: %1, until %2")
                                  .arg(text(event.held->event), inWords(event.held->until, event.today))
                            : tr("Today's event:"));
    m_name->clear();
    m_name->addItems(event.names);
    m_name->setEditText({});
    m_begin->setEnabled(false);
    m_name->setVisible(!isHeld);
    m_begin->setVisible(!isHeld);
    m_end->setVisible(isHeld);
}

void EventLine::begin() {
    if (const QString name = m_name->currentText().trimmed(); !name.isEmpty()) emit beginPressed(name);
}

void keepTodaysEvent(EventLine& line, ClubThread& club, TimeSource time,
                     std::function<void(const QString& sentence)> say) {
    using Change = std::function<core::Result<core::HeldEvent>(core::ClubEvents, core::Moment)>;
    const auto perform = [&line, &club, time = std::move(time), say = std::move(say)](Change change) {
        club.ask(
            &line,
            [now = time(), change = std::move(change)](core::Club& open) {
                const auto done = change(open.events(), now);
                const QString why = done ? QString() : errorSentence(done.error());
                return std::pair(why, readTodaysEvent(open, now));
            },
            [&line, say](const std::pair<QString, TodaysEvent>& read) {
                line.setEvent(read.second);
                say(read.first);
            });
    };
    QObject::connect(&line, &EventLine::beginPressed, &line, [perform](const QString& event) {
        perform([event = event.toStdString()](core::ClubEvents events, core::Moment now) {
            return events.begin(event, {}, {}, now);
        });
    });
    QObject::connect(&line, &EventLine::endPressed, &line, [perform] {
        perform([](core::ClubEvents events, core::Moment now) { return events.end({}, now); });
    });
}

} // namespace app
