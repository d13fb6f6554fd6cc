#include "app/gui/gear/manifests/manifest_line_panel.h"

#include "app/gui/gear/manifests/manifest_words.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/text/outlook_sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_manifests.h"

#include <QAction>
#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSpinBox>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

constexpr int mostItems = 1000;       ///< an import takes no more either
constexpr int mostWarningsOfLine = 2; ///< shown; a line with more has names that are wrong anyway

using Warnings = std::vector<core::Error>;

} // namespace

ManifestLinePanel::ManifestLinePanel(GearTools tools, QWidget* parent)
    : ManifestPanel(std::move(tools), "manifestLine", tr("Remove line"), parent)
    , m_kitType(new ChoiceBox(this))
    , m_number(new QSpinBox(this))
    , m_required(new QCheckBox(tr("required"), this))
    , m_substitutes(wordsLabel(this, "remark", "manifestSubstitutesLabel"))
    , m_changeSubstitutes(wordsButton(this, tr("Substitutes…"), "manifestSubstitutesButton"))
    , m_menu(new QMenu(this))
    , m_note(new QLineEdit(this))
    , m_wait(typingWait(this)) {
    connect(m_wait, &QTimer::timeout, this, &ManifestLinePanel::askForWarnings);
    build();
    connect(m_kitType, &QComboBox::currentIndexChanged, this, [this] {
        m_chosen.clear(); // they were the other kit type's
        adapt();
    });
    connect(m_number, &QSpinBox::valueChanged, this, &ManifestLinePanel::adapt);
    connect(m_required, &QCheckBox::toggled, this, &ManifestLinePanel::adapt);
    connect(m_note, &QLineEdit::textChanged, this, &ManifestLinePanel::adapt);
    connect(m_changeSubstitutes, &QPushButton::clicked, this, &ManifestLinePanel::chooseSubstitutes);
}

void ManifestLinePanel::build() {
    m_kitType->setObjectName("manifestKitTypeBox");
    m_kitType->setAccessibleName(tr("kit type of the new line"));
    m_number->setObjectName("manifestNumberBox");
    m_number->setRange(1, mostItems);
    m_number->setButtonSymbols(QAbstractSpinBox::NoButtons);
    m_number->setFixedWidth(92);
    m_required->setObjectName("manifestRequiredCheck");
    m_menu->setObjectName("manifestSubstitutesMenu");
    m_note->setObjectName("manifestNoteEdit");
    m_note->setAccessibleName(tr("note of the line"));
    m_note->setPlaceholderText(tr("note"));
    auto* number = new FlowLayout;
    addWithWord(*number, tr("how many"), m_number);
    number->addWidget(m_required);
    auto* substitutes = new FlowLayout;
    substitutes->addExpanding(m_substitutes);
    substitutes->addWidget(m_changeSubstitutes);
    fields()->addWidget(m_kitType);
    fields()->addLayout(number);
    fields()->addLayout(substitutes);
    fields()->addWidget(m_note);
    addButtons();
}

void ManifestLinePanel::edit(const core::ManifestOwner& owner, const core::AskedLine& asked,
                             const QStringList& stillAskedOf, bool hasBoat) {
    m_line = asked.line;
    m_isOwn = asked.isOwn;
    m_isOwnAlone = owner.kind == core::ManifestOwner::Kind::Boat && asked.isOwn && !asked.ofClass;
    const bool isBoat = owner.kind == core::ManifestOwner::Kind::Boat;
    const QString kit = text(m_line.kitType), name = text(owner.name);
    Shown shown;
    shown.isOfNoBoat = !hasBoat;
    shown.heading =
        isBoat ? tr("%1, %2").arg(withCapital(kit), name) : tr("%1, class %2").arg(withCapital(kit), name);
    if (!hasBoat)
        shown.about = aboutNoBoat();
    else if (asked.isOwn)
        shown.about = withCapital(differenceOf(asked)) + '.';
    else if (isBoat)
        shown.about = tr("What you write is %1's own and stays when the class changes.").arg(name);
    shown.mayBeAsClass = asked.isOwn && asked.ofClass;
    if (m_line.quantity > 0) {
        shown.question = questionOf(kit, owner, hasBoat);
        if (!stillAskedOf.isEmpty())
            shown.question += ' ' + tr("Still asked by a line of its own: %1.").arg(listed(stillAskedOf));
    }
    show(owner, shown);
    fill();
}

void ManifestLinePanel::beginNew(const core::ManifestOwner& owner, const QStringList& kitTypes) {
    m_line = {};
    m_isOwn = false;
    m_isOwnAlone = false;
    Shown shown{.isNew = true};
    shown.heading = owner.kind == core::ManifestOwner::Kind::Boat
                        ? tr("A new line, %1's own").arg(text(owner.name))
                        : tr("A new line of class %1").arg(text(owner.name));
    show(owner, shown);
    fillBox(*m_kitType, tr("which kit type?"), kitTypes);
    m_kitType->setCurrentIndex(0);
    fill();
    if (isVisible()) m_kitType->setFocus(Qt::OtherFocusReason);
}

void ManifestLinePanel::fill() {
    m_kitType->setVisible(isNew());
    m_number->setValue(std::max(1, m_line.quantity));
    m_required->setChecked(m_line.required);
    m_chosen = m_line.substitutes;
    m_note->setText(text(m_line.note));
    m_note->setCursorPosition(0); // a long one is read from its beginning
    adapt();
}

