#include "app/gui/gear/manifests/manifest_point_panel.h"

#include "app/gui/gear/manifests/manifest_words.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/plain_text.h"
#include "core/club/club_manifests.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpressionValidator>
#include <QVBoxLayout>

namespace app {
namespace {

using core::PointKind;

constexpr int narrowest = 72; ///< for three digits

/// What was typed; the value it had, when nothing else was typed.
std::optional<double> limitOf(const QLineEdit& edit, const std::optional<double>& before) {
    const QString typed = edit.text().trimmed();
    if (typed.isEmpty()) return std::nullopt;
    if (before && typed == numberInWords(*before)) return before;
    return QString(typed).replace(',', '.').toDouble();
}

void showLimit(QLineEdit& edit, const std::optional<double>& value) {
    edit.setText(value ? numberInWords(*value) : QString());
}

QLineEdit* narrowEdit(QWidget* parent, const char* name, const QString& what) {
    QLineEdit* edit = wordsEdit(parent, name, what);
    // As wide as there is room: what it holds is short, and the table beside it is not.
    edit->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    edit->setMinimumWidth(narrowest);
    return edit;
}

QHBoxLayout* rowOfFields(QWidget* parent = nullptr) {
    auto* row = new QHBoxLayout(parent);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(spaceUnit);
    return row;
}

} // namespace

ManifestPointPanel::ManifestPointPanel(GearTools tools, QWidget* parent)
    : ManifestPanel(std::move(tools), "manifestPoint", tr("Remove point"), parent)
    , m_nameRow(new QWidget(this))
    , m_name(narrowEdit(m_nameRow, "manifestPointNameEdit", tr("name of the point")))
    , m_phase(new ChoiceBox(m_nameRow))
    , m_kind(new ChoiceBox(this))
    , m_required(new QCheckBox(tr("required"), this))
    , m_limits(new QWidget(this))
    , m_low(narrowEdit(m_limits, "manifestPointLowEdit", tr("at least")))
    , m_high(narrowEdit(m_limits, "manifestPointHighEdit", tr("at most")))
    , m_unit(narrowEdit(m_limits, "manifestPointUnitEdit", tr("unit of the measure")))
    , m_seconds(wordsLabel(m_limits, "quiet", "manifestPointSecondsLabel"))
    , m_caution(wordsLabel(this, "footnote", "manifestPointCautionLabel"))
    , m_note(narrowEdit(this, "manifestPointNoteEdit", tr("note of the point"))) {
    build();
    connectParts();
}

void ManifestPointPanel::build() {
    m_name->setPlaceholderText(tr("which point?"));
    m_note->setPlaceholderText(tr("note"));
    m_phase->setObjectName("manifestPointPhaseBox");
    m_phase->setAccessibleName(tr("in which check"));
    for (const char* phase : {"launch", "return"})
        m_phase->addItem(phaseInWords(phase), QString::fromLatin1(phase));
    m_kind->setObjectName("manifestPointKindBox");
    m_kind->setAccessibleName(tr("how it is checked"));
    for (const PointKind kind : {PointKind::Look, PointKind::Measure, PointKind::Timed})
        m_kind->addItem(kindInWords(kind), static_cast<int>(kind));
    m_required->setObjectName("manifestPointRequiredCheck");
    auto* name = rowOfFields(m_nameRow);
    name->addWidget(m_name, 1);
    name->addWidget(m_phase);
    auto* kind = rowOfFields();
    kind->addWidget(m_kind);
    kind->addWidget(m_required);
    kind->addStretch(1);
    m_limits->setLayout(buildLimits());
    fields()->addWidget(m_nameRow);
    fields()->addLayout(kind);
    m_caution->setText(tr("Maker's plate and manual decide."));
    fields()->addWidget(m_limits);
    fields()->addWidget(m_caution);
    fields()->addWidget(m_note);
    addButtons();
}

QLayout* ManifestPointPanel::buildLimits() {
    m_seconds->setText(tr("s"));
    m_unit->setPlaceholderText(tr("unit"));
    auto* number = new QRegularExpressionValidator(QRegularExpression("-?[0-9]{1,9}([.,][0-9]{1,6})?"), this);
    auto* row = rowOfFields();
    for (QLineEdit* edit : {m_low, m_high}) {
        edit->setValidator(number);
        auto* word = wordsLabel(m_limits, "quiet", "");
        word->setWordWrap(false);
        word->setText(edit == m_low ? tr("from") : tr("to"));
        word->setBuddy(edit);
        row->addWidget(word);
        row->addWidget(edit, 1);
    }
    row->addWidget(m_unit, 1);
    row->addWidget(m_seconds);
    return row;
}

void ManifestPointPanel::connectParts() {
    for (QLineEdit* edit : {m_name, m_low, m_high, m_unit, m_note})
        connect(edit, &QLineEdit::textChanged, this, &ManifestPointPanel::adapt);
    for (ChoiceBox* box : {m_phase, m_kind})
        connect(box, &QComboBox::currentIndexChanged, this, &ManifestPointPanel::adapt);
    connect(m_required, &QCheckBox::toggled, this, &ManifestPointPanel::adapt);
}

QString ManifestPointPanel::aboutOf(const core::AskedPoint& asked, const QString& boat) {
    if (asked.isOwn) return withCapital(differenceOf(asked)) + '.';
    return tr("What you write is %1's own and stays when the class changes.").arg(boat);
}

void ManifestPointPanel::edit(const core::ManifestOwner& owner, const core::AskedPoint& asked,
                              const QStringList& stillAskedOf, bool hasBoat) {
    m_point = {asked.phase, asked.point};
    m_isOwn = asked.isOwn;
    const bool isBoat = owner.kind == core::ManifestOwner::Kind::Boat;
    const bool isOfClass = isBoat && (!asked.isOwn || asked.ofClass); // its name and check are the class's
    const QString point = text(asked.point.name), name = text(owner.name);
    Shown shown;
    shown.isOfNoBoat = !hasBoat;
    if (!hasBoat) shown.about = aboutNoBoat();
    // What has its name in a field needs it in no heading.
    if (!hasBoat)
        shown.heading = tr("%1, class %2").arg(withCapital(point), name);
    else if (isOfClass)
        shown.heading = tr("%1, %2").arg(withCapital(point), name);
    else
        shown.heading = isBoat ? tr("A point of %1").arg(name) : tr("A point of class %1").arg(name);
    if (isBoat) shown.about = aboutOf(asked, name);
    shown.mayBeAsClass = asked.isOwn && asked.ofClass;
    if (!isOfClass) {
        shown.question = questionOf(point, owner, hasBoat);
        if (!stillAskedOf.isEmpty())
            shown.question += ' ' + tr("Still asked by a point of its own: %1.").arg(listed(stillAskedOf));
    }
    show(owner, shown);
    m_nameRow->setVisible(!isOfClass);
    fill();
}

void ManifestPointPanel::beginNew(const core::ManifestOwner& owner) {
    m_point = {"launch", {}};
    m_isOwn = false;
    Shown shown{.isNew = true};
    shown.heading = owner.kind == core::ManifestOwner::Kind::Boat
                        ? tr("A new point, %1's own").arg(text(owner.name))
                        : tr("A new point of class %1").arg(text(owner.name));
    show(owner, shown);
    m_nameRow->show();
    fill();
    if (isVisible()) m_name->setFocus(Qt::OtherFocusReason);
}

void ManifestPointPanel::fill() {
    const core::BoatPoint& point = m_point.point;
    m_name->setText(text(point.name));
    m_name->setCursorPosition(0); // a long one is read from its beginning
    m_phase->setCurrentIndex(m_phase->findData(text(m_point.phase)));
    m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(point.kind)));
    m_required->setChecked(point.required);
    showLimit(*m_low, point.limits.low);
    showLimit(*m_high, point.limits.high);
    m_unit->setText(text(point.unit));
    m_note->setText(text(point.note));
    m_note->setCursorPosition(0);
    adapt();
}

