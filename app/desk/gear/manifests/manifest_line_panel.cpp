#include "app/desk/gear/manifests/manifest_line_panel.h"

#include "app/common/text.h"
#include "app/common/words.h"
#include "app/desk/club/club_thread.h"
#include "app/desk/gear/manifests/manifest_words.h"
#include "app/desk/gear/shared/fill_box.h"
#include "app/desk/gear/shared/words_label.h"
#include "app/desk/look/choice_box.h"
#include "app/desk/look/type_scale.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

constexpr int mostItems = 1000; ///< an import takes no more either

} // namespace

ManifestLinePanel::ManifestLinePanel(GearTools tools, QWidget* parent)
    : QWidget(parent)
    , m_tools(std::move(tools))
    , m_heading(wordsLabel(this, "heading", "manifestLineLabel"))
    , m_about(wordsLabel(this, "quiet", "manifestLineAboutLabel"))
    , m_kitType(new ChoiceBox(this))
    , m_number(new QSpinBox(this))
    , m_required(new QCheckBox(tr("required"), this))
    , m_note(new QLineEdit(this))
    , m_takeAway(wordsButton(this, tr("Take it away"), "manifestTakeAwayButton"))
    , m_write(wordsButton(this, tr("Write it"), "manifestWriteButton", true)) {
    setObjectName("manifestLinePanel");
    build();
    connect(m_kitType, &QComboBox::currentIndexChanged, this, &ManifestLinePanel::adapt);
    connect(m_number, &QSpinBox::valueChanged, this, &ManifestLinePanel::adapt);
    connect(m_required, &QCheckBox::toggled, this, &ManifestLinePanel::adapt);
    connect(m_note, &QLineEdit::textChanged, this, &ManifestLinePanel::adapt);
    connect(m_write, &QPushButton::clicked, this, [this] { write(m_number->value()); });
    connect(m_takeAway, &QPushButton::clicked, this, [this] { write(0); });
}

void ManifestLinePanel::build() {
    m_kitType->setObjectName("manifestKitTypeBox");
    m_kitType->setAccessibleName(tr("kit type of the new line"));
    m_number->setObjectName("manifestNumberBox");
    m_number->setRange(1, mostItems);
    m_number->setButtonSymbols(QAbstractSpinBox::NoButtons);
    m_number->setFixedWidth(112);
    m_required->setObjectName("manifestRequiredCheck");
    m_note->setObjectName("manifestNoteEdit");
    m_note->setAccessibleName(tr("note of the line"));
    m_note->setPlaceholderText(tr("note"));
    auto* number = new QHBoxLayout;
    number->setSpacing(spaceUnit);
    addWithWord(*number, tr("how many"), m_number);
    number->addWidget(m_required);
    number->addStretch(1);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(spaceUnit);
    buttons->addWidget(m_takeAway);
    buttons->addStretch(1);
    buttons->addWidget(m_write);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit / 2);
    layout->addWidget(m_heading);
    layout->addWidget(m_kitType);
    layout->addWidget(m_about);
    layout->addLayout(number);
    layout->addWidget(m_note);
    layout->addLayout(buttons);
    layout->addStretch(1);
}

void ManifestLinePanel::edit(const core::ManifestOwner& owner, const core::AskedLine& line) {
    show(owner, line.line, false);
    const QString kit = withCapital(text(line.line.kitType));
    m_heading->setText(owner.kind == core::ManifestOwner::Kind::Boat
                           ? tr("%1, %2").arg(kit, text(owner.name))
                           : tr("%1, class %2").arg(kit, text(owner.name)));
    QStringList about;
    QStringList substitutes;
    for (const std::string& name : line.line.substitutes)
        substitutes << text(name);
    if (!substitutes.isEmpty()) about << tr("May be stood in for by %1.").arg(listed(substitutes));
    if (line.difference != core::Difference::None) about << withCapital(differenceOf(line)) + '.';
    if (owner.kind == core::ManifestOwner::Kind::Boat)
        about << tr("What you write is %1's own and stays when the class changes.").arg(text(owner.name));
    m_about->setText(about.join(' '));
    m_about->setVisible(!about.isEmpty());
}

void ManifestLinePanel::beginNew(const core::ManifestOwner& owner, const QStringList& kitTypes) {
    show(owner, {}, true);
    m_heading->setText(owner.kind == core::ManifestOwner::Kind::Boat
                           ? tr("A new line, %1's own").arg(text(owner.name))
                           : tr("A new line of class %1").arg(text(owner.name)));
    m_about->setVisible(false);
    fillBox(*m_kitType, tr("which kit type?"), kitTypes);
    m_kitType->setCurrentIndex(0);
    if (isVisible()) m_kitType->setFocus(Qt::OtherFocusReason);
    adapt();
}

void ManifestLinePanel::show(const core::ManifestOwner& owner, const core::ManifestLine& line, bool isNew) {
    m_owner = owner;
    m_line = line;
    m_isNew = isNew;
    m_kitType->setVisible(isNew);
    m_takeAway->setVisible(!isNew);
    m_takeAway->setEnabled(line.quantity > 0);
    m_number->setValue(std::max(1, line.quantity));
    m_required->setChecked(line.required);
    m_note->setText(text(line.note));
    adapt();
}

bool ManifestLinePanel::isOpenOn(const core::ManifestOwner& owner, const core::ManifestLine& line) const {
    return !m_isNew && m_owner == owner && m_line == line;
}

void ManifestLinePanel::setFocusOnNumber() {
    m_number->setFocus(Qt::OtherFocusReason);
    m_number->selectAll();
}

void ManifestLinePanel::adapt() {
    const bool isAnother = m_number->value() != m_line.quantity ||
                           m_required->isChecked() != m_line.required ||
                           m_note->text().trimmed() != text(m_line.note);
    m_write->setEnabled(m_isNew ? m_kitType->currentIndex() > 0 : isAnother);
}

void ManifestLinePanel::write(int quantity) {
    if (m_tools.officer().isEmpty()) {
        emit officerWanted();
        return;
    }
    core::ManifestLine line = m_line;
    if (m_isNew) line.kitType = m_kitType->currentData().toString().toStdString();
    line.quantity = quantity;
    if (quantity > 0) {
        line.required = m_required->isChecked();
        line.note = m_note->text().trimmed().toStdString();
    }
    m_tools.club.ask(
        this,
        [owner = m_owner, line, by = m_tools.officer().toStdString(), moment = m_tools.time(),
         seen = m_isNew ? std::nullopt : std::optional(m_line)](core::Club& club) {
            return club.changeManifest(owner, line, by, moment, seen ? &*seen : nullptr);
        },
        [this, line](const core::Outcome& done) {
            if (!done) {
                emit refused(done.error());
                return;
            }
            const QString kit = withCapital(text(line.kitType));
            emit changed(line.quantity == 0
                             ? tr("%1 taken away. Checks signed before keep what they were asked.").arg(kit)
                             : tr("%1: %2 asked from now on. Checks signed before keep what they were asked.")
                                   .arg(kit, inWords(line)));
        });
}

} // namespace app
