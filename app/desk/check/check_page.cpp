#include "app/desk/check/check_page.h"

#include "app/common/cautions.h"
#include "app/common/sentences.h"
#include "app/common/tag_of_text.h"
#include "app/common/words.h"
#include "app/desk/camera/camera_panel.h"
#include "app/desk/camera/code_capture.h"
#include "app/desk/check/check_list_model.h"
#include "app/desk/check/check_list_view.h"
#include "app/desk/check/item_panel.h"
#include "app/desk/check/log_panel.h"
#include "app/desk/check/outcome_foot.h"
#include "app/desk/check/people_bar.h"
#include "app/desk/check/point_clock.h"
#include "app/desk/check/sign_panel.h"
#include "app/desk/check/signed_panel.h"
#include "app/desk/club/club_thread.h"
#include "app/desk/look/sounds.h"
#include "app/desk/look/type_scale.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <iterator>

namespace app {
namespace {

/// From this width on the points have a column of their own.
constexpr int wide = 1600;

QStringList namesOf(const std::vector<std::string>& names) {
    QStringList list;
    for (const std::string& name : names)
        list << QString::fromStdString(name);
    return list;
}

QString withCode(const core::Scanned& scan) {
    return QStringLiteral("%1 %2").arg(QString::fromStdString(scan.name), codeInWords(scan.code));
}

} // namespace

CheckPage::CheckPage(ClubThread& club, TimeSource time, Sounds& sounds, QWidget* parent)
    : QWidget(parent)
    , m_club(club)
    , m_time(std::move(time))
    , m_sounds(sounds)
    , m_clock(new PointClock(this))
    , m_model(new CheckListModel(this))
    , m_pointsModel(new CheckListModel(this)) {
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
    left->addWidget(m_camera, 1);
    m_stack = new QStackedWidget(this);
    m_lists = buildLists();
    m_sign = new SignPanel(this);
    m_item = new ItemPanel(this);
    m_signedPanel = new SignedPanel(this);
    for (QWidget* page : {m_lists, static_cast<QWidget*>(m_sign), static_cast<QWidget*>(m_item),
                          static_cast<QWidget*>(m_signedPanel)})
        m_stack->addWidget(page);
    auto* body = new QHBoxLayout;
    body->setContentsMargins(3 * spaceUnit, 2 * spaceUnit, 2 * spaceUnit, spaceUnit);
    body->setSpacing(3 * spaceUnit);
    body->addLayout(left, 10);
    body->addWidget(m_stack, 10);
    layout->addLayout(body, 1);
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
    m_people = new PeopleBar(head);
    auto* layout = new QHBoxLayout(head);
    layout->setContentsMargins(3 * spaceUnit, spaceUnit, 3 * spaceUnit, spaceUnit);
    layout->setSpacing(2 * spaceUnit);
    layout->addWidget(m_boatLabel);
    layout->addWidget(m_phaseLabel);
    layout->addStretch(1);
    layout->addWidget(m_people);
    return head;
}

QWidget* CheckPage::buildLists() {
    auto* lists = new QWidget(this);
    m_view = new CheckListView(*m_model, lists);
    m_view->setObjectName("checkList");
    m_view->setAccessibleName(tr("kit and points of this check"));
    m_pointsView = new CheckListView(*m_pointsModel, lists);
    m_pointsView->setObjectName("pointsList");
    m_pointsView->setAccessibleName(tr("points of this check"));
    m_pointsView->setVisible(false);
    auto* layout = new QHBoxLayout(lists);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(3 * spaceUnit);
    layout->addWidget(m_view, 1);
    layout->addWidget(m_pointsView, 1);
    return lists;
}

void CheckPage::connectParts() {
    auto* capture = new CodeCapture(*this, m_camera->codeEdit());
    connect(capture, &CodeCapture::codeTyped, this, [this](const QString& text) {
        if (m_session && !m_signed) m_session->scan(text, core::SeenBy::Typed);
    });
    connect(m_camera, &CameraPanel::codeSeen, this, [this](const QString& text, core::SeenBy seenBy) {
        if (m_session && !m_signed) m_session->scan(text, seenBy);
    });
    m_camera->setDescribe([this](const QString& text) {
        const auto code = tagOfText(text.toStdString());
        const CheckRow* row = code ? rowOfCode(QString::fromStdString(*code)) : nullptr;
        return row ? CodeWords{row->title, row->mark} : CodeWords{};
    });
    for (CheckListView* view : {m_view, m_pointsView}) {
        connect(view, &CheckListView::lookPressed, this, [this](const QString& point, bool done) {
            if (m_session) m_session->recordPoint(point, done ? 1 : 0);
        });
        connect(view, &CheckListView::clockPressed, this, &CheckPage::pressClock);
        connect(view, &CheckListView::kitPressed, this,
                [this](const QString& code) { showItem(code, false); });
    }
    for (CheckListModel* model : {m_model, m_pointsModel})
        connect(model, &CheckListModel::valueTyped, this, [this](const QString& point, double value) {
            if (m_session) m_session->recordPoint(point, value);
        });
    connect(m_clock, &PointClock::ticked, this, [this](const QString& point, int seconds) {
        const QString key = "point " + point;
        modelOf(key).setClock(key, tr("%1 running").arg(secondsInWords(seconds)));
    });
    connect(m_people, &PeopleBar::namesChosen, this, [this](const QStringList& aboard) {
        if (m_session) m_session->giveNames(aboard);
        m_view->setFocus(Qt::OtherFocusReason);
    });
    connect(m_foot, &OutcomeFoot::signPressed, this, &CheckPage::beginSigning);
    connect(m_foot, &OutcomeFoot::saveForLaterPressed, this, &CheckPage::leaveWanted);
    connect(m_sign, &SignPanel::backPressed, this, &CheckPage::showLists);
    connect(m_sign, &SignPanel::signPressed, this, [this](const QString& by, const QString& urgent) {
        if (m_session) m_session->sign(by, urgent);
    });
    connect(m_item, &ItemPanel::backPressed, this, &CheckPage::showLists);
    connect(m_item, &ItemPanel::takeBackPressed, this, [this](const QString& code) {
        m_session->takeBack(code);
        showLists();
    });
    connect(m_item, &ItemPanel::withdrawPressed, this, [this](const QString& code, const QString& text) {
        m_session->withdraw(code, text);
        showLists();
    });
    connect(m_signedPanel, &SignedPanel::donePressed, this, &CheckPage::leaveWanted);
    connect(m_signedPanel, &SignedPanel::printPressed, this,
            [this] { emit sheetWanted(sheetOf(*m_signed), true); });
    connect(m_signedPanel, &SignedPanel::savePressed, this,
            [this] { emit sheetWanted(sheetOf(*m_signed), false); });
}

void CheckPage::open(const QString& boat, core::Phase phase, bool withCamera) {
    close();
    m_boat = boat;
    m_boatLabel->setText(boat);
    m_phaseLabel->setText(nameInWords(phase));
    m_view->setKitIsPressed(phase == core::Phase::Return);
    m_camera->say({});
    m_camera->setEnabled(true);
    m_people->setEnabled(true);
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
            [this](const core::Scanned& scan) { say(tr("Taken back: %1.").arg(withCode(scan))); });
    m_session->open(m_boat, phase);
}

