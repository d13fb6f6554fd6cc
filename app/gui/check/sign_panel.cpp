#include "app/gui/check/sign_panel.h"

#include "app/gui/club/check_state.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/drafts.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/reason_words.h"
#include "app/text/cautions.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/check/boat_check.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

/// Where people without a jacket that fits are named, that is said of sizes.
QStringList cautionsFor(const core::CheckAnswer& answer, bool areJacketsNamed) {
    QStringList cautions;
    if (answer.phase == core::Phase::Launch) cautions << launchCaution();
    cautions << scanCaution();
    const bool isUrgent = answer.outcome == core::CheckOutcome::Incomplete;
    if (answer.phase == core::Phase::Launch && !areJacketsNamed)
        cautions << (isUrgent ? jacketCaution() : fitCaution());
    if (hasPressureAfloat(answer)) cautions << pressureCaution();
    cautions << whoPrevails();
    return cautions;
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

/// Who is aboard of a launch with nothing worn that fits.
QStringList withoutJacket(const CheckState& state) {
    QStringList people;
    if (state.answer.phase != core::Phase::Launch) return people;
    for (const core::Finding& finding : state.answer.findings)
        if ((finding.kind == core::FindingKind::NoFit || finding.kind == core::FindingKind::Missing) &&
            state.context.wornTypes.contains(finding.kitType))
            people << texts(finding.people);
    people.removeDuplicates();
    return people;
}

void setRole(QLabel& label, const char* role) {
    if (label.property("role") == role) return;
    label.setProperty("role", role);
    label.style()->unpolish(&label);
    label.style()->polish(&label);
}

} // namespace

SignPanel::SignPanel(QWidget* parent)
    : QWidget(parent)
    , m_heading(wordsIn("heading", {}, this))
    , m_caution(wordsLabel(this, "remark", "cautionLabel"))
    , m_by(new ChoiceBox(this))
    , m_reasonLabel(wordsIn("remark", tr("Why launch with kit incomplete?"), this))
    , m_reason(wordsEdit(this, "urgentReasonEdit", tr("reason for launching with kit incomplete")))
    , m_drafts(new Drafts(this))
    , m_wanting(wordsLabel(this, "footnote", "reasonWantingLabel"))
    , m_jackets(wordsLabel(this, "look", "withoutJacketLabel"))
    , m_sign(wordsButton(this, {}, "signNowButton", true)) {
    setObjectName("signPanel");
    build();
    connectParts();
}

void SignPanel::build() {
    m_reasonLabel->setBuddy(m_reason);
    m_drafts->keep(*m_reason);
    auto* back = wordsButton(this, tr("Back"), "signBackButton");
    connect(back, &QPushButton::clicked, this, &SignPanel::backPressed);
    auto* buttons = new FlowLayout;
    buttons->addWidget(back);
    buttons->addStretch();
    buttons->addWidget(m_sign);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(spaceUnit, 0, spaceUnit, 0);
    layout->setSpacing(spaceUnit / 2); // the button is in view without scrolling at 1280 × 800
    layout->addWidget(m_heading);
    layout->addWidget(m_caution);
    auto* reason = new QVBoxLayout;
    reason->setSpacing(0);
    for (QWidget* part : std::initializer_list<QWidget*>{m_reasonLabel, m_wanting, m_reason})
        reason->addWidget(part);
    layout->addLayout(reason);
    addSigner(*layout);
    layout->addWidget(m_jackets);
    layout->addLayout(buttons);
    layout->addStretch(1);
}

void SignPanel::addSigner(QVBoxLayout& layout) {
    m_by->setObjectName("signedByBox");
    m_by->setAccessibleName(tr("signed by"));
    auto* label = wordsIn("remark", tr("Signed by"), this);
    label->setBuddy(m_by);
    auto* by = new QHBoxLayout;
    by->setSpacing(2 * spaceUnit);
    by->addWidget(label);
    by->addWidget(m_by, 1);
    layout.addLayout(by);
}

