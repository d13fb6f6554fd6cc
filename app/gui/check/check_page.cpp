#include "app/gui/check/check_page.h"

#include "app/flow/seen_text.h"
#include "app/gui/camera/camera_panel.h"
#include "app/gui/camera/code_capture.h"
#include "app/gui/camera/scan_words.h"
#include "app/gui/check/check_head.h"
#include "app/gui/check/check_lists.h"
#include "app/gui/check/item_panel.h"
#include "app/gui/check/let_go_panel.h"
#include "app/gui/check/log_panel.h"
#include "app/gui/check/outcome_foot.h"
#include "app/gui/check/point_clock.h"
#include "app/gui/check/signing.h"
#include "app/gui/check/trip_panel.h"
#include "app/gui/theme/sounds.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/drafts.h"
#include "app/gui/widgets/page_scroll.h"
#include "app/gui/widgets/part_stack.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

namespace app {
namespace {

/// From this width on the points have a column of their own.
constexpr int wide = 1600;
/// With less the camera's half gives some of its own to the other.
constexpr int narrow = 1200;
/// With less what is opened from the lists stands above the camera's half.
constexpr int narrowest = 1000;

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
    auto* whole = new QWidget;
    auto* layout = new QVBoxLayout(whole);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    m_head = new CheckHead(this);
    layout->addWidget(m_head);

    m_log = new LogPanel(this);
    m_camera = new CameraPanel(this);
    auto* beside = new QWidget;
    auto* left = new QVBoxLayout(beside);
    left->setContentsMargins(0, 0, 0, 0);
    left->setSpacing(spaceUnit);
    left->addWidget(m_log);
    m_tripButton = new QPushButton(this);
    m_tripButton->setObjectName("tripButton");
    m_tripButton->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed); // its words are made to fit
    left->addWidget(m_camera, 1); // what was read last is said there: it comes before the trip
    left->addWidget(m_tripButton);
    m_stack = new PartStack(this);
    m_lists = new CheckLists(this);
    m_item = new ItemPanel(this);
    m_signing = new Signing(this);
    m_trip = new TripPanel(this);
    m_letGo = new LetGoPanel(this);
    for (QWidget* page : std::initializer_list<QWidget*>{m_lists, m_item, m_signing, m_trip, m_letGo})
        m_stack->addWidget(page);
    m_body = new QHBoxLayout;
    m_body->setContentsMargins(3 * spaceUnit, spaceUnit, 2 * spaceUnit, spaceUnit);
    m_body->setSpacing(3 * spaceUnit);
    // Head and foot stay in view; in a small window each half between them scrolls.
    m_body->addWidget(new PageScroll(beside, this), 10);
    m_body->addWidget(new PageScroll(m_stack, this), 10);
    m_escape = new QShortcut(Qt::Key_Escape, m_stack);
    m_escape->setContext(Qt::WidgetWithChildrenShortcut);
    connect(m_escape, &QShortcut::activated, this, &CheckPage::leavePart);
    layout->addLayout(m_body, 1);
    m_foot = new OutcomeFoot(this);
    layout->addWidget(m_foot);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(new PageScroll(whole, this));
}

void CheckPage::connectParts() {
    connectCamera();
    connectLists();
    connectSigning();
    connect(m_clock, &PointClock::ticked, this, [this](const QString& point, int seconds) {
        m_lists->setClock(point, tr("%1 running").arg(secondsInWords(seconds)));
    });
    connect(m_clock, &PointClock::stopped, this,
            [this](const QString& point) { m_lists->setClock(point, {}); });
    connect(m_head, &CheckHead::namesChosen, this, [this](const QStringList& aboard) {
        if (m_session) m_session->giveNames(aboard);
        m_lists->takeKeyboard();
    });
    connect(m_tripButton, &QPushButton::clicked, this, &CheckPage::goToTrip);
    connect(m_trip, &TripPanel::backPressed, this, &CheckPage::leaveTrip);
    connect(m_trip, &TripPanel::writePressed, this, [this](const core::Operation& trip) {
        m_tripSent = trip;
        if (m_session) m_session->recordTrip(trip);
        leaveTrip();
    });
    connect(m_foot, &OutcomeFoot::letGoPressed, this, &CheckPage::letGo);
    connect(m_letGo, &LetGoPanel::backPressed, this, &CheckPage::showLists);
    connect(m_letGo, &LetGoPanel::closePressed, this, [this](const QString& reason) {
        if (isOpenToScans()) m_session->discard(reason);
    });
}

