#include "app/gui/gear/manifests/manifests_page.h"

#include "app/gui/club/import_run.h"
#include "app/gui/gear/manifests/manifest_line_panel.h"
#include "app/gui/gear/manifests/manifest_point_panel.h"
#include "app/gui/gear/manifests/manifest_rows.h"
#include "app/gui/gear/manifests/manifest_versions.h"
#include "app/gui/gear/manifests/side_scroll.h"
#include "app/gui/printout/paper_button.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/leave_by_escape.h"
#include "app/gui/widgets/plain_table.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/store_failure.h"
#include "core/club/club_manifests.h"
#include "core/club/club_register.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

// Before the name in the data of the box of owners.
constexpr char ofClass = 'c';
constexpr char ofBoat = 'b';

constexpr int leastOfVersions = 80; ///< one of them

} // namespace

ManifestsPage::ManifestsPage(GearTools given, QWidget* parent)
    : GearPage(std::move(given), "manifestsPage", parent)
    , m_owners(new ChoiceBox(this))
    , m_summary(wordsLabel(this, "heading", "manifestSummaryLabel"))
    , m_showLines(new QRadioButton(tr("lines"), this))
    , m_showPoints(new QRadioButton(tr("points"), this))
    , m_rows(new PlainTableModel(this))
    , m_table(new PlainTable(*m_rows, this))
    , m_add(wordsButton(this, tr("New line…"), "manifestAddButton"))
    , m_export(wordsButton(this, tr("Export…"), "manifestExportButton"))
    , m_import(wordsButton(this, tr("Import…"), "manifestImportButton"))
    , m_versionRows(new RowListModel(this))
    , m_versions(new RowList(*m_versionRows, this))
    , m_about(wordsLabel(this, "remark", "manifestAboutLabel"))
    , m_line(new ManifestLinePanel(tools(), this))
    , m_point(new ManifestPointPanel(tools(), this))
    , m_importRun(new ImportRun(tools().club, this)) {
    build();
    connectParts();
    m_add->hide(); // until it is known whose list it adds to
}

void ManifestsPage::build() {
    m_owners->setObjectName("manifestOwnerBox");
    m_showLines->setObjectName("manifestLinesChoice");
    m_showLines->setChecked(true);
    m_showPoints->setObjectName("manifestPointsChoice");
    m_table->setObjectName("manifestTable");
    m_table->setAccessibleName(tr("what is asked"));
    m_versions->setObjectName("manifestVersionsList");
    m_versions->setAccessibleName(tr("versions of this manifest, newest first"));
    m_versions->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored); // what is left over
    m_versions->setMinimumHeight(leastOfVersions);
    m_about->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_export->setAccessibleName(tr("export the register's sheets"));
    m_import->setAccessibleName(tr("import changed sheets"));
    auto* head = new FlowLayout;
    addWithWord(*head, tr("of"), m_owners);
    m_owners->setAccessibleName(tr("class of boat, or boat"));
    head->addStretch();
    PaperButton* paper = paperButton();
    paper->offerCheckList([this] { return boatOnPaper(); });
    head->addWidget(paper);
    head->addWidget(m_export);
    head->addWidget(m_import);
    auto* body = new QHBoxLayout;
    body->setSpacing(2 * spaceUnit);
    body->addLayout(buildLeft(), 17);
    body->addLayout(buildRight(), 10);
    QVBoxLayout& layout = column(2 * spaceUnit);
    layout.addLayout(head);
    layout.addWidget(m_summary);
    layout.addLayout(body, 1);
    layout.addWidget(m_line->warningsLabel());
    layout.addWidget(saidLabel("manifestSaidLabel"));
}

QLayout* ManifestsPage::buildLeft() {
    auto* choices = new FlowLayout;
    choices->addWidget(m_showLines);
    choices->addWidget(m_showPoints);
    choices->addStretch();
    choices->addWidget(m_add);
    auto* left = new QVBoxLayout;
    left->setSpacing(spaceUnit);
    left->addLayout(choices);
    left->addWidget(m_table, 1);
    return left;
}

QLayout* ManifestsPage::buildRight() {
    auto* heading = wordsLabel(this, "heading", "manifestVersionsLabel");
    heading->setText(tr("Versions"));
    auto* right = new QVBoxLayout;
    right->setSpacing(spaceUnit);
    right->addWidget(heading);
    right->addWidget(m_versions, 1);
    auto* about = new QWidget;
    auto* words = new QVBoxLayout(about);
    words->setContentsMargins(0, 0, 0, 0);
    words->addWidget(m_about);
    words->addStretch(1);
    m_besideAbout = new SideScroll(about, this); // the panels scroll by themselves
    for (QWidget* part : besides())
        right->addWidget(part);
    showBeside(m_besideAbout);
    return right;
}