void SignPanel::connectParts() {
    connect(m_sign, &QPushButton::clicked, this, &SignPanel::press);
    connect(m_reason, &QLineEdit::textChanged, this, &SignPanel::adapt);
    connect(m_reason, &QLineEdit::returnPressed, this, [this] { m_sign->setFocus(Qt::TabFocusReason); });
    connect(m_by, &QComboBox::currentIndexChanged, this, &SignPanel::adapt);
    connect(m_by, &QComboBox::activated, this, [this](int index) { m_isSignerChosen = index > 0; });
}

void SignPanel::begin(const CheckState& state) {
    m_second.clear();
    setState(state);
    if (m_needsReason && !wantingOfReason(m_reason->text()).isEmpty())
        m_reason->setFocus(Qt::OtherFocusReason);
    else if (m_by->currentIndex() < 1)
        m_by->setFocus(Qt::OtherFocusReason);
    else
        m_sign->setFocus(Qt::OtherFocusReason);
}

void SignPanel::setState(const CheckState& state) {
    const core::CheckAnswer& answer = state.answer;
    const bool launch = answer.phase == core::Phase::Launch;
    m_needsReason = launch && answer.outcome == core::CheckOutcome::Incomplete;
    m_heading->setText(launch ? tr("Before you sign the launch check")
                              : tr("Before you sign the return check"));
    m_usualWords = launch ? launchButton(answer.outcome) : returnButton(answer);
    const QStringList without = withoutJacket(state);
    if (without != m_withoutJacket) m_second.clear();
    m_withoutJacket = without;
    // With a reason to write each line counts: then in one paragraph.
    m_caution->setText(cautionsFor(answer, !without.isEmpty())
                           .join(m_needsReason ? QStringLiteral(" ") : QStringLiteral("\n")));
    offerSigners(texts(state.names), texts(state.people));
    adapt();
}

void SignPanel::openDrafts(const QString& place) {
    m_drafts->open(place);
}

void SignPanel::clear() {
    m_drafts->close();
    m_isSignerChosen = false;
    m_second.clear();
    m_reason->clear();
}

void SignPanel::offerSigners(const QStringList& aboard, const QStringList& all) {
    QStringList people = aboard;
    for (const QString& person : all)
        if (!people.contains(person)) people << person;
    const QString signer = m_isSignerChosen ? m_by->currentText() : aboard.value(0);
    const QSignalBlocker quiet(m_by);
    if (people != m_people || m_by->count() == 0) {
        m_people = people;
        m_by->clear();
        m_by->addItem(tr("nobody yet"));
        m_by->addItems(people);
    }
    m_by->setCurrentIndex(static_cast<int>(people.indexOf(signer)) + 1); // -1: nobody yet
}

QString SignPanel::onceMore() const {
    if (m_withoutJacket.isEmpty()) return {};
    const QString words =
        jacketCaution() + QLatin1Char(' ') + tr("Without one: %1.").arg(listed(m_withoutJacket));
    return m_second.isAsked() ? words + QLatin1Char(' ') + tr("Press once more to sign all the same.")
                              : words;
}

void SignPanel::adapt() {
    const QString wanting = m_needsReason ? wantingOfReason(m_reason->text()) : QString();
    m_reasonLabel->setVisible(m_needsReason);
    m_reason->setVisible(m_needsReason);
    m_wanting->setText(wanting);
    m_wanting->setVisible(m_needsReason);
    // All of the cautions stay in view on a small screen, however much is asked beneath them.
    setRole(*m_caution, m_needsReason ? "footnote" : "remark");
    m_jackets->setText(onceMore());
    m_jackets->setVisible(!m_withoutJacket.isEmpty());
    m_sign->setText(m_second.isAsked() ? tr("Sign all the same") : m_usualWords);
    m_sign->setEnabled(m_by->currentIndex() > 0 && wanting.isEmpty());
}

bool SignPanel::nameSigner(const QString& person) {
    const int at = m_by->findText(person);
    if (at < 1) return false;
    m_by->setCurrentIndex(at);
    m_isSignerChosen = true;
    return true;
}

SignPanel::Press SignPanel::press() {
    if (!m_sign->isEnabled()) return Press::Wanting;
    if (!m_withoutJacket.isEmpty() && !m_second.press()) {
        adapt();
        return Press::AskedOnceMore;
    }
    emit signPressed(m_by->currentText(), m_needsReason ? m_reason->text().trimmed() : QString());
    return Press::Signed;
}

} // namespace app
