#include "app/desk/gear/manifests/manifests_page.h"

#include "app/common/text.h"
#include "app/common/words.h"
#include "app/desk/check/check_list_view.h"
#include "app/desk/club/club_thread.h"
#include "app/desk/club/import_run.h"
#include "app/desk/gear/manifests/manifest_line_panel.h"
#include "app/desk/gear/office/said_label.h"
#include "app/desk/gear/shared/plain_list_model.h"
#include "app/desk/gear/shared/words_label.h"
#include "app/desk/look/choice_box.h"
#include "app/desk/look/type_scale.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

// Before the name in the data of the box of owners.
constexpr char ofClass = 'c';
constexpr char ofBoat = 'b';

} // namespace

ManifestsPage::ManifestsPage(GearTools tools, QWidget* parent)
    : QWidget(parent)
    , m_tools(std::move(tools))
    , m_owners(new ChoiceBox(this))
    , m_summary(wordsLabel(this, "heading", "manifestSummaryLabel"))
    , m_showLines(new QRadioButton(tr("lines"), this))
    , m_showPoints(new QRadioButton(tr("points"), this))
    , m_rows(new PlainTableModel(this))
    , m_table(new PlainTable(*m_rows, this))
    , m_add(wordsButton(this, tr("New line…"), "manifestAddButton"))
    , m_export(wordsButton(this, tr("Export…"), "manifestExportButton"))
    , m_import(wordsButton(this, tr("Import…"), "manifestImportButton"))
    , m_versionRows(new PlainListModel(this))
    , m_versions(new CheckListView(*m_versionRows, this))
    , m_side(new QStackedWidget(this))
    , m_about(wordsLabel(this, "remark", "manifestAboutLabel"))
    , m_line(new ManifestLinePanel(m_tools, this))
    , m_said(new SaidLabel("manifestSaidLabel", this))
    , m_importRun(new ImportRun(m_tools.club, this)) {
    setObjectName("manifestsPage");
    build();
    connectParts();
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
    m_about->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_export->setAccessibleName(tr("export the register's sheets"));
    m_import->setAccessibleName(tr("import changed sheets"));
    auto* head = new QHBoxLayout;
    head->setSpacing(spaceUnit);
    addWithWord(*head, tr("of"), m_owners);
    m_owners->setAccessibleName(tr("class of boat, or boat"));
    head->addWidget(m_summary, 1);
    head->addWidget(m_export);
    head->addWidget(m_import);
    auto* body = new QHBoxLayout;
    body->setSpacing(4 * spaceUnit);
    body->addLayout(buildLeft(), 15);
    body->addLayout(buildRight(), 10);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(3 * spaceUnit, 2 * spaceUnit, 3 * spaceUnit, 2 * spaceUnit);
    layout->setSpacing(spaceUnit);
    layout->addLayout(head);
    layout->addLayout(body, 1);
    layout->addWidget(m_said);
}

QLayout* ManifestsPage::buildLeft() {
    auto* choices = new QHBoxLayout;
    choices->setSpacing(2 * spaceUnit);
    choices->addWidget(m_showLines);
    choices->addWidget(m_showPoints);
    choices->addStretch(1);
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
    for (QWidget* part : std::initializer_list<QWidget*>{m_about, m_line})
        m_side->addWidget(part);
    auto* right = new QVBoxLayout;
    right->setSpacing(spaceUnit);
    right->addWidget(heading);
    right->addWidget(m_versions, 1);
    right->addWidget(m_side, 1);
    return right;
}

void ManifestsPage::connectParts() {
    connect(m_owners, &QComboBox::currentIndexChanged, this, [this] {
        m_version.clear();
        m_said->say({});
        m_answer.reset(); // nothing of the one before can be changed any more
        m_about->clear();
        m_side->setCurrentWidget(m_about);
        m_add->setVisible(false);
        refresh();
    });
    connect(m_showLines, &QRadioButton::toggled, this, [this] {
        showTable();
        showSide();
    });
    connect(m_table, &PlainTable::rowChosen, this, &ManifestsPage::showSide);
    connect(m_table, &PlainTable::rowPressed, this, &ManifestsPage::openLine);
    const auto chooseVersion = [this](const QString& stamp) {
        if (m_version == stamp) return;
        m_version = stamp;
        showTable();
        showSide();
    };
    connect(m_versions, &CheckListView::kitPressed, this, chooseVersion);
    connect(m_versions->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this, chooseVersion] { chooseVersion(m_versions->currentCode()); });
    connect(m_add, &QPushButton::clicked, this, &ManifestsPage::addLine);
    connect(m_line, &ManifestLinePanel::changed, this, [this](const QString& sentence) {
        m_said->say(sentence);
        m_version.clear();
        refresh();
    });
    connect(m_line, &ManifestLinePanel::refused, m_said, &SaidLabel::sayError);
    connect(m_line, &ManifestLinePanel::officerWanted, this,
            [this] { m_said->say(tr("Say who you are first: choose your name under “At work”."), true); });
    connect(m_export, &QPushButton::clicked, this, &ManifestsPage::exportSheets);
    connect(m_import, &QPushButton::clicked, this, &ManifestsPage::importSheets);
    connect(m_importRun, &ImportRun::finished, this, [this](const QString& sentence) {
        m_said->say(sentence);
        m_version.clear();
        refresh();
    });
}

void ManifestsPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

core::ManifestOwner ManifestsPage::owner() const {
    const QString chosen = m_owners->currentData().toString();
    return {chosen.startsWith(ofBoat) ? core::ManifestOwner::Kind::Boat
                                      : core::ManifestOwner::Kind::BoatClass,
            chosen.mid(1).toStdString()};
}

/// The first class when none is chosen yet; on the club's thread.
ManifestsPage::Read ManifestsPage::read(core::Club& club, core::ManifestOwner owner) {
    Read read;
    core::ManifestRecord record = club.manifests().value();
    for (const std::string& name : record.classes())
        read.classes << text(name);
    for (const core::Boat& boat : club.boats())
        read.boats << text(boat.boat);
    for (const core::KitType& kitType : club.kitTypes())
        read.kitTypes << text(kitType.kitType);
    const bool isBoat = owner.kind == core::ManifestOwner::Kind::Boat;
    if (!(isBoat ? read.boats : read.classes).contains(text(owner.name)))
        owner = read.classes.isEmpty()
                    ? core::ManifestOwner{core::ManifestOwner::Kind::Boat, read.boats.value(0).toStdString()}
                    : core::ManifestOwner{core::ManifestOwner::Kind::BoatClass,
                                          read.classes.front().toStdString()};
    read.answer = answerOf(std::move(record), std::move(owner));
    return read;
}

void ManifestsPage::refresh() {
    m_tools.club.ask(
        this, [owner = owner()](core::Club& club) { return read(club, owner); },
        [this](Read read) { take(std::move(read)); });
}

void ManifestsPage::take(Read read) {
    fillOwners(read);
    if (read.answer.owner != owner()) return; // another one was chosen meanwhile
    m_kitTypes = read.kitTypes;
    m_answer = std::move(read.answer);
    m_summary->setText(summaryOf(*m_answer));
    const QString wanted = m_version; // the list forgets its current line
    m_versionRows->setRows(versionLines(*m_answer));
    m_version = wanted;
    m_versions->setCurrentIndex(m_versionRows->index(std::max(0, m_versionRows->indexOfKey(wanted)), 0));
    showTable();
    showSide();
    emit shown();
}

void ManifestsPage::fillOwners(const Read& read) {
    const QSignalBlocker quiet(m_owners);
    const QString before = m_owners->currentData().toString();
    m_owners->clear();
    for (const QString& name : read.classes)
        m_owners->addItem(tr("class %1").arg(name), ofClass + name);
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
    m_add->setVisible(isLines && !old);
}

/// Beside the table: the line chosen, or what there is to know of an earlier version or of points.
void ManifestsPage::showSide() {
    if (!m_answer) return;
    m_side->setCurrentWidget(m_about);
    if (const core::ManifestVersion* old = version()) {
        m_about->setText(aboutVersion(*m_answer, *old, m_tools.time().today) + ' ' +
                         tr("Choose the newest version to change a line."));
        return;
    }
    if (m_showPoints->isChecked()) {
        m_about->setText(tr("Points are changed in the register's sheets: export them, change points.csv, "
                            "import the folder. Maker's plate and manual decide about pressures."));
        return;
    }
    const auto& lines = m_answer->now.lines;
    const auto line = std::find_if(lines.begin(), lines.end(), [&](const core::AskedLine& each) {
        return text(each.line.kitType) == m_table->chosen();
    });
    if (line == lines.end()) {
        m_about->setText(tr("Choose a line to change it, or an earlier version to see what was asked then."));
        return;
    }
    if (!m_line->isOpenOn(m_answer->owner, line->line)) m_line->edit(m_answer->owner, *line);
    m_side->setCurrentWidget(m_line);
}

void ManifestsPage::openLine() {
    showSide();
    if (m_side->currentWidget() == m_line) m_line->setFocusOnNumber();
}

void ManifestsPage::addLine() {
    if (!m_answer) return;
    QStringList kitTypes = m_kitTypes;
    for (const core::AskedLine& line : m_answer->now.lines)
        kitTypes.removeAll(text(line.line.kitType));
    m_side->setCurrentWidget(m_line);
    m_line->beginNew(m_answer->owner, kitTypes);
}

void ManifestsPage::exportSheets() {
    const QString folder = m_tools.choosers.exportFolder(this);
    if (folder.isEmpty()) return;
    m_tools.club.ask(
        this, [folder = folder.toStdString()](core::Club& club) { return club.exportRegister(folder, {}); },
        [this, folder](const core::Outcome& done) {
            if (!done) return m_said->sayError(done.error());
            m_said->say(tr("The register's sheets are in %1. People's measures are left out.").arg(folder));
        });
}

void ManifestsPage::importSheets() {
    const QString folder = m_tools.choosers.importFolder(this);
    if (!folder.isEmpty()) m_importRun->start(folder, m_tools.time().today);
}

} // namespace app