void CheckPage::close() {
    if (m_clock->isRunning()) m_clock->stop();
    m_camera->stop();
    m_session.reset();
    m_signed.reset();
    m_lastItem.clear();
    m_rows.clear();
    m_model->setRows({});
    m_pointsModel->setRows({});
    m_log->setEntries({});
}

void CheckPage::showState() {
    const CheckState& state = *m_session->state();
    m_people->setPeople(namesOf(state.people), namesOf(state.names));
    m_log->setEntries(state.log);
    if (state.open.resumed)
        m_phaseLabel->setText(
            tr("%1, begun %2")
                .arg(nameInWords(state.open.phase), inWords(state.open.openedAt, state.answer.today)));
    m_rows = rowsOf(state.answer);
    showRows();
    m_foot->setAnswer(state.answer);
    if (m_stack->currentWidget() == m_sign) m_sign->setAnswer(state.answer);
    m_camera->describeAgain();
    emit answered();
}

bool CheckPage::isWide() const {
    return width() >= wide;
}

void CheckPage::showRows() {
    const bool apart = isWide();
    std::vector<CheckRow> kit;
    std::vector<CheckRow> points;
    std::partition_copy(m_rows.begin(), m_rows.end(), std::back_inserter(points), std::back_inserter(kit),
                        [](const CheckRow& row) { return row.section == CheckRow::Section::Points; });
    m_pointsView->setVisible(apart && !points.empty());
    m_model->setRows(apart ? kit : m_rows);
    m_pointsModel->setRows(apart ? points : std::vector<CheckRow>());
    auto* body = static_cast<QHBoxLayout*>(static_cast<QVBoxLayout*>(layout())->itemAt(1)->layout());
    body->setStretch(1, apart ? 20 : 10);
    if (!m_view->currentIndex().isValid() && m_model->rowCount() > 1)
        m_view->setCurrentIndex(m_model->index(1));
}

void CheckPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    showRows();
}

CheckListModel& CheckPage::modelOf(const QString& key) const {
    return m_pointsModel->indexOfKey(key) >= 0 ? *m_pointsModel : *m_model;
}

const CheckRow* CheckPage::rowOfCode(const QString& code) const {
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const CheckRow& row) {
        return row.code == code && row.mark != Mark::StillToFind;
    });
    return found == m_rows.end() ? nullptr : &*found;
}

void CheckPage::showScan(const core::Scanned& scan, const QString& text) {
    using What = core::Scanned::What;
    switch (scan.what) {
    case What::NewItem:
        showNewItem(scan);
        break;
    case What::SeenBefore:
        m_lastItem = QString::fromStdString(scan.code);
        say(tr("%1 was seen before; it counts once.").arg(withCode(scan)));
        break;
    case What::UnknownTag:
        m_sounds.play(Sound::LookAtThis);
        say(tr("%1 is not in the register. It does not count.").arg(codeInWords(scan.code)), true);
        break;
    case What::PersonNamed:
        m_sounds.play(Sound::NewAndFine);
        say(tr("%1 is aboard.").arg(QString::fromStdString(scan.name)));
        break;
    case What::Ignored:
        say(tr("Nothing to do for that tag here."));
        break;
    case What::Unread:
        m_sounds.play(Sound::LookAtThis);
        if (const auto typed = core::TagCode::parse(text.toStdString()); !typed)
            say(withCapital(errorLine(typed.error())) + QLatin1Char('.'), true);
        else
            say(tr("%1 is no tag for this check.").arg(text), true);
        break;
    case What::Control:
        if (scan.control) act(*scan.control);
        break;
    }
}

void CheckPage::showNewItem(const core::Scanned& scan) {
    m_lastItem = QString::fromStdString(scan.code);
    const CheckRow* row = rowOfCode(m_lastItem);
    const bool fine = row && row->mark == Mark::Found;
    m_sounds.play(fine ? Sound::NewAndFine : Sound::LookAtThis);
    if (!row) return;
    say(fine ? tr("Found: %1.").arg(withCode(scan)) : tr("Look: %1. %2").arg(withCode(scan), row->remark),
        !fine);
    modelOf(row->key).markChanged(row->key);
    // What is still to find is what matters next; what was just read is said under the picture.
    m_view->scrollToTop();
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
    if (m_stack->currentWidget() != m_sign) {
        beginSigning();
        say(tr("Show the tag again to sign."));
    } else if (!m_sign->press()) {
        say(tr("Say first who signs and, with short kit, why."), true);
    }
}

void CheckPage::beginSigning() {
    if (!m_session || !m_session->state() || m_signed) return;
    const CheckState& state = *m_session->state();
    m_stack->setCurrentWidget(m_sign);
    m_foot->showButtons(false);
    m_sign->begin(state.answer, namesOf(state.names), namesOf(state.people));
}

void CheckPage::showLists() {
    m_stack->setCurrentWidget(m_lists);
    m_foot->showButtons(true);
    m_view->setFocus(Qt::OtherFocusReason);
}

void CheckPage::showItem(const QString& code, bool toWithdraw) {
    const auto row = std::find_if(m_rows.begin(), m_rows.end(),
                                  [&](const CheckRow& candidate) { return candidate.code == code; });
    if (row == m_rows.end() || m_signed) return;
    m_stack->setCurrentWidget(m_item);
    m_foot->showButtons(false);
    m_item->begin(*row, toWithdraw);
}

