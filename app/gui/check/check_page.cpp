#include "app/gui/check/check_page.h"

#include "app/gui/camera/camera_panel.h"
#include "app/gui/camera/code_capture.h"
#include "app/gui/camera/scan_words.h"
#include "app/gui/check/check_lists.h"
#include "app/gui/check/item_panel.h"
#include "app/gui/check/log_panel.h"
#include "app/gui/check/outcome_foot.h"
#include "app/gui/check/people_bar.h"
#include "app/gui/check/point_clock.h"
#include "app/gui/check/signing.h"
#include "app/gui/check/trip_panel.h"
#include "app/gui/check/trip_words.h"
#include "app/gui/club/club_thread.h"
#include "app/gui/theme/sounds.h"
#include "app/gui/theme/type_scale.h"
#include "app/text/sentences.h"
#include "app/text/tag_of_text.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_kit.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

/// From this width on the points have a column of their own.
constexpr int wide = 1600;
/// A trip is told on a button in one line, as far as it goes.
constexpr int tripWidth = 520;

} // namespace

CheckPage::CheckPage(ClubThread& club, TimeSource time, Sounds& sounds, QWidget* parent)
    : QWidget(parent)
    , m_club(club)
    , m_time(std::move(time))
    , m_sounds(sounds)
    , m_clock(new PointClock(this)) {
    setObjectName("checkPage");
    build();
    connectParts();
}

CheckPage::~CheckPage() = default;

void CheckPage::build() {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(buildHead());

    m_log = new LogPanel(this);
    m_camera = new CameraPanel(this);
    auto* left = new QVBoxLayout;
    left->setSpacing(spaceUnit);
    left->addWidget(m_log);
    m_tripButton = new QPushButton(this);
    m_tripButton->setObjectName("tripButton");
    left->addWidget(m_tripButton);
    left->addWidget(m_camera, 1);
    m_stack = new QStackedWidget(this);
    m_lists = new CheckLists(this);
    m_item = new ItemPanel(this);
    m_signing = new Signing(this);
    m_trip = new TripPanel(this);
    for (QWidget* page : {static_cast<QWidget*>(m_lists), static_cast<QWidget*>(m_item),
                          static_cast<QWidget*>(m_signing), static_cast<QWidget*>(m_trip)})
        m_stack->addWidget(page);
    m_body = new QHBoxLayout;
    m_body->setContentsMargins(3 * spaceUnit, 2 * spaceUnit, 2 * spaceUnit, spaceUnit);
    m_body->setSpacing(3 * spaceUnit);
    m_body->addLayout(left, 10);
    m_body->addWidget(m_stack, 10);
    layout->addLayout(m_body, 1);
    m_foot = new OutcomeFoot(this);
    layout->addWidget(m_foot);
}

QWidget* CheckPage::buildHead() {
    auto* head = new QWidget(this);
    head->setProperty("role", "panel");
    head->setAttribute(Qt::WA_StyledBackground);
    m_boatLabel = new QLabel(head);
    m_boatLabel->setObjectName("boatLabel");
    m_boatLabel->setProperty("role", "boatName");
    m_phaseLabel = new QLabel(head);
    m_phaseLabel->setObjectName("phaseLabel");
    m_phaseLabel->setProperty("role", "phase");
    m_phaseLabel->setWordWrap(true); // a check begun on another day says so at length
    m_people = new PeopleBar(head);
    auto* layout = new QHBoxLayout(head);
    layout->setContentsMargins(3 * spaceUnit, spaceUnit, 3 * spaceUnit, spaceUnit);
    layout->setSpacing(2 * spaceUnit);
    layout->addWidget(m_boatLabel);
    layout->addWidget(m_phaseLabel, 1);
    layout->addWidget(m_people);
    return head;
}

