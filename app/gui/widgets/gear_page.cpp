#include "app/gui/widgets/gear_page.h"

#include "app/gui/printout/paper_button.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/text/contract_words.h"
#include "app/text/errors.h"
#include "app/text/sentences.h"
#include "app/text/words.h"
#include "core/base/error_code.h"

#include <QLabel>
#include <QVBoxLayout>

namespace app {

GearPart::GearPart(GearTools tools, const QString& name, QWidget* parent)
    : QWidget(parent)
    , m_tools(std::move(tools)) {
    setObjectName(name);
}

std::string GearPart::officer() {
    const QString name = m_tools.officer ? m_tools.officer() : QString();
    if (name.isEmpty())
        say(m_tools.hasPeople && !m_tools.hasPeople()
                ? tr("Nobody is in the register yet: write yourself first, on the page Register under "
                     "“people”.")
                : tr("Choose your name first, under “Recorded as done by”."),
            true);
    return name.toStdString();
}

bool GearPart::asksForPin(const core::Error& error, std::function<void()> goOn,
                          std::function<void()> giveUp) {
    if (error.code != core::ErrorCode::PinNeeded || !m_tools.askForPin) return false;
    m_tools.askForPin(this, std::move(goOn), std::move(giveUp));
    return true;
}

SaidLabel* GearPart::saidLabel(const char* name) {
    if (!m_said) m_said = new SaidLabel(name, this);
    return m_said;
}

void GearPart::say(const QString& sentence, bool toLookAt) {
    if (m_said) m_said->say(sentence, toLookAt);
}

void GearPart::forgetError() {
    if (m_said) m_said->forgetError();
}

void GearPart::sayError(const core::Error& error) {
    say(inWordsOfForms(errorSentence(error)), true);
}

void GearPart::sayDone(const core::Result<QString>& sentence) {
    if (sentence)
        say(*sentence);
    else
        sayError(sentence.error());
}

QVBoxLayout& GearPage::column(int above) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(3 * spaceUnit, above, 3 * spaceUnit, 2 * spaceUnit);
    column->setSpacing(spaceUnit);
    return *column;
}

PaperButton* GearPage::paperButton() {
    auto* button = new PaperButton(tools().club, tools().choosers, tools().time, this);
    connect(button, &PaperButton::done, this,
            [this](const core::Result<QString>& sentence) { sayDone(sentence); });
    return button;
}

PaperButton*
GearPage::listButton(const std::function<core::Result<ListTable>(core::Club&, core::CalendarDay)>& read) {
    PaperButton* button = paperButton();
    button->offerList(read);
    return button;
}

PaperButton* GearPage::shownListButton(const std::function<ListTable()>& shown) {
    PaperButton* button = paperButton();
    button->offerShown(shown);
    return button;
}

void GearPage::addCaution(QVBoxLayout& column, const char* name, const QString& caution) {
    auto* label = wordsLabel(this, "footnote", name);
    label->setText(caution);
    column.addWidget(label);
    QMargins margins = column.contentsMargins();
    margins.setBottom(spaceUnit);
    column.setContentsMargins(margins);
}

void GearPage::sayOfScan(const QString& sentence) {
    say(sentence, true);
}

void GearPage::say(const QString& sentence, bool toLookAt) {
    if (!hasSaidLabel() && layout() && !sentence.isEmpty()) layout()->addWidget(saidLabel("pageSaidLabel"));
    GearPart::say(sentence, toLookAt);
}

void GearPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

} // namespace app