bool ManifestPointPanel::isOpenOn(const core::ManifestOwner& wantedOwner,
                                  const core::AskedPoint& point) const {
    return !isNew() && owner() == wantedOwner && m_point == core::PhasePoint{point.phase, point.point} &&
           m_isOwn == point.isOwn;
}

void ManifestPointPanel::setFocusOnFirst() {
    QWidget* first = m_limits->isVisible() ? static_cast<QWidget*>(m_low) : m_kind;
    first->setFocus(Qt::OtherFocusReason);
    m_low->selectAll();
}

PointKind ManifestPointPanel::kind() const {
    return static_cast<PointKind>(m_kind->currentData().toInt());
}

bool ManifestPointPanel::isReadable() const {
    if (kind() == PointKind::Look) return true;
    return (m_low->text().isEmpty() || m_low->hasAcceptableInput()) &&
           (m_high->text().isEmpty() || m_high->hasAcceptableInput());
}

core::PhasePoint ManifestPointPanel::wanted() const {
    core::PhasePoint point{m_phase->currentData().toString().toStdString(), {}};
    if (kind() == m_point.point.kind)
        point.point = m_point.point; // with what this kind does not show
    else if (kind() == PointKind::Timed)
        point.point.unit = std::string{"s"};
    // The register knows a point by its name, whatever the capitals.
    const std::string name = m_name->text().trimmed().toStdString();
    const bool isSame = !isNew() && core::foldName(name) == core::foldName(m_point.point.name);
    point.point.name = isSame ? m_point.point.name : name;
    point.point.kind = kind();
    if (kind() == PointKind::Measure) point.point.unit = m_unit->text().trimmed().toStdString();
    if (kind() != PointKind::Look)
        point.point.limits = {limitOf(*m_low, m_point.point.limits.low),
                              limitOf(*m_high, m_point.point.limits.high)};
    point.point.required = m_required->isChecked();
    point.point.note = m_note->text().trimmed().toStdString();
    return point;
}