void CheckPage::connectCamera() {
    auto* capture = new CodeCapture(*this, m_camera->codeEdit());
    connect(capture, &CodeCapture::codeTyped, this, [this](const QString& text) {
        if (isOpenToScans()) m_session->scan(text, core::SeenBy::Typed);
    });
    connect(m_camera, &CameraPanel::codeSeen, this,
            [this](const core::ScannedText& scan, core::SeenBy seenBy) {
                if (isOpenToScans()) m_session->scan(scan, seenBy);
            });
    m_camera->setDescribe([this](const core::ScannedText& scan) {
        const auto code = tagOfText(scan.text, scan.isGs1);
        const CheckRow* row = code ? m_lists->rowOfTag(text(*code)) : nullptr;
        return row ? CodeWords{row->title, row->mark} : CodeWords{};
    });
}

void CheckPage::connectLists() {
    connect(m_lists, &CheckLists::lookPressed, this, [this](const QString& point, bool done) {
        if (m_session) m_session->recordPoint(point, done ? 1 : 0);
    });
    connect(m_lists, &CheckLists::valueTyped, this, [this](const QString& point, double value) {
        if (m_session) m_session->recordPoint(point, value);
    });
    connect(m_lists, &CheckLists::clockPressed, this, [this](const QString& point) {
        if (isOpenToScans()) m_session->turnClockOf(point);
    });
    connect(m_lists, &CheckLists::kitPressed, this, [this](const QString& code) { showItem(code, false); });
    connect(m_item, &ItemPanel::backPressed, this, &CheckPage::showLists);
    connect(m_item, &ItemPanel::takeBackPressed, this, [this](const QString& code) {
        m_session->takeBack(code);
        showLists();
    });
    connect(m_item, &ItemPanel::happenedPressed, this, [this](const QString& code, const QString& event) {
        m_session->happened(code, event);
        showLists();
    });
    connect(m_item, &ItemPanel::withdrawPressed, this, [this](const QString& code, const QString& text) {
        m_session->withdraw(code, text);
        showLists();
    });
}

void CheckPage::connectSigning() {
    connect(m_foot, &OutcomeFoot::signPressed, this, &CheckPage::beginSigning);
    connect(m_foot, &OutcomeFoot::saveForLaterPressed, this, &CheckPage::leaveWanted);
    connect(m_signing, &Signing::backPressed, this, &CheckPage::showLists);
    connect(m_signing, &Signing::signPressed, this, [this](const QString& by, const QString& urgent) {
        if (m_session) m_session->sign(by, urgent);
    });
    connect(m_signing, &Signing::donePressed, this, &CheckPage::leaveWanted);
    connect(m_signing, &Signing::printPressed, this, &CheckPage::printWanted);
    connect(m_signing, &Signing::savePressed, this, &CheckPage::saveWanted);
}

void CheckPage::open(const QString& boat, core::Phase phase, bool withCamera) {
    close();
    m_boat = boat;
    m_phase = phase;
    m_head->begin(boat, phase);
    m_camera->say({});
    m_camera->setEnabled(true);
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
    connect(m_session.get(), &CheckSession::stepped, this, &CheckPage::showStep);
    connect(m_session.get(), &CheckSession::failed, this,
            [this](const QString& sentence) { say(sentence, true); });
    m_session->open(m_boat, phase);
}

void CheckPage::close() {
    m_clock->stop();
    m_camera->stop();
    m_session.reset();
    m_signing->clear();
    m_drafts.clear();
    m_tripSent.reset();
    m_lists->setRows({});
    m_log->setEntries({});
}

