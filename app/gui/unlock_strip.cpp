#include "app/gui/unlock_strip.h"

#include "app/gui/club/club_lock.h"
#include "app/gui/club/club_thread.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/text/errors.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/error_code.h"
#include "core/club/club_pins.h"
#include "core/record/pin.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {

UnlockStrip::UnlockStrip(ClubThread& club, ClubLock& lock, QWidget& over)
    : QFrame(&over)
    , m_club(club)
    , m_lock(lock)
    , m_what(wordsLabel(this, "remark", "unlockWhatLabel"))
    , m_who(new ChoiceBox(this))
    , m_pin(wordsEdit(this, "unlockPinEdit", tr("PIN"), tr("PIN")))
    , m_unlock(wordsButton(this, {}, "unlockButton", true))
    , m_leave(wordsButton(this, tr("Leave it"), "unlockLeaveButton"))
    , m_said(new SaidLabel("unlockSaidLabel", this)) {
    setObjectName("unlockStrip");
    setProperty("role", "panel");
    build();
    hide();
    over.installEventFilter(this);
    m_second.setInterval(std::chrono::seconds(1));
    connect(&m_second, &QTimer::timeout, this, &UnlockStrip::adapt);
    connect(m_who, &QComboBox::currentIndexChanged, this, [this] {
        m_said->say({});
        adapt();
    });
    connect(m_pin, &QLineEdit::textChanged, this, &UnlockStrip::adapt);
    connect(m_pin, &QLineEdit::returnPressed, this, [this] {
        if (m_unlock->isEnabled()) unlock();
    });
    connect(m_unlock, &QPushButton::clicked, this, &UnlockStrip::unlock);
    connect(m_leave, &QPushButton::clicked, this, &UnlockStrip::leave);
}

void UnlockStrip::build() {
    m_who->setObjectName("unlockWhoBox");
    m_who->takeRoom(10);
    m_pin->setEchoMode(QLineEdit::Password);
    m_pin->setMaxLength(3 * static_cast<int>(core::Pin::most)); // a letter may be several
    m_pin->setMinimumWidth(160);
    auto* row = new QHBoxLayout;
    row->setSpacing(spaceUnit);
    addWithWord(*row, tr("PIN of"), m_who);
    row->setStretchFactor(m_who, 2);
    row->addWidget(m_pin, 1);
    row->addWidget(m_unlock);
    row->addWidget(m_leave);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(3 * spaceUnit, spaceUnit, 3 * spaceUnit, spaceUnit);
    column->setSpacing(spaceUnit / 2);
    column->addWidget(m_what);
    column->addLayout(row);
    column->addWidget(m_said);
}

void UnlockStrip::ask(QObject* asker, const QString& likely, std::function<void()> goOn,
                      std::function<void()> giveUp) {
    begin(asker, tr("This is a gear officer's to do: it needs a PIN, once for ten minutes of work."),
          tr("Unlock"));
    m_goOn = std::move(goOn);
    m_giveUp = std::move(giveUp);
    m_club.ask(
        this, [](core::Club& club) { return club.pins().officers(); },
        [this, likely](const std::vector<std::string>& officers) {
            if (!m_give) fill(texts(officers), likely);
        });
}

void UnlockStrip::askSigner(QObject* asker, const QString& person, const core::Error& why, SignWith sign) {
    begin(asker, tr("This club asks for the PIN of whoever signs and has one."), tr("Sign"));
    m_give = [sign = std::move(sign)](const QString&, std::shared_ptr<core::Pin> pin) {
        sign(std::move(pin));
    };
    fill({person}, person);
    if (why.code != core::ErrorCode::SignatureNeedsPin) sayWhy(person, why);
}

void UnlockStrip::askForBackup(QObject* asker, const QStringList& officers, const QString& likely,
                               const core::Error& why, GiveBy give) {
    begin(asker, tr("Restoring this backup is a gear officer's to do: it needs the PIN of one."),
          tr("Restore"));
    m_give = std::move(give);
    fill(officers, likely);
    if (why.code != core::ErrorCode::PinNeeded) sayWhy(likely, why);
}