void ManifestPointPanel::adapt() {
    m_limits->setVisible(kind() != PointKind::Look);
    m_unit->setVisible(kind() == PointKind::Measure);
    m_caution->setVisible(kind() == PointKind::Measure);
    m_seconds->setVisible(kind() == PointKind::Timed);
    const core::PhasePoint point = wanted();
    setWritable(isReadable() && !point.point.name.empty() && (isNew() || !(point == m_point)));
}

void ManifestPointPanel::writeRow() {
    const core::PhasePoint point = wanted();
    run(
        [owner = owner(), point, seen = isNew() ? std::nullopt : std::optional(m_point)](
            core::Club& club, const std::string& by, core::Moment moment) {
            return club.manifests().changePoint(owner, point, by, moment, seen ? &*seen : nullptr);
        },
        tr("%1: %2 asked from now on. Checks signed before keep what they were asked.")
            .arg(withCapital(text(point.point.name)), inWords(point.point)));
}

void ManifestPointPanel::takeAway() {
    run(
        [owner = owner(), seen = m_point](core::Club& club, const std::string& by, core::Moment moment) {
            return club.manifests().dropPoint(owner, seen, by, moment);
        },
        tr("%1 removed. Checks signed before keep what they were asked.")
            .arg(withCapital(text(m_point.point.name))));
}

void ManifestPointPanel::makeAsClass() {
    run(
        [owner = owner(), seen = m_point](core::Club& club, const std::string& by, core::Moment moment) {
            return club.manifests().dropPoint(owner, seen, by, moment);
        },
        tr("%1 is asked of %2 as of its class from now on.")
            .arg(withCapital(text(m_point.point.name)), text(owner().name)));
}

} // namespace app