void CheckPage::showState() {
    const CheckState& state = *m_session->state();
    if (m_drafts.isEmpty()) openDrafts();
    m_head->setState(state);
    m_log->setEntries(state.log);
    showTrip();
    m_lists->setRows(rowsOf(state.answer, state.context));
    m_foot->setAnswer(state.answer);
    m_foot->setTouched(state.newest.has_value());
    m_signing->setState(state);
    m_camera->describeAgain();
    emit answered();
}

void CheckPage::openDrafts() {
    m_drafts = draftsOf(QString::fromStdString(m_club.file().string()),
                        QString::fromStdString(m_session->state()->open.check));
    m_signing->openDrafts(m_drafts + "/sentences/reason");
}

void CheckPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool isWide = width() >= wide;
    m_lists->setWide(isWide);
    m_body->setStretch(1, isWide ? 20 : width() < narrow ? 12 : 10);
    m_trip->setPairs(isWide ? 2 : width() >= narrow ? 1 : 0);
    if (m_session && m_session->state()) showTrip();
    arrangeHalves();
}

void CheckPage::arrangeHalves() {
    const bool isOver = width() < narrowest && m_stack->currentWidget() != m_lists;
    m_body->setDirection(isOver ? QBoxLayout::BottomToTop : QBoxLayout::LeftToRight);
}

bool CheckPage::isOpenToScans() const {
    return m_session && !m_signing->isSigned();
}

bool CheckPage::takeScan(const QString& text, core::SeenBy how) {
    if (!isOpenToScans()) return false;
    m_session->scan(text, how);
    return true;
}

/// Control tags and what is pressed instead of them come here alike.
void CheckPage::showStep(const FlowStep& step, const QString& text) {
    using What = FlowStep::What;
    switch (step.what) {
    case What::Scanned:
        return showScan(step, text);
    case What::ClockStarted:
        m_clock->start(app::text(step.name));
        break;
    case What::ClockStopped:
        m_clock->stop();
        break;
    case What::SignatureAsked:
        beginSigning();
        break;
    case What::SignerNamed:
        if (!m_signing->nameSigner(app::text(step.name)))
            return say(wordsOf(FlowStep{.what = What::SignerUnknown}));
        break;
    case What::SignatureGiven:
        return pressSignature();
    case What::Withdrawn:
        forgetDrafts(m_drafts + "/sentences/" + app::text(step.scan.item.id));
        break;
    case What::Signed:
        return showSigned(*step.signedCheck);
    case What::LetGo:
        forgetDrafts(m_drafts);
        emit leaveWanted();
        return;
    case What::PutAside:
        emit leaveWanted();
        return;
    case What::NextBoat:
        emit nextBoatWanted();
        return;
    default:
        break;
    }
    if (step.what != What::Nothing) m_camera->forgetError(); // this step worked, or says itself why not
    say(wordsOf(step));
}

void CheckPage::showScan(const FlowStep& step, const QString& text) {
    const CheckRow* row = m_lists->rowOfSeen(app::text(step.scan.item.id));
    const ScanWords words = wordsOf(step.scan, text, row);
    if (words.sound) m_sounds.play(*words.sound);
    say(words);
    if (step.scan.what == core::Scanned::What::NewItem && row) m_lists->markChanged(row->key);
}

void CheckPage::undo() {
    if (isOpenToScans()) m_session->undo();
}

void CheckPage::takeBackCurrent() {
    const QString code = m_lists->currentCode();
    if (isOpenToScans() && m_lists->rowOfSeen(code)) m_session->takeBack(code);
}

void CheckPage::toggleClock() {
    if (isOpenToScans()) m_session->turnClock();
}

void CheckPage::goToPeople() {
    m_head->openDriver();
}

void CheckPage::say(const QString& sentence, bool toLookAt) {
    m_camera->say(sentence, toLookAt);
}

/// What needs no words leaves standing what was said before.
void CheckPage::say(const ScanWords& words) {
    if (!words.said.isEmpty()) say(words.said, words.toLookAt);
}

} // namespace app
