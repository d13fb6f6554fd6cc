#include "app/gui/check/check_page.h"

#include "app/gui/camera/camera_panel.h"
#include "app/gui/camera/scan_words.h"
#include "app/gui/check/check_head.h"
#include "app/gui/check/check_lists.h"
#include "app/gui/check/item_panel.h"
#include "app/gui/check/let_go_panel.h"
#include "app/gui/check/outcome_foot.h"
#include "app/gui/check/signing.h"
#include "app/gui/check/trip_panel.h"
#include "app/gui/check/trip_words.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/drafts.h"
#include "app/gui/widgets/part_stack.h"
#include "app/text/text.h"
#include "core/club/club_kit.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QShortcut>

#include <algorithm>

// The right half of the page: the lists, an item, the signature, the trip, letting go.

namespace app {
namespace {

/// A trip is told on a button in one line, as far as it goes.
constexpr int tripWidth = 520, leastTrip = 160;

} // namespace

/// Whoever leaves the signature leaves it to be asked for again.
void CheckPage::showPart(QWidget* part) {
    m_stack->setCurrentWidget(part);
    arrangeHalves();
    m_escape->setEnabled(part != m_lists);
    m_foot->showButtons(part == m_lists);
    if (isOpenToScans()) m_session->setSignatureAsked(part == m_signing);
}

void CheckPage::beginSigning() {
    if (!isOpenToScans() || !m_session->state()) return;
    if (m_signing->isAsking()) return pressSignature();
    showPart(m_signing);
    m_signing->begin(*m_session->state());
}

void CheckPage::pressSignature() {
    switch (m_signing->press()) {
    case SignPanel::Press::Signed:
        return;
    case SignPanel::Press::AskedOnceMore:
        return say(m_signing->onceMore(), true);
    case SignPanel::Press::Wanting:
        return say(wordsOf(FlowStep{.what = FlowStep::What::SignatureGiven}));
    }
}

/// Escape leaves what was begun as it is; what is half written stays. A signed check is left for the boats.
void CheckPage::leavePart() {
    if (m_stack->currentWidget() == m_trip)
        leaveTrip();
    else if (m_signing->isSigned())
        emit leaveWanted();
    else if (m_stack->currentWidget() != m_lists && isOpenToScans())
        showLists();
}

void CheckPage::showLists() {
    showPart(m_lists);
    m_lists->takeKeyboard();
}

void CheckPage::showItem(const QString& code, bool toWithdraw) {
    const auto& rows = m_lists->rows();
    const auto row =
        std::find_if(rows.begin(), rows.end(), [&](const CheckRow& each) { return each.code == code; });
    if (row == rows.end() || m_signing->isSigned()) return;
    showPart(m_item);
    m_item->begin(*row, toWithdraw, m_drafts + "/sentences/" + code);
    m_club.ask(
        m_item,
        [code = code.toStdString()](core::Club& club) {
            QStringList events;
            for (const std::string& event : club.kit().eventsFor(code))
                events << text(event);
            return events;
        },
        [this, code](const QStringList& events) { m_item->setEvents(code, events); });
}

void CheckPage::showSigned(const core::SignedCheck& check) {
    forgetDrafts(m_drafts + "/sentences");
    m_camera->stop();
    m_camera->setEnabled(false); // nothing of a signed check changes
    m_head->setNamesOpen(false);
    m_foot->setAnswer(check.answer);
    m_signing->showSigned(check, *m_session->state());
    showPart(m_signing);
    emit answered();
}

void CheckPage::printoutDone(const QString& sentence) {
    m_signing->printoutDone(sentence);
}

void CheckPage::damagedCurrent() {
    if (!isOpenToScans() || !m_session->state()) return;
    const QString code = m_lists->isOnItem() ? m_lists->currentCode() : text(m_session->state()->lastItem);
    if (!code.isEmpty()) showItem(code, true);
}

void CheckPage::goToPoints() {
    showLists();
    m_lists->goToPoints();
}

void CheckPage::showTrip() {
    const auto& trip = m_session->state()->trip;
    if (trip && m_tripSent && trip->incidents == m_tripSent->incidents && trip->fuel == m_tripSent->fuel) {
        m_tripSent.reset();
        forgetDrafts(m_drafts + "/trip");
    }
    const QString words = trip ? tr("Trip: %1").arg(tripInWords(*trip)) : tr("Write the trip into the log…");
    m_tripButton->setAccessibleName(words);
    const int half = (width() - 8 * spaceUnit) * 10 / (10 + m_body->stretch(1));
    const int room = std::clamp(half - 8 * spaceUnit, leastTrip, tripWidth);
    m_tripButton->setText(QFontMetrics(m_tripButton->font()).elidedText(words, Qt::ElideRight, room));
    m_tripButton->setToolTip(words);
}

/// What is known already is proposed: who was aboard, when the launch was signed, and that they are back now.
void CheckPage::goToTrip() {
    if (!m_session || !m_session->state()) return;
    const CheckState& state = *m_session->state();
    if (state.open.phase != core::Phase::Return) return;
    core::Operation proposed{.left = state.context.launched, .back = m_session->moment().at};
    proposed.people = state.names.empty() ? state.context.askWhom : state.names;
    showPart(m_trip);
    m_trip->begin(state.trip.value_or(proposed), m_session->moment().at, m_drafts + "/trip");
}

/// The trip is written before the signature or after it.
void CheckPage::leaveTrip() {
    if (m_signing->isSigned())
        showPart(m_signing);
    else
        showLists();
}

void CheckPage::letGo() {
    if (!isOpenToScans() || !m_session->state()) return;
    if (!m_session->state()->newest) return m_session->discard({});
    showPart(m_letGo);
    m_letGo->begin(*m_session->state(), m_drafts + "/sentences/letGo");
}

} // namespace app
