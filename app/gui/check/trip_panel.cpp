#include "app/gui/check/trip_panel.h"

#include "app/gui/check/trip_words.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/drafts.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRect>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

/// Empty when it is no number of 0 or more.
std::optional<double> numberIn(const QLineEdit& field) {
    bool isNumber = false;
    const double number = field.text().trimmed().replace(',', '.').toDouble(&isNumber);
    return isNumber && number >= 0 ? std::optional(number) : std::nullopt;
}

bool isEmpty(const QLineEdit& field) {
    return field.text().trimmed().isEmpty();
}

constexpr int mostOfLeast = 120; ///< width of a field that may be narrower than its hint

} // namespace

TripPanel::TripPanel(QWidget* parent)
    : QWidget(parent)
    , m_now(core::Instant::fromMillis(0))
    , m_drafts(new Drafts(this))
    , m_people(wordsIn("remark", {}, this))
    , m_said(wordsIn("look", {}, this))
    , m_write(new QPushButton(tr("Write it into the log"), this)) {
    setObjectName("tripPanel");
    m_write->setObjectName("writeTripButton");
    m_write->setProperty("role", "usual");
    auto* back = new QPushButton(tr("Back to the check"), this);
    back->setObjectName("tripBackButton");
    auto* form = m_form = new QGridLayout;
    form->setHorizontalSpacing(2 * spaceUnit);
    form->setVerticalSpacing(spaceUnit);
    form->setColumnStretch(1, 1);
    form->setColumnStretch(3, 1);
    m_left = addField("tripLeftEdit", tr("left"), tr("like 06:31"));
    m_back = addField("tripBackEdit", tr("back"), tr("like 07:12"));
    m_hours = addField("tripHoursEdit", tr("engine hours"), tr("like 0.7"));
    m_launches = addField("tripLaunchesEdit", tr("launches"), {});
    m_fuel = addField("tripFuelEdit", tr("fuel"), tr("used, left, or filled up"));
    m_incidents = addField("tripIncidentsEdit", tr("incidents"), tr("what happened, in a sentence"));
    setPairs(2);

    auto* buttons = new FlowLayout;
    buttons->addWidget(back);
    buttons->addStretch();
    buttons->addWidget(m_write);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(spaceUnit, 0, spaceUnit, 0);
    layout->setSpacing(spaceUnit);
    layout->addWidget(wordsIn("heading", tr("The trip"), this));
    layout->addWidget(m_people);
    layout->addLayout(form);
    layout->addWidget(m_said);
    layout->addLayout(buttons);
    layout->addStretch(1);
    connect(back, &QPushButton::clicked, this, &TripPanel::backPressed);
    connect(m_write, &QPushButton::clicked, this, &TripPanel::write);
    connect(m_incidents, &QLineEdit::returnPressed, this, [this] { m_write->setFocus(Qt::TabFocusReason); });
}

/// What is short stands side by side where there is room: the page must not be higher than a small screen.
void TripPanel::setPairs(int pairs) {
    for (int i = 0; i < m_fields.size(); ++i) {
        const bool isShort = i < 2 * pairs;
        const int row = isShort ? i / 2 : i - pairs;
        const int column = isShort ? i % 2 * 2 : 0;
        m_form->addWidget(m_fields[i].first, row, column);
        m_form->addWidget(m_fields[i].second, row, column + 1, 1, isShort ? 1 : 3);
    }
}

QLineEdit* TripPanel::addField(const QString& name, const QString& words, const QString& hint) {
    auto* field = new QLineEdit(this);
    field->setObjectName(name);
    field->setAccessibleName(words);
    field->setPlaceholderText(hint);
    field->setToolTip(hint); // where the field is narrower
    roomForHint(*field);
    field->setMinimumWidth(std::min(field->minimumWidth(), mostOfLeast));
    m_drafts->keep(*field);
    auto* label = wordsIn("remark", words, this);
    label->setWordWrap(false);
    label->setBuddy(field);
    m_fields.push_back({label, field});
    return field;
}

void TripPanel::begin(const core::Operation& proposed, core::Instant now, const QString& drafts) {
    m_drafts->close();
    m_proposed = proposed;
    m_now = now;
    m_people->setText(proposed.people.empty() ? tr("Nobody is named aboard.")
                                              : tr("Aboard: %1.").arg(listed(proposed.people)));
    m_left->setText(proposed.left ? timeInWords(*proposed.left) : QString());
    m_back->setText(proposed.back ? timeInWords(*proposed.back) : QString());
    m_hours->setText(proposed.hours ? numberInWords(*proposed.hours) : QString());
    m_launches->setText(QString::number(proposed.launches));
    m_fuel->setText(text(proposed.fuel));
    m_incidents->setText(text(proposed.incidents));
    m_drafts->open(drafts);
    m_said->clear();
    m_said->setVisible(false);
    m_left->setFocus(Qt::OtherFocusReason);
    m_left->selectAll();
}

void TripPanel::complain(QLineEdit& field, const QString& sentence) {
    m_said->setText(sentence);
    m_said->setVisible(true);
    field.setFocus(Qt::OtherFocusReason);
    field.selectAll();
}

void TripPanel::write() {
    core::Operation trip = m_proposed;
    trip.left = timeOn(m_proposed.left.value_or(m_now), m_left->text());
    trip.back = timeOn(m_proposed.back.value_or(m_now), m_back->text());
    trip.hours = numberIn(*m_hours);
    const auto launches = numberIn(*m_launches);
    trip.launches = static_cast<int>(launches.value_or(1));
    trip.fuel = m_fuel->text().trimmed().toStdString();
    trip.incidents = m_incidents->text().trimmed().toStdString();
    if (!trip.left && !isEmpty(*m_left))
        complain(*m_left, tr("Write the time like 06:31."));
    else if (!trip.back && !isEmpty(*m_back))
        complain(*m_back, tr("Write the time like 06:31."));
    else if (!trip.hours && !isEmpty(*m_hours))
        complain(*m_hours, tr("Write the engine hours as a number, like 0.7."));
    else if (!launches || trip.launches != *launches)
        complain(*m_launches, tr("Write how often the boat was launched, as a whole number."));
    else if (const auto written = core::operationFrom(trip, m_now.localDay()); !written)
        complain(*m_left, errorSentence(written.error()));
    else
        emit writePressed(trip);
}

} // namespace app