void CheckPage::connectParts() {
    auto* capture = new CodeCapture(*this, m_camera->codeEdit());
    connect(capture, &CodeCapture::codeTyped, this,
            [this](const QString& text) { takeCode(text, core::SeenBy::Typed); });
    connect(m_camera, &CameraPanel::codeSeen, this, &CheckPage::takeCode);
    m_camera->setDescribe([this](const QString& text) {
        const auto code = tagOfText(text.toStdString());
        const CheckRow* row = code ? m_lists->rowOfSeen(itemOf(*code)) : nullptr;
        return row ? CodeWords{row->title, row->mark} : CodeWords{};
    });
    connect(m_lists, &CheckLists::lookPressed, this, [this](const QString& point, bool done) {
        if (m_session) m_session->recordPoint(point, done ? 1 : 0);
    });
    connect(m_lists, &CheckLists::valueTyped, this, [this](const QString& point, double value) {
        if (m_session) m_session->recordPoint(point, value);
    });
    connect(m_lists, &CheckLists::clockPressed, this, &CheckPage::pressClock);
    connect(m_lists, &CheckLists::kitPressed, this, [this](const QString& code) { showItem(code, false); });
    connect(m_clock, &PointClock::ticked, this, [this](const QString& point, int seconds) {
        m_lists->setClock(point, tr("%1 running").arg(secondsInWords(seconds)));
    });
    connect(m_clock, &PointClock::stopped, this, [this](const QString& point, int seconds) {
        m_lists->setClock(point, {});
        if (m_session) m_session->recordPoint(point, seconds);
    });
    connect(m_people, &PeopleBar::namesChosen, this, [this](const QStringList& aboard) {
        if (m_session) m_session->giveNames(aboard);
        m_lists->takeKeyboard();
    });
    connect(m_foot, &OutcomeFoot::signPressed, this, &CheckPage::beginSigning);
    connect(m_foot, &OutcomeFoot::saveForLaterPressed, this, &CheckPage::leaveWanted);
    connect(m_tripButton, &QPushButton::clicked, this, &CheckPage::goToTrip);
    connect(m_trip, &TripPanel::backPressed, this, &CheckPage::showLists);
    connect(m_trip, &TripPanel::writePressed, this, [this](const core::Operation& trip) {
        if (m_session) m_session->recordTrip(trip);
        showLists();
    });
    connect(m_signing, &Signing::backPressed, this, &CheckPage::showLists);
    connect(m_signing, &Signing::signPressed, this, [this](const QString& by, const QString& urgent) {
        if (m_session) m_session->sign(by, urgent);
    });
    connect(m_signing, &Signing::donePressed, this, &CheckPage::leaveWanted);
    connect(m_signing, &Signing::printPressed, this, &CheckPage::printWanted);
    connect(m_signing, &Signing::savePressed, this, &CheckPage::saveWanted);
    connect(m_item, &ItemPanel::backPressed, this, &CheckPage::showLists);
    connect(m_item, &ItemPanel::takeBackPressed, this, [this](const QString& code) {
        m_session->takeBack(code);
        showLists();
    });
    connect(m_item, &ItemPanel::withdrawPressed, this, [this](const QString& code, const QString& text) {
        m_session->withdraw(code, text);
        showLists();
    });
}

void CheckPage::open(const QString& boat, core::Phase phase, bool withCamera) {
    close();
    m_boat = boat;
    m_phase = phase;
    m_boatLabel->setText(boat);
    m_phaseLabel->setText(nameInWords(phase));
    m_camera->say({});
    m_camera->setEnabled(true);
    m_people->setEnabled(true);
    m_tripButton->setVisible(phase == core::Phase::Return);
    m_tripButton->setEnabled(true);
    m_tripButton->setText({});
    startSession(phase);
    showLists();
    if (withCamera) m_camera->startCamera();
}

void CheckPage::startSession(core::Phase phase) {
    m_session = std::make_unique<CheckSession>(m_club, m_time);
    connect(m_session.get(), &CheckSession::changed, this, &CheckPage::showState);
    connect(m_session.get(), &CheckSession::scanned, this, &CheckPage::showScan);
    connect(m_session.get(), &CheckSession::signedOff, this, &CheckPage::showSigned);
    connect(m_session.get(), &CheckSession::failed, this,
            [this](const QString& sentence) { say(sentence, true); });
    connect(m_session.get(), &CheckSession::tookBack, this,
            [this](const core::Scanned& scan) { say(tr("Taken back: %1.").arg(withCode(inPrinted(scan)))); });
    m_session->open(m_boat, phase);
}