void CheckPage::showSigned(const core::SignedCheck& check) {
    m_signed = check;
    m_camera->stop();
    m_camera->setEnabled(false); // nothing of a signed check changes
    m_people->setEnabled(false);
    m_foot->setAnswer(check.answer);
    m_foot->showButtons(false);
    m_stack->setCurrentWidget(m_signedPanel);
    const QString urgent = QString::fromStdString(check.urgent);
    m_signedPanel->begin(
        tr("Signed by %1, %2.").arg(QString::fromStdString(check.by), inWords(check.at, check.answer.today)),
        urgent.isEmpty() ? QString() : tr("Launched urgent: %1").arg(urgent));
    emit answered();
}

CheckSheet CheckPage::sheetOf(const core::SignedCheck& check) const {
    CheckSheet sheet;
    sheet.boat = m_boat;
    sheet.phase = nameInWords(check.answer.phase);
    sheet.at = inWords(check.at, check.answer.today);
    if (check.at.localDay() == check.answer.today)
        sheet.at = tr("%1, %2").arg(sheet.at, inWords(check.answer.today));
    sheet.atIso = QString::fromStdString(check.at.iso());
    sheet.aboard = namesOf(m_session->state()->names);
    sheet.signedBy = QString::fromStdString(check.by);
    sheet.urgent = QString::fromStdString(check.urgent);
    sheet.outcome = outcomeOf(check.answer);
    sheet.complete = check.answer.outcome == core::CheckOutcome::Complete;
    sheet.rows = rowsOf(check.answer);
    for (const core::LogEntry& entry : check.answer.logOpen)
        sheet.log << QString::fromStdString(entry.text);
    sheet.cautions = {launchCaution(), scanCaution(), fitCaution(), whoPrevails()};
    return sheet;
}

void CheckPage::sheetDone(const QString& sentence) {
    m_signedPanel->say(sentence);
}

void CheckPage::undo() {
    if (m_session && !m_signed) m_session->undo();
}

void CheckPage::takeBackCurrent() {
    const QString code = m_view->currentCode();
    if (m_session && !m_signed && rowOfCode(code)) m_session->takeBack(code);
}

void CheckPage::damagedCurrent() {
    const QString code =
        m_view->hasFocus() && !m_view->currentCode().isEmpty() ? m_view->currentCode() : m_lastItem;
    if (!code.isEmpty()) showItem(code, true);
}

void CheckPage::toggleClock() {
    if (m_clock->isRunning()) {
        pressClock(m_clock->point());
        return;
    }
    const auto timed = std::find_if(m_rows.begin(), m_rows.end(), [](const CheckRow& row) {
        return row.kind == CheckRow::Kind::Point && row.pointKind == core::PointKind::Timed &&
               row.mark != Mark::Found;
    });
    if (timed == m_rows.end())
        say(tr("No timed point is open."));
    else
        pressClock(timed->title);
}

void CheckPage::pressClock(QString point) { // a copy: it may be the clock's own, which stopping clears
    if (!m_session || m_signed) return;
    const QString key = "point " + point;
    if (m_clock->isRunning() && m_clock->point() == point) {
        modelOf(key).setClock(key, {});
        m_session->recordPoint(point, m_clock->stop());
        return;
    }
    if (m_clock->isRunning()) pressClock(m_clock->point());
    m_clock->start(point);
}

void CheckPage::goToPoints() {
    showLists();
    CheckListView* view = isWide() ? m_pointsView : m_view;
    const auto& rows = isWide() ? m_pointsModel->rows() : m_model->rows();
    const auto first = std::find_if(rows.begin(), rows.end(),
                                    [](const CheckRow& row) { return row.kind == CheckRow::Kind::Point; });
    if (first == rows.end()) return;
    view->setFocus(Qt::ShortcutFocusReason);
    view->setCurrentIndex(view->model()->index(static_cast<int>(first - rows.begin()), 0));
}

void CheckPage::goToPeople() {
    m_people->openDriver();
}

void CheckPage::say(const QString& sentence, bool toLookAt) {
    m_camera->say(sentence, toLookAt);
}

} // namespace app
