#include "app/gui/gear/register/pin_panel.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/text/text.h"
#include "core/club/club.h"
#include "core/club/club_pins.h"
#include "core/club/club_register.h"
#include "core/record/pin.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <utility>

namespace app {

PinPanel::PinPanel(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "pinPanel", parent)
    , m_heading(wordsLabel(this, "heading", "pinHeadingLabel"))
    , m_now(wordsLabel(this, "remark", "pinNowLabel"))
    , m_own(wordsEdit(this, "pinOwnEdit", tr("the PIN of before"), tr("the PIN of before")))
    , m_pin(wordsEdit(this, "pinNewEdit", tr("the new PIN"), tr("the new PIN: 4 to 12 characters")))
    , m_again(wordsEdit(this, "pinAgainEdit", tr("the new PIN once more"), tr("the same once more")))
    , m_keep(wordsButton(this, tr("Leave it"), "pinKeepButton"))
    , m_clear(wordsButton(this, tr("Remove the PIN"), "pinClearButton"))
    , m_set(wordsButton(this, {}, "pinSetButton", true)) {
    build();
    for (QLineEdit* edit : {m_own, m_pin, m_again}) {
        edit->setEchoMode(QLineEdit::Password);
        connect(edit, &QLineEdit::textChanged, this, &PinPanel::adapt);
    }
    connect(m_own, &QLineEdit::returnPressed, m_pin, [this] { m_pin->setFocus(Qt::TabFocusReason); });
    connect(m_pin, &QLineEdit::returnPressed, m_again, [this] { m_again->setFocus(Qt::TabFocusReason); });
    connect(m_again, &QLineEdit::returnPressed, m_set, [this] { m_set->setFocus(Qt::TabFocusReason); });
    connect(m_keep, &QPushButton::clicked, this, &PinPanel::kept);
    connect(m_clear, &QPushButton::clicked, this, &PinPanel::clear);
    connect(m_set, &QPushButton::clicked, this, &PinPanel::set);
    hide();
}

void PinPanel::build() {
    auto* what = wordsLabel(this, "quiet", "pinWhatLabel");
    what->setText(
        tr("A PIN keeps honest people from slips on a machine that several use: with a gear officer's "
           "PIN set, what only gear officers do is asked for it. It is no lock: whoever has the club "
           "file can read it. Checks are never held up by it."));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(spaceUnit);
    buttons->addWidget(m_keep);
    buttons->addWidget(m_clear);
    buttons->addStretch(1);
    buttons->addWidget(m_set);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    for (QWidget* each : std::initializer_list<QWidget*>{m_heading, m_now, m_own, m_pin, m_again, what,
                                                         saidLabel("pinSaidLabel")})
        layout->addWidget(each);
    layout->addLayout(buttons);
    layout->addStretch(1);
}

void PinPanel::ask(const std::string& person) {
    m_person = person;
    m_heading->setText(tr("PIN of %1").arg(text(person)));
    m_now->clear();
    for (QLineEdit* edit : {m_own, m_pin, m_again})
        edit->clear();
    say({});
    take(false, false);
    show();
    read(
        [person, day = today()](core::Club& club) {
            bool isOfficer = false;
            for (const core::Person& each : club.register_().peopleHere(day))
                isOfficer = isOfficer || (each.name == person && each.role == "gear officer");
            return std::pair(club.pins().isSet(person), isOfficer);
        },
        [this](const std::pair<bool, bool>& now) {
            take(now.first, now.second);
            (now.first ? m_own : m_pin)->setFocus(Qt::OtherFocusReason);
        });
}

void PinPanel::take(bool isSet, bool isOfficer) {
    m_now->setText(isSet
                       ? tr("There is a PIN. Who knows it types it first; else a gear officer gives theirs.")
                   : isOfficer ? tr("There is none. From the first PIN of a gear officer on, what only gear "
                                    "officers do is asked for one.")
                               : tr("There is none."));
    m_own->setVisible(isSet);
    m_clear->setVisible(isSet);
    m_set->setText(isSet ? tr("Change the PIN") : tr("Set the PIN"));
    adapt();
}

void PinPanel::adapt() {
    m_set->setEnabled(!m_pin->text().isEmpty() && !m_again->text().isEmpty());
}

std::optional<std::shared_ptr<core::Pin>> PinPanel::typedIn(QLineEdit& edit) {
    if (edit.text().isEmpty()) return std::shared_ptr<core::Pin>();
    auto pin = core::Pin::from(edit.text().toStdString());
    if (!pin) {
        sayError(pin.error());
        edit.setFocus(Qt::OtherFocusReason);
        return std::nullopt;
    }
    return std::make_shared<core::Pin>(std::move(pin).value());
}

void PinPanel::set() {
    if (m_pin->text() != m_again->text()) {
        say(tr("The two are not the same: type both anew."), true);
        m_pin->clear();
        m_again->clear();
        return m_pin->setFocus(Qt::OtherFocusReason);
    }
    const auto own = typedIn(*m_own), pin = own ? typedIn(*m_pin) : std::nullopt;
    if (!pin || !*pin) return;
    write(
        [person = m_person, pin = *pin, own = *own](core::Club& club, const std::string& by, core::Moment) {
            return club.pins().set(person, *pin, by, own.get());
        },
        [this](core::Done) { emit changed(tr("The PIN of %1 is set.").arg(text(m_person))); });
}

void PinPanel::clear() {
    const auto own = typedIn(*m_own);
    if (!own) return;
    write([person = m_person, own = *own](core::Club& club, const std::string& by,
                                          core::Moment) { return club.pins().clear(person, by, own.get()); },
          [this](core::Done) { emit changed(tr("%1 has no PIN any more.").arg(text(m_person))); });
}

void PinPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        emit kept();
    else
        GearPart::keyPressEvent(event);
}

} // namespace app