void ManifestsPage::connectParts() {
    connect(m_owners, &QComboBox::currentIndexChanged, this, [this] {
        m_version.clear();
        say({});
        showNothing(); // nothing of the one before can be changed any more
        refresh();
    });
    connect(m_showLines, &QRadioButton::toggled, this, [this] {
        showTable();
        showSide();
    });
    connect(m_table, &PlainTable::rowChosen, this, &ManifestsPage::showSide);
    connect(m_table, &PlainTable::rowPressed, this, &ManifestsPage::openRow);
    const auto chooseVersion = [this](const QString& stamp) {
        if (m_version == stamp) return;
        m_version = stamp;
        showTable();
        showSide();
    };
    connect(m_versions, &RowList::rowPressed, this, chooseVersion);
    connect(m_versions->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this, chooseVersion] { chooseVersion(m_versions->currentKey()); });
    connect(m_add, &QPushButton::clicked, this, &ManifestsPage::addRow);
    for (QWidget* panel : std::initializer_list<QWidget*>{m_line, m_point})
        leaveByEscape(*panel, [this] {
            showSide();
            m_table->setFocus(Qt::OtherFocusReason);
        });
    connectPanel(m_line);
    connectPanel(m_point);
    connect(m_export, &QPushButton::clicked, this, &ManifestsPage::exportSheets);
    connect(m_import, &QPushButton::clicked, this, &ManifestsPage::importSheets);
    connect(m_importRun, &ImportRun::finished, this, &ManifestsPage::afterChange);
}

void ManifestsPage::connectPanel(ManifestPanel* panel) {
    connect(panel, &ManifestPanel::changed, this, [this](const QString& sentence) {
        m_table->setFocus(Qt::OtherFocusReason); // what was written leaves the keyboard nowhere
        afterChange(sentence);
    });
    connect(panel, &ManifestPanel::said, this, &ManifestsPage::say);
}

void ManifestsPage::afterChange(const QString& sentence) {
    say(sentence);
    m_version.clear();
    refresh();
}

core::ManifestOwner ManifestsPage::owner() const {
    const QString chosen = m_owners->currentData().toString();
    return {chosen.startsWith(ofBoat) ? core::ManifestOwner::Kind::Boat
                                      : core::ManifestOwner::Kind::BoatClass,
            chosen.mid(1).toStdString()};
}

/// The boat that is chosen, of a class the first of its boats.
QString ManifestsPage::boatOnPaper() {
    const core::ManifestOwner chosen = owner();
    if (chosen.kind == core::ManifestOwner::Kind::Boat) return text(chosen.name);
    const auto boats = m_answer ? m_answer->record.boatsOf(chosen.name) : std::vector<std::string>();
    if (boats.empty()) say(tr("No boat is of this class yet: a check list is a boat's."), true);
    return boats.empty() ? QString() : text(boats.front());
}

/// The first class when none is chosen yet; on the club's thread.
core::Result<ManifestsPage::Read> ManifestsPage::readManifest(core::Club& club, core::ManifestOwner owner) {
    auto record = club.manifests().read();
    if (!record) return record.error();
    Read read;
    for (const std::string& name : record->classes())
        read.classes << text(name);
    for (const std::string& name : record->classesWithoutBoat())
        read.withoutBoat << text(name);
    for (const std::string& name : record->boats())
        read.boats << text(name);
    try {
        read.kitTypes = club.register_().kitTypes();
    } catch (const core::StoreFailure& failure) {
        return failure.error;
    }
    const bool isBoat = owner.kind == core::ManifestOwner::Kind::Boat;
    const QStringList classes = read.classes + read.withoutBoat;
    if (!(isBoat ? read.boats : classes).contains(text(owner.name)))
        owner =
            classes.isEmpty()
                ? core::ManifestOwner{core::ManifestOwner::Kind::Boat, read.boats.value(0).toStdString()}
                : core::ManifestOwner{core::ManifestOwner::Kind::BoatClass, classes.front().toStdString()};
    read.answer = answerOf(std::move(*record), std::move(owner));
    return read;
}

void ManifestsPage::refresh() {
    read([owner = owner()](core::Club& club) { return readManifest(club, owner); },
         [this](core::Result<Read> read) {
             if (read)
                 take(std::move(*read));
             else
                 showUnreadable(read.error());
         });
}

/// One error in the place of the manifests: nothing of what could not be read is shown or can be changed.
void ManifestsPage::showUnreadable(const core::Error& error) {
    m_isUnreadable = true;
    showNothing();
    sayError(error);
}

void ManifestsPage::showNothing() {
    m_answer.reset();
    m_about->clear();
    showBeside(m_besideAbout);
    m_add->setVisible(false);
    if (!m_isUnreadable) return;
    m_summary->clear();
    const QSignalBlocker quiet(m_table);
    m_rows->setTable({}, {});
    m_versionRows->setRows({});
}

void ManifestsPage::take(Read read) {
    if (m_isUnreadable) say({});
    m_isUnreadable = false;
    fillOwners(read);
    m_kitTypes = read.kitTypes;
    m_line->setKitTypes(read.kitTypes);
    m_answer = std::move(read.answer);
    m_summary->setText(summaryOf(*m_answer));
    const QString wanted = m_version; // the list forgets its current line
    m_versionRows->setRows(versionLines(*m_answer));
    m_version = wanted;
    m_versions->setCurrentIndex(m_versionRows->index(std::max(0, m_versionRows->indexOfKey(wanted)), 0));
    showTable();
    showSide();
}

