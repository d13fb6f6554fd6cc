#include "app/gui/check/signing.h"

#include "app/gui/check/signed_panel.h"
#include "app/gui/printout/check_printout.h"
#include "app/text/text.h"
#include "app/text/words.h"

namespace app {

Signing::Signing(QWidget* parent)
    : PartStack(parent)
    , m_sign(new SignPanel(this))
    , m_signedPanel(new SignedPanel(this)) {
    addWidget(m_sign);
    addWidget(m_signedPanel);
    connect(m_sign, &SignPanel::backPressed, this, &Signing::backPressed);
    connect(m_sign, &SignPanel::signPressed, this, &Signing::signPressed);
    connect(m_signedPanel, &SignedPanel::donePressed, this, &Signing::donePressed);
    connect(m_signedPanel, &SignedPanel::printPressed, this, [this] { emit printPressed(m_printout); });
    connect(m_signedPanel, &SignedPanel::savePressed, this, [this] { emit savePressed(m_printout); });
}

void Signing::begin(const CheckState& state) {
    setCurrentWidget(m_sign);
    m_sign->begin(state);
}

void Signing::openDrafts(const QString& place) {
    m_sign->openDrafts(place);
}

void Signing::setState(const CheckState& state) {
    m_sign->setState(state);
}

bool Signing::isAsking() const {
    return isVisible() && currentWidget() == m_sign;
}

bool Signing::nameSigner(const QString& person) {
    return m_sign->nameSigner(person);
}

SignPanel::Press Signing::press() {
    return m_sign->press();
}

QString Signing::onceMore() const {
    return m_sign->onceMore();
}

void Signing::showSigned(const core::SignedCheck& check, const CheckState& state) {
    m_isSigned = true;
    m_printout = printoutOf(check, state);
    setCurrentWidget(m_signedPanel);
    const QString urgent = text(check.urgent);
    m_signedPanel->begin(tr("Signed by %1, %2.").arg(text(check.by), inWords(check.at, check.answer.today)),
                         urgent.isEmpty() ? QString() : tr("Launched urgently: %1").arg(urgent));
}

void Signing::printoutDone(const QString& sentence) {
    m_signedPanel->say(sentence);
}

void Signing::clear() {
    m_isSigned = false;
    m_printout = {};
    m_sign->clear();
}

} // namespace app
