#include "app/gui/check/sign_panel.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/text/cautions.h"
#include "core/check/boat_check.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

QString cautionsFor(const core::CheckAnswer& answer) {
    QStringList cautions;
    if (answer.phase == core::Phase::Launch) cautions << launchCaution();
    cautions << scanCaution();
    if (answer.phase == core::Phase::Launch) cautions << fitCaution();
    for (const core::PointAnswer& point : answer.points)
        if (point.afloat) {
            cautions << pressureCaution();
            break;
        }
    cautions << whoPrevails();
    return cautions.join(QStringLiteral("\n"));
}

QString launchButton(core::CheckOutcome outcome) {
    if (outcome == core::CheckOutcome::Incomplete) return SignPanel::tr("Sign: kit incomplete, urgent");
    return outcome == core::CheckOutcome::Complete ? SignPanel::tr("Sign: kit complete")
                                                   : SignPanel::tr("Sign: kit complete, with remarks");
}

QString returnButton(const core::CheckAnswer& answer) {
    const bool isAllBack =
        std::none_of(answer.findings.begin(), answer.findings.end(),
                     [](const core::Finding& each) { return each.kind == core::FindingKind::NotReturned; });
    if (!isAllBack) return SignPanel::tr("Sign: kit not all back");
    if (answer.outcome == core::CheckOutcome::Incomplete) return SignPanel::tr("Sign: still something to do");
    return answer.outcome == core::CheckOutcome::Complete ? SignPanel::tr("Sign: all back")
                                                          : SignPanel::tr("Sign: all back, with remarks");
}

} // namespace

SignPanel::SignPanel(QWidget* parent)
    : QWidget(parent)
    , m_heading(wordsIn("heading", {}, this))
    , m_caution(wordsIn("remark", {}, this))
    , m_by(new ChoiceBox(this))
    , m_reasonLabel(wordsIn("remark", tr("Why launch with short kit?"), this))
    , m_reason(new QLineEdit(this))
    , m_sign(new QPushButton(this)) {
    setObjectName("signPanel");
    m_caution->setObjectName("cautionLabel");
    m_by->setObjectName("signedByBox");
    m_by->setAccessibleName(tr("signed by"));
    m_reason->setObjectName("urgentReasonEdit");
    m_reason->setAccessibleName(tr("reason for launching with short kit"));
    m_reasonLabel->setBuddy(m_reason);
    m_sign->setObjectName("signNowButton");
    m_sign->setProperty("role", "usual");
    auto* back = new QPushButton(tr("Back to the check"), this);
    back->setObjectName("signBackButton");
    auto* byLabel = wordsIn("remark", tr("Signed by"), this);
    byLabel->setBuddy(m_by);

    auto* buttons = new QHBoxLayout;
    buttons->addWidget(back);
    buttons->addStretch(1);
    buttons->addWidget(m_sign);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(spaceUnit, 0, spaceUnit, 0);
    layout->setSpacing(spaceUnit);
    layout->addWidget(m_heading);
    layout->addWidget(m_caution);
    layout->addWidget(m_reasonLabel);
    layout->addWidget(m_reason);
    auto* by = new QHBoxLayout;
    by->setSpacing(2 * spaceUnit);
    by->addWidget(byLabel);
    by->addWidget(m_by, 1);
    layout->addLayout(by);
    layout->addLayout(buttons);
    layout->addStretch(1);
    connect(back, &QPushButton::clicked, this, &SignPanel::backPressed);
    connect(m_sign, &QPushButton::clicked, this, [this] { press(); });
    connect(m_reason, &QLineEdit::textChanged, this, &SignPanel::adapt);
    connect(m_reason, &QLineEdit::returnPressed, this, [this] { m_sign->setFocus(Qt::TabFocusReason); });
    connect(m_by, &QComboBox::currentIndexChanged, this, &SignPanel::adapt);
}

void SignPanel::begin(const core::CheckAnswer& answer, const QStringList& aboard, const QStringList& all) {
    m_by->clear();
    m_by->addItem(tr("nobody yet"));
    QStringList people = aboard;
    for (const QString& person : all)
        if (!people.contains(person)) people << person;
    m_by->addItems(people);
    m_by->setCurrentIndex(aboard.isEmpty() ? 0 : 1);
    m_reason->clear();
    setAnswer(answer);
    if (m_needsReason)
        m_reason->setFocus(Qt::OtherFocusReason);
    else if (aboard.isEmpty())
        m_by->setFocus(Qt::OtherFocusReason);
    else
        m_sign->setFocus(Qt::OtherFocusReason);
}

void SignPanel::setAnswer(const core::CheckAnswer& answer) {
    const bool launch = answer.phase == core::Phase::Launch;
    const bool incomplete = answer.outcome == core::CheckOutcome::Incomplete;
    m_needsReason = launch && incomplete;
    m_heading->setText(launch ? tr("Before you sign the launch check")
                              : tr("Before you sign the return check"));
    m_caution->setText(cautionsFor(answer));
    m_reasonLabel->setVisible(m_needsReason);
    m_reason->setVisible(m_needsReason);
    m_sign->setText(launch ? launchButton(answer.outcome) : returnButton(answer));
    adapt();
}

void SignPanel::adapt() {
    const bool reasonGiven = !m_needsReason || !m_reason->text().trimmed().isEmpty();
    m_sign->setEnabled(m_by->currentIndex() > 0 && reasonGiven);
}

bool SignPanel::nameSigner(const QString& person) {
    const int at = m_by->findText(person);
    if (at < 1) return false;
    m_by->setCurrentIndex(at);
    return true;
}

bool SignPanel::press() {
    if (!m_sign->isEnabled()) return false;
    emit signPressed(m_by->currentText(), m_needsReason ? m_reason->text().trimmed() : QString());
    return true;
}

} // namespace app