bool ManifestLinePanel::isOpenOn(const core::ManifestOwner& wanted, const core::AskedLine& line) const {
    return !isNew() && owner() == wanted && m_line == line.line && m_isOwn == line.isOwn;
}

void ManifestLinePanel::setFocusOnNumber() {
    m_number->setFocus(Qt::OtherFocusReason);
    m_number->selectAll();
}

std::string ManifestLinePanel::kitType() const {
    return isNew() ? m_kitType->currentData().toString().toStdString() : m_line.kitType;
}

void ManifestLinePanel::adapt() {
    m_substitutes->setText(m_chosen.empty() ? tr("no substitute") : tr("or %1").arg(listed(m_chosen)));
    m_changeSubstitutes->setEnabled(!kitType().empty());
    const bool isAnother = m_number->value() != m_line.quantity ||
                           m_required->isChecked() != m_line.required || m_chosen != m_line.substitutes ||
                           m_note->text().trimmed() != text(m_line.note);
    const bool isWritable = isNew() ? !kitType().empty() : isAnother;
    setWritable(isWritable);
    lookForWarnings(isWritable);
}

/// What was asked before is of another line by now.
void ManifestLinePanel::lookForWarnings(bool isWritable) {
    ++m_question;
    if (isWritable) return m_wait->start();
    m_wait->stop();
    showWarnings({});
}

void ManifestLinePanel::askForWarnings() {
    ask([owner = owner(), line = wanted(),
         today = today()](core::Club& club) { return club.manifests().warningsOfLine(owner, line, today); },
        [this, question = m_question](const Warnings& warnings) {
            if (question != m_question) return;
            m_answered = question;
            showWarnings(warningsInLines(warnings, mostWarningsOfLine));
        });
}

/// A menu of what may stand in, each with its mark; it opens and closes by the keyboard.
void ManifestLinePanel::chooseSubstitutes() {
    m_menu->clear();
    for (const std::string& name : core::possibleSubstitutes(m_kitTypes, kitType())) {
        QAction* action = m_menu->addAction(text(name).replace('&', QLatin1String("&&")));
        action->setCheckable(true);
        action->setChecked(std::find(m_chosen.begin(), m_chosen.end(), name) != m_chosen.end());
        connect(action, &QAction::triggered, this,
                [this, name](bool isChecked) { toggleSubstitute(name, isChecked); });
    }
    if (m_menu->isEmpty()) m_menu->addAction(tr("no kit type can stand in"))->setEnabled(false);
    m_menu->popup(m_changeSubstitutes->mapToGlobal(QPoint(0, m_changeSubstitutes->height())));
}

void ManifestLinePanel::toggleSubstitute(const std::string& kitType, bool isSubstitute) {
    std::erase(m_chosen, kitType);
    if (isSubstitute) m_chosen.push_back(kitType);
    adapt();
}

core::ManifestLine ManifestLinePanel::wanted() const {
    core::ManifestLine line = m_line;
    line.kitType = kitType();
    line.quantity = m_number->value();
    line.required = m_required->isChecked();
    line.substitutes = m_chosen;
    line.note = m_note->text().trimmed().toStdString();
    return line;
}

/// Whoever saves at once has not seen yet what may not be meant so: then it is said with the sentence.
void ManifestLinePanel::writeRow() {
    const core::ManifestLine line = wanted();
    changeLine(line, tr("%1: %2 asked from now on. Checks signed before keep what they were asked.")
                         .arg(withCapital(text(line.kitType)), inWords(line)));
}

void ManifestLinePanel::changeLine(const core::ManifestLine& line, const QString& sentence) {
    write(
        [owner = owner(), line, seen = isNew() ? std::nullopt : std::optional(m_line)](
            core::Club& club, const std::string& by, core::Moment moment) -> core::Result<Warnings> {
            Warnings warnings;
            if (line.quantity > 0) warnings = club.manifests().warningsOfLine(owner, line, moment.today);
            const auto done = club.manifests().changeLine(owner, line, by, moment, seen ? &*seen : nullptr);
            if (!done) return done.error();
            return warnings;
        },
        [this, sentence, wereShown = hasWarnings() && m_answered == m_question](const Warnings& warnings) {
            const QString unseen = wereShown ? QString() : warningsInLines(warnings, 1).section('\n', 0, 0);
            emit changed(unseen.isEmpty() ? sentence : sentence + ' ' + unseen);
        });
}

QString ManifestLinePanel::takenAwayInWords() const {
    return tr("%1 removed. Checks signed before keep what they were asked.")
        .arg(withCapital(text(m_line.kitType)));
}

void ManifestLinePanel::takeAway() {
    // Of a boat, and its class asks for none, or of a class without a boat: nothing is left to say.
    if (m_isOwnAlone || isOfNoBoat()) {
        dropOwn(takenAwayInWords());
        return;
    }
    core::ManifestLine line = m_line;
    line.quantity = 0;
    changeLine(line, takenAwayInWords());
}

void ManifestLinePanel::makeAsClass() {
    dropOwn(tr("%1 is asked of %2 as of its class from now on.")
                .arg(withCapital(text(m_line.kitType)), text(owner().name)));
}

void ManifestLinePanel::dropOwn(const QString& sentence) {
    run(
        [owner = owner(), seen = m_line](core::Club& club, const std::string& by, core::Moment moment) {
            return club.manifests().dropOwnLine(owner, seen, by, moment);
        },
        sentence);
}

} // namespace app