void ManifestsPage::fillOwners(const Read& read) {
    const QSignalBlocker quiet(m_owners);
    const QString before = m_owners->currentData().toString();
    m_owners->clear();
    for (const QString& name : read.classes)
        m_owners->addItem(tr("class %1").arg(name), ofClass + name);
    for (const QString& name : read.withoutBoat)
        m_owners->addItem(tr("class %1: no boat has it").arg(name), ofClass + name);
    for (const QString& name : read.boats)
        m_owners->addItem(name, ofBoat + name);
    m_owners->setCurrentIndex(std::max(0, m_owners->findData(before)));
}

const core::ManifestVersion* ManifestsPage::version() const {
    if (!m_answer || m_answer->versions.empty()) return nullptr;
    const auto found =
        std::find_if(m_answer->versions.begin(), m_answer->versions.end(),
                     [&](const core::ManifestVersion& each) { return text(each.stamp) == m_version; });
    return found == m_answer->versions.end() || found + 1 == m_answer->versions.end() ? nullptr : &*found;
}

void ManifestsPage::showTable() {
    if (!m_answer) return;
    const core::ManifestVersion* old = version();
    const bool isLines = m_showLines->isChecked();
    const QString chosen = m_table->chosen();
    std::vector<TableRow> rows;
    if (old) {
        const core::Manifest then = m_answer->record.asOf(m_answer->owner, old->stamp);
        rows = isLines ? lineRows(then, m_answer->now) : pointRows(then, m_answer->now);
    } else {
        rows = isLines ? lineRows(*m_answer) : pointRows(*m_answer);
    }
    const QSignalBlocker quiet(m_table);
    m_rows->setTable(isLines ? lineColumns(old) : pointColumns(old), rows);
    m_table->choose(chosen);
    m_add->setText(isLines ? tr("New line…") : tr("New point…"));
    m_add->setVisible(!old && m_answer->hasBoat);
}

std::array<QWidget*, 3> ManifestsPage::besides() const {
    return {m_besideAbout, m_line, m_point};
}

void ManifestsPage::showBeside(QWidget* shown) {
    for (QWidget* part : besides())
        part->setVisible(part == shown);
}

/// The row that is chosen in the table, in the panel that changes it; `hint` where none is.
template <class Panel, class Asked>
void ManifestsPage::showAsked(Panel& panel, const std::vector<Asked>& rows, const QString& hint) {
    const auto row = std::find_if(rows.begin(), rows.end(),
                                  [&](const Asked& each) { return keyOf(each) == m_table->chosen(); });
    if (row == rows.end()) {
        m_about->setText(hint);
        return;
    }
    if (!panel.isOpenOn(m_answer->owner, *row) || panel.isOfNoBoat() == m_answer->hasBoat)
        panel.edit(m_answer->owner, *row, boatsWithOwn(*m_answer, *row), m_answer->hasBoat);
    showBeside(&panel);
}

/// Beside the table: the line or point chosen, or what there is to know of an earlier version.
void ManifestsPage::showSide() {
    if (!m_answer) return;
    showBeside(m_besideAbout);
    if (const core::ManifestVersion* old = version())
        m_about->setText(aboutVersion(*m_answer, *old, today()) + ' ' +
                         tr("Choose the newest version to change anything."));
    else if (m_showPoints->isChecked())
        showAsked(*m_point, m_answer->now.points,
                  tr("Choose a point to change it. Maker's plate and manual decide about pressures."));
    else
        showAsked(*m_line, m_answer->now.lines,
                  tr("Choose a line to change it, or an earlier version to see what was asked then."));
}

void ManifestsPage::openRow() {
    showSide();
    if (!m_answer || !m_answer->hasBoat) return; // it has no fields
    if (m_line->isVisible()) m_line->setFocusOnNumber();
    if (m_point->isVisible()) m_point->setFocusOnFirst();
}

void ManifestsPage::addRow() {
    if (!m_answer) return;
    if (m_showPoints->isChecked()) {
        showBeside(m_point);
        m_point->beginNew(m_answer->owner);
        return;
    }
    QStringList kitTypes;
    for (const core::KitType& kitType : m_kitTypes)
        kitTypes << text(kitType.name);
    for (const core::AskedLine& line : m_answer->now.lines)
        kitTypes.removeAll(text(line.line.kitType));
    showBeside(m_line);
    m_line->beginNew(m_answer->owner, kitTypes);
}

void ManifestsPage::exportSheets() {
    const QString folder = tools().choosers.exportFolder(this);
    if (folder.isEmpty()) return;
    ask([folder = folder.toStdString()](core::Club& club) { return club.register_().exportCsv(folder, {}); },
        [this, folder](const core::Outcome& done) {
            if (!done) return sayError(done.error());
            say(tr("The register's sheets are in %1. People's measures are left out.").arg(folder));
        });
}

void ManifestsPage::importSheets() {
    const QString folder = tools().choosers.importFolder(this);
    if (!folder.isEmpty()) m_importRun->start(folder, today());
}

} // namespace app