void UnlockStrip::begin(QObject* asker, const QString& what, const QString& does) {
    leave(); // what was asked for before
    m_asker = asker;
    m_what->setText(what);
    m_unlock->setText(does);
    m_who->clear();
    m_said->say({});
    place();
    show();
    raise();
    adapt();
}

void UnlockStrip::place() {
    const QSize room = parentWidget()->size();
    const int height =
        layout()->hasHeightForWidth() ? layout()->totalHeightForWidth(room.width()) : sizeHint().height();
    setGeometry(0, room.height() - height, room.width(), height);
}

bool UnlockStrip::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parentWidget() && event->type() == QEvent::Resize) place();
    return false;
}

/// The only one, or whoever is at work, need not be chosen.
void UnlockStrip::fill(const QStringList& officers, const QString& likely) {
    m_who->clear();
    m_who->addItems(officers);
    m_who->setCurrentIndex(officers.size() == 1 ? 0 : static_cast<int>(officers.indexOf(likely)));
    adapt();
    (m_who->currentIndex() < 0 ? static_cast<QWidget*>(m_who) : m_pin)->setFocus(Qt::OtherFocusReason);
}

void UnlockStrip::unlock() {
    std::string typed = m_pin->text().toStdString();
    m_pin->clear();
    auto pin = core::Pin::from(std::move(typed));
    if (!pin) return m_said->say(withCapital(errorLine(pin.error())) + QLatin1Char('.'), true);
    const QString person = m_who->currentText();
    if (m_give) {
        auto made = std::make_shared<core::Pin>(std::move(pin).value());
        return close([give = m_give, person, made] { give(person, made); });
    }
    m_isAsking = true;
    adapt();
    m_lock.unlock(this, person, std::make_shared<core::Pin>(std::move(pin).value()),
                  [this, person](const core::Outcome& unlocked) { take(person, unlocked); });
}

void UnlockStrip::take(const QString& person, const core::Outcome& unlocked) {
    m_isAsking = false;
    if (unlocked) return close(m_goOn);
    sayWhy(person, unlocked.error());
    m_pin->setFocus(Qt::OtherFocusReason);
}

void UnlockStrip::sayWhy(const QString& person, const core::Error& why) {
    if (why.code == core::ErrorCode::PinWait)
        m_waits[person].setRemainingTime(std::chrono::seconds(std::stoi(why.arguments.front())));
    else
        m_said->say(withCapital(errorLine(why)) + QLatin1Char('.'), true);
    adapt();
}

void UnlockStrip::leave() {
    close(m_giveUp);
}

void UnlockStrip::close(const std::function<void()>& then) {
    const std::function<void()> kept = m_asker ? then : nullptr;
    m_asker = nullptr;
    m_goOn = m_giveUp = nullptr;
    m_give = nullptr;
    m_pin->clear();
    m_second.stop();
    hide();
    if (kept) kept();
}

/// Whoever has to wait sees for how long.
void UnlockStrip::adapt() {
    const auto wait = m_waits.find(m_who->currentText());
    const qint64 left = wait == m_waits.end() ? 0 : (wait->second.remainingTime() + 999) / 1000;
    if (left > 0) {
        m_said->say(tr("Too many wrong PINs were given for %1: wait %2.")
                        .arg(m_who->currentText(),
                             counted(static_cast<int>(left), QT_TRANSLATE_N_NOOP("Words", "%n second"),
                                     QT_TRANSLATE_N_NOOP("Words", "%n seconds"))),
                    true);
        if (!m_second.isActive()) m_second.start();
    } else if (wait != m_waits.end()) {
        m_waits.erase(wait);
        m_second.stop();
        m_said->say(tr("It can be tried again."));
    }
    m_unlock->setEnabled(!m_isAsking && left <= 0 && m_who->currentIndex() >= 0 && !m_pin->text().isEmpty());
}

void UnlockStrip::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        leave();
    else
        QFrame::keyPressEvent(event);
}

} // namespace app
