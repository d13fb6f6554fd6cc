#include "app/gui/gear/manifests/manifest_panel.h"

#include "app/gui/gear/manifests/keep_question.h"
#include "app/gui/gear/manifests/side_scroll.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/text/text.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QVBoxLayout>

namespace app {

ManifestPanel::ManifestPanel(GearTools tools, const QByteArray& prefix, const QString& remove,
                             QWidget* parent)
    : GearPart(std::move(tools), prefix + "Panel", parent)
    , m_heading(wordsLabel(this, "heading", prefix + "Label"))
    , m_about(wordsLabel(this, "quiet", prefix + "AboutLabel"))
    , m_fields(new QWidget(this))
    , m_scroll(new SideScroll(m_fields, this))
    , m_warnings(wordsLabel(this, "look", prefix + "WarningsLabel"))
    , m_buttonRows(new QWidget(this))
    , m_rows(new QVBoxLayout(m_fields))
    , m_question(new KeepQuestion(prefix, this))
    , m_upper(new QHBoxLayout)
    , m_lower(new QHBoxLayout)
    , m_takeAway(wordsButton(m_buttonRows, remove, prefix + "TakeAwayButton"))
    , m_asClass(wordsButton(m_buttonRows, tr("As the class"), prefix + "AsClassButton"))
    , m_write(wordsButton(m_buttonRows, tr("Save"), prefix + "WriteButton", true)) {
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->setSpacing(spaceUnit / 2);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit / 2);
    for (QWidget* part :
         std::initializer_list<QWidget*>{m_heading, m_about, m_scroll, m_buttonRows, m_question})
        layout->addWidget(part);
    layout->addStretch(1);
    m_warnings->hide(); // it is put into no layout where nothing is warned of
    connect(m_write, &QPushButton::clicked, this, [this] { writeRow(); });
    connect(m_takeAway, &QPushButton::clicked, this, &ManifestPanel::askFirst);
    connect(m_asClass, &QPushButton::clicked, this, [this] { makeAsClass(); });
    connect(m_question, &KeepQuestion::kept, this, &ManifestPanel::keep);
    connect(m_question, &KeepQuestion::takenAway, this, [this] {
        keep();
        takeAway();
    });
}

void ManifestPanel::addButtons() {
    m_upper->addStretch(1);
    m_lower->setSpacing(spaceUnit);
    m_lower->addWidget(m_asClass); // which goes up where both are offered
    m_lower->addWidget(m_takeAway);
    m_lower->addStretch(1);
    m_lower->addWidget(m_write);
    auto* rows = new QVBoxLayout(m_buttonRows);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(spaceUnit / 2);
    rows->addLayout(m_upper);
    rows->addLayout(m_lower);
}

void ManifestPanel::showFields(bool isShown) {
    m_scroll->setVisible(isShown && !m_isOfNoBoat);
    m_about->setVisible(!m_about->text().isEmpty() && (isShown || !m_isOfNoBoat)); // the question says it
    m_warnings->setVisible(isShown && hasWarnings() && isVisible());
    m_buttonRows->setVisible(isShown);
}

void ManifestPanel::show(const core::ManifestOwner& owner, const Shown& shown) {
    m_owner = owner;
    m_isNew = shown.isNew;
    m_isOfNoBoat = shown.isOfNoBoat;
    m_questionText = shown.question;
    m_question->close();
    m_warnings->clear(); // they were another row's
    showFields(true);
    m_scroll->verticalScrollBar()->setValue(0);
    m_heading->setText(shown.heading);
    m_about->setText(shown.about);
    m_about->setVisible(!shown.about.isEmpty());
    m_takeAway->setVisible(!shown.question.isEmpty());
    m_write->setVisible(!m_isOfNoBoat);
    (shown.question.isEmpty() ? m_lower : m_upper)->insertWidget(0, m_asClass);
    m_asClass->setVisible(shown.mayBeAsClass);
    m_asClass->setAccessibleDescription(
        tr("removes what %1 has of its own: its class's holds again").arg(text(owner.name)));
}

QString ManifestPanel::questionOf(const QString& thing, const core::ManifestOwner& owner, bool hasBoat) {
    if (!hasBoat) return tr("Remove “%1” from class %2? No boat has the class.").arg(thing, text(owner.name));
    return owner.kind == core::ManifestOwner::Kind::Boat
               ? tr("Remove “%1” from %2? It is then asked of it no more.").arg(thing, text(owner.name))
               : tr("Remove “%1” from class %2? It is then asked of its boats no more.")
                     .arg(thing, text(owner.name));
}

QString ManifestPanel::aboutNoBoat() {
    return tr(
        "No boat has this class: what is asked by it can only be removed here, until a boat gets the class "
        "under Register.");
}

void ManifestPanel::setWritable(bool isWritable) {
    m_write->setEnabled(isWritable);
}

void ManifestPanel::showWarnings(const QString& warnings) {
    m_warnings->setText(warnings);
    m_warnings->setVisible(hasWarnings() && m_buttonRows->isVisible());
}

void ManifestPanel::showEvent(QShowEvent* event) {
    GearPart::showEvent(event);
    m_warnings->setVisible(hasWarnings() && !m_question->isVisible());
}

void ManifestPanel::hideEvent(QHideEvent* event) {
    GearPart::hideEvent(event);
    m_warnings->hide();
}

bool ManifestPanel::hasWarnings() const {
    return !m_warnings->text().isEmpty();
}

void ManifestPanel::askFirst() {
    if (officer().empty()) return;
    showFields(false);
    m_question->ask(m_questionText);
}

void ManifestPanel::keep() {
    showFields(true);
    m_takeAway->setFocus(Qt::OtherFocusReason);
    m_question->close();
}

void ManifestPanel::say(const QString& sentence, bool toLookAt) {
    emit said(sentence, toLookAt);
}

void ManifestPanel::run(Job job, const QString& sentence) {
    write(std::move(job), [this, sentence](core::Done) { emit changed(sentence); });
}

} // namespace app