void CheckPage::close() {
    m_clock->drop();
    m_camera->stop();
    m_session.reset();
    m_signing->clear();
    m_lastItem.clear();
    m_lists->setRows({});
    m_log->setEntries({});
}

void CheckPage::showState() {
    const CheckState& state = *m_session->state();
    m_people->setPeople(texts(state.people), texts(state.names));
    m_log->setEntries(state.log);
    showTrip();
    if (state.open.resumed) {
        const core::CalendarDay day = state.open.openedAt.localDay();
        const QString begun = day == state.answer.today ? inWords(state.open.openedAt, day) : inWords(day);
        m_phaseLabel->setText(tr("%1, begun %2").arg(nameInWords(state.open.phase), begun));
    }
    m_lists->setRows(rowsOf(state.answer, state.context));
    m_foot->setAnswer(state.answer);
    m_signing->setState(state);
    m_camera->describeAgain();
    emit answered();
}

void CheckPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool isWide = width() >= wide;
    m_lists->setWide(isWide);
    m_body->setStretch(1, isWide ? 20 : 10);
}

/// While the signature waits, a person's tag says who signs; at all other times it says who is aboard.
void CheckPage::takeCode(const QString& text, core::SeenBy seenBy) {
    if (!m_session || m_signing->isSigned()) return;
    const auto tag = core::TagCode::parse(text.toStdString());
    if (m_signing->isAsking() && tag && tag->tagClass() == core::TagClass::Person)
        nameSigner(tag->text());
    else
        m_session->scan(text, seenBy);
}

void CheckPage::nameSigner(const std::string& code) {
    m_club.ask(
        this, [code](core::Club& club) { return club.kit().tagLabels({code}); },
        [this](const core::Result<std::vector<core::TagLabel>>& labels) {
            const QString person =
                labels && !labels->empty() ? QString::fromStdString(labels->front().name) : QString();
            if (m_signing->nameSigner(person))
                say(tr("%1 signs. Show the tag for finishing again.").arg(person));
            else
                say(tr("That tag is nobody's in this club."), true);
        });
}

void CheckPage::showScan(const core::Scanned& scan, const QString& text) {
    using What = core::Scanned::What;
    if (scan.what == What::Control) {
        if (scan.control) act(*scan.control);
        return;
    }
    if (scan.what == What::NewItem || scan.what == What::SeenBefore)
        m_lastItem = QString::fromStdString(scan.code);
    const CheckRow* row = m_lists->rowOfSeen(QString::fromStdString(scan.code));
    const ScanWords words = wordsOf(inPrinted(scan), text, row);
    if (words.sound) m_sounds.play(*words.sound);
    if (!words.said.isEmpty()) say(words.said, words.toLookAt);
    if (scan.what == What::NewItem && row) m_lists->markChanged(row->key);
}

void CheckPage::act(core::ControlTag control) {
    switch (control) {
    case core::ControlTag::Finish:
        finish();
        break;
    case core::ControlTag::NextBoat:
        emit nextBoatWanted();
        break;
    case core::ControlTag::Undo:
        undo();
        break;
    case core::ControlTag::Damaged:
        if (m_lastItem.isEmpty())
            say(tr("Scan the damaged thing first, then the tag for damage."), true);
        else
            m_session->withdraw(m_lastItem, tr("Damaged: shown by control tag at the %1.")
                                                .arg(nameInWords(m_session->state()->open.phase)));
        break;
    case core::ControlTag::Clock:
        toggleClock();
        break;
    case core::ControlTag::PutAside:
        emit leaveWanted();
        break;
    }
}

/// The tag for finishing, shown once, opens the signature; shown again, it signs.
void CheckPage::finish() {
    if (!m_signing->isAsking()) {
        beginSigning();
        say(tr("Show the tag again to sign, or first the tag of who signs."));
    } else if (!m_signing->press()) {
        say(tr("Say first who signs and, with short kit, why."), true);
    }
}

void CheckPage::beginSigning() {
    if (!m_session || !m_session->state() || m_signing->isSigned()) return;
    m_stack->setCurrentWidget(m_signing);
    m_foot->showButtons(false);
    m_signing->begin(*m_session->state());
}

void CheckPage::showLists() {
    m_stack->setCurrentWidget(m_lists);
    m_foot->showButtons(true);
    m_lists->takeKeyboard();
}

void CheckPage::showItem(const QString& code, bool toWithdraw) {
    const auto& rows = m_lists->rows();
    const auto row =
        std::find_if(rows.begin(), rows.end(), [&](const CheckRow& each) { return each.code == code; });
    if (row == rows.end() || m_signing->isSigned()) return;
    m_stack->setCurrentWidget(m_item);
    m_foot->showButtons(false);
    m_item->begin(*row, toWithdraw);
}

void CheckPage::showSigned(const core::SignedCheck& check) {
    m_camera->stop();
    m_camera->setEnabled(false); // nothing of a signed check changes
    m_people->setEnabled(false);
    m_tripButton->setEnabled(false);
    m_foot->setAnswer(check.answer);
    m_foot->showButtons(false);
    m_stack->setCurrentWidget(m_signing);
    m_signing->showSigned(check, *m_session->state());
    emit answered();
}

void CheckPage::printoutDone(const QString& sentence) {
    m_signing->printoutDone(sentence);
}

void CheckPage::undo() {
    if (m_session && !m_signing->isSigned()) m_session->undo();
}

void CheckPage::takeBackCurrent() {
    const QString code = m_lists->currentCode();
    if (m_session && !m_signing->isSigned() && m_lists->rowOfSeen(code)) m_session->takeBack(code);
}

void CheckPage::damagedCurrent() {
    const QString code = m_lists->isOnItem() ? m_lists->currentCode() : m_lastItem;
    if (!code.isEmpty()) showItem(code, true);
}

void CheckPage::toggleClock() {
    if (m_clock->isRunning()) {
        pressClock(m_clock->point());
        return;
    }
    const auto& rows = m_lists->rows();
    const auto timed = std::find_if(rows.begin(), rows.end(), [](const CheckRow& row) {
        return row.pointKind == core::PointKind::Timed && row.mark != Mark::Found;
    });
    if (timed == rows.end())
        say(tr("No timed point is open."));
    else
        pressClock(timed->title);
}

void CheckPage::pressClock(const QString& point) {
    if (m_session && !m_signing->isSigned()) m_clock->press(point);
}

void CheckPage::goToPoints() {
    showLists();
    m_lists->goToPoints();
}

void CheckPage::showTrip() {
    const auto& trip = m_session->state()->trip;
    const QString words = trip ? tr("Trip: %1").arg(tripInWords(*trip)) : tr("Write the trip into the log…");
    m_tripButton->setAccessibleName(words);
    m_tripButton->setText(QFontMetrics(m_tripButton->font()).elidedText(words, Qt::ElideRight, tripWidth));
    m_tripButton->setToolTip(words);
}

/// What is known already is proposed: who was aboard, when the launch was signed, and that they are back now.
void CheckPage::goToTrip() {
    if (!m_session || !m_session->state() || m_signing->isSigned()) return;
    const CheckState& state = *m_session->state();
    if (state.open.phase != core::Phase::Return) return;
    core::Operation proposed{.left = state.context.launched, .back = m_session->moment().at};
    proposed.people = state.names.empty() ? state.context.askWhom : state.names;
    m_stack->setCurrentWidget(m_trip);
    m_foot->showButtons(false);
    m_trip->begin(state.trip.value_or(proposed), m_session->moment().at);
}

QString CheckPage::itemOf(const std::string& tag) const {
    if (!m_session || !m_session->state()) return {};
    return QString::fromStdString(itemOfPrintedTag(m_session->state()->context.tags, tag));
}

core::Scanned CheckPage::inPrinted(core::Scanned scan) const {
    if (m_session && m_session->state()) scan.code = printedTag(m_session->state()->context.tags, scan.code);
    return scan;
}

void CheckPage::goToPeople() {
    m_people->openDriver();
}

void CheckPage::say(const QString& sentence, bool toLookAt) {
    m_camera->say(sentence, toLookAt);
}

} // namespace app
