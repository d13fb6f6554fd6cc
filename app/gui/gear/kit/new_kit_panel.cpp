#include "app/gui/gear/kit/new_kit_panel.h"

#include "app/gui/camera/held_field.h"
#include "app/gui/gear/kit/kit_words.h"
#include "app/gui/gear/kit/tag_delivery.h"
#include "app/gui/gear/register/written_cell.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_kit.h"
#include "core/club/club_register.h"
#include "core/tag/maker_label.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

constexpr const char* ofPlace = "place:";

} // namespace

NewKitPanel::NewKitPanel(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "newKitPanel", parent)
    , m_kitType(new ChoiceBox(this))
    , m_size(new ChoiceBox(this))
    , m_home(new ChoiceBox(this))
    , m_person(new ChoiceBox(this))
    , m_maker(wordsEdit(this, "newMakerEdit"))
    , m_note(wordsEdit(this, "newNoteEdit"))
    , m_count(new QSpinBox(this))
    , m_label(wordsEdit(this, "newLabelEdit"))
    , m_lines(new RowListModel(this))
    , m_list(new RowList(*m_lines, this))
    , m_register(wordsButton(this, {}, "registerKitButton", true))
    , m_tags(wordsButton(this, tr("Their tags as PDF…"), "newTagsButton")) {
    build();
    connect(m_kitType, &QComboBox::currentIndexChanged, this, [this] {
        showSizes();
        adapt();
    });
    connect(m_count, &QSpinBox::valueChanged, this, &NewKitPanel::adapt);
    askForCode(*m_label);
    connect(m_label, &QLineEdit::returnPressed, this, [this] {
        addLabel(m_label->text());
        m_label->clear();
    });
    connect(m_register, &QPushButton::clicked, this, &NewKitPanel::registerIt);
    connect(m_tags, &QPushButton::clicked, this, [this] {
        saveTags(tools(), *this, m_registered,
                 [this](const core::Result<QString>& saved) { sayDone(saved); });
    });
    adapt();
}

QLineEdit* NewKitPanel::addDay(QGridLayout& grid, const QString& word, const char* name) {
    QLineEdit* day = wordsEdit(this, name);
    day->setPlaceholderText(tr("2026-03-14, 2026-03 or 2026"));
    addField(grid, word, day);
    return day;
}

QWidget* NewKitPanel::buildForm() {
    auto* form = new QWidget;
    auto* grid = new QGridLayout(form);
    grid->setContentsMargins(0, 0, spaceUnit, 0);
    grid->setVerticalSpacing(spaceUnit / 2);
    grid->setHorizontalSpacing(2 * spaceUnit);
    grid->setColumnStretch(1, 1);
    addField(*grid, tr("Kit type"), m_kitType);
    addField(*grid, tr("Size"), m_size);
    addField(*grid, tr("How many"), m_count);
    addField(*grid, tr("Labels"), m_label);
    addField(*grid, tr("Home"), m_home);
    addField(*grid, tr("Whose"), m_person);
    m_made = addDay(*grid, tr("Made"), "newMadeEdit");
    m_firstUse = addDay(*grid, tr("First use"), "newFirstUseEdit");
    m_stamped = addDay(*grid, tr("Stamped"), "newStampedEdit");
    addField(*grid, tr("Maker"), m_maker);
    addField(*grid, tr("Note"), m_note);
    auto* scroll = new QScrollArea(this);
    scroll->setWidget(form);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return scroll;
}

void NewKitPanel::build() {
    m_kitType->setObjectName("newKitTypeBox");
    m_size->setObjectName("newSizeBox");
    m_home->setObjectName("newHomeBox");
    m_person->setObjectName("newPersonBox");
    m_count->setObjectName("newCountBox");
    m_count->setRange(1, 1000);
    m_count->setButtonSymbols(QAbstractSpinBox::NoButtons);
    m_label->setPlaceholderText(tr("or scan makers' labels, one by one"));
    m_list->setObjectName("newLabelList");
    m_list->setAccessibleName(tr("makers' labels scanned, or what was registered"));
    m_tags->setVisible(false);

    auto* heading = wordsLabel(this, "heading", "newKitLabel");
    heading->setText(tr("New kit"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_tags);
    buttons->addStretch(1);
    buttons->addWidget(m_register);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    layout->addWidget(heading);
    layout->addWidget(buildForm(), 3);
    layout->addWidget(m_list, 1);
    layout->addWidget(saidLabel("newKitSaidLabel"));
    layout->addLayout(buttons);
    m_list->setVisible(false);
}

void NewKitPanel::refresh() {
    read(
        [today = today()](core::Club& club) {
            const core::ClubRegister known = club.register_();
            return Read{known.kitTypes(), known.boatsHere(today), known.placesHere(today),
                        known.peopleHere(today)};
        },
        [this](Read read) { take(std::move(read)); });
}

void NewKitPanel::take(Read read) {
    m_read = std::move(read);
    QStringList kitTypes;
    for (const core::KitType& kitType : m_read.kitTypes)
        kitTypes << text(kitType.name);
    fillBox(*m_kitType, tr("which?"), kitTypes);
    QStringList people;
    for (const core::Person& person : m_read.people)
        people << text(person.name);
    fillBox(*m_person, tr("nobody's own"), people);
    const QVariant home = m_home->currentData();
    m_home->clear();
    m_home->addItem(tr("none yet"), QString());
    for (const core::Boat& boat : m_read.boats)
        m_home->addItem(text(boat.name), text(boat.name));
    for (const std::string& place : m_read.places)
        m_home->addItem(text(place), ofPlace + text(place));
    m_home->setCurrentIndex(std::max(0, m_home->findData(home)));
}

void NewKitPanel::showSizes() {
    QStringList sizes;
    bool isPersonal = false;
    for (const core::KitType& kitType : m_read.kitTypes) {
        if (text(kitType.name) != m_kitType->currentData().toString()) continue;
        isPersonal = kitType.personal;
        for (const core::Size& size : kitType.sizes)
            sizes << text(size.name);
    }
    // In the register's own order: sizes do not sort by their letters.
    m_size->clear();
    m_size->addItem(sizes.isEmpty() ? tr("has no sizes") : tr("no size"), QString());
    for (const QString& size : sizes)
        m_size->addItem(size, size);
    m_size->setEnabled(!sizes.isEmpty());
    m_person->setEnabled(isPersonal);
    if (!isPersonal) m_person->setCurrentIndex(0);
}

/// A label that is no maker's is refused at once; what the club has already is found out when it is
/// registered.
void NewKitPanel::addLabel(const QString& asItCame) {
    const std::string scanned = asItCame.trimmed().toStdString();
    if (scanned.empty()) return;
    const auto label = core::parseMakerLabel(scanned, today().year());
    if (!label) return sayError(label.error());
    if (std::find(m_labels.begin(), m_labels.end(), scanned) != m_labels.end())
        return say(tr("That label is in the list already; it counts once."));
    m_labels.push_back(scanned);
    say(tr("Label taken: serial %1.").arg(text(label->serial)));
    showLabels();
    adapt();
}

void NewKitPanel::showLabels() {
    std::vector<ListRow> rows{headingRow("labels", tr("makers' labels"), QString::number(m_labels.size()))};
    for (const std::string& scanned : m_labels) {
        const auto label = core::parseMakerLabel(scanned, today().year());
        QStringList days;
        if (label->made) days << tr("made %1").arg(text(label->made->text()));
        if (label->stamped) days << tr("stamped %1").arg(text(label->stamped->text()));
        rows.push_back(plainRow(text(scanned), Mark::Found, tr("label"),
                                tr("serial %1").arg(text(label->serial)), days.join(tr(", "))));
    }
    m_list->setVisible(true);
    m_lines->setRows(rows);
    m_list->scrollToBottom();
}

void NewKitPanel::adapt() {
    m_count->setEnabled(m_labels.empty());
    const int count = m_labels.empty() ? m_count->value() : static_cast<int>(m_labels.size());
    m_register->setText(counted(count, QT_TRANSLATE_N_NOOP("Words", "Register %n item"),
                                QT_TRANSLATE_N_NOOP("Words", "Register %n items")));
    m_register->setEnabled(m_kitType->currentIndex() > 0);
}

core::NewKit NewKitPanel::kit() const {
    core::NewKit kit;
    kit.kitType = m_kitType->currentData().toString().toStdString();
    kit.size = m_size->currentData().toString().toStdString();
    const QString home = m_home->currentData().toString();
    if (home.startsWith(ofPlace))
        kit.place = home.mid(static_cast<int>(std::char_traits<char>::length(ofPlace))).toStdString();
    else
        kit.boat = home.toStdString();
    kit.person = m_person->currentData().toString().toStdString();
    kit.made = asInSheet(core::SheetId::Items, "made", m_made->text());
    kit.firstUse = asInSheet(core::SheetId::Items, "first_use", m_firstUse->text());
    kit.stamped = asInSheet(core::SheetId::Items, "stamped", m_stamped->text());
    kit.maker = m_maker->text().trimmed().toStdString();
    kit.note = m_note->text().trimmed().toStdString();
    kit.count = m_count->value();
    kit.labels = m_labels;
    return kit;
}

void NewKitPanel::registerIt() {
    const std::string by = officer();
    if (by.empty()) return;
    m_register->setEnabled(false);
    doAct([kit = kit(), by,
           moment = tools().time()](core::Club& club) { return club.kit().registerKit(kit, by, moment); },
          [this](const core::Result<std::vector<core::Item>>& items) {
              adapt();
              if (!items) return sayError(items.error());
              showRegistered(*items);
          });
}

void NewKitPanel::showRegistered(const std::vector<core::Item>& items) {
    m_registered.clear();
    const auto count = static_cast<int>(items.size());
    std::vector<ListRow> rows{
        headingRow("registered", tr("registered, each with its new tag"), QString::number(count))};
    for (const core::Item& item : items) {
        m_registered.push_back(item.tag);
        rows.push_back(
            plainRow(text(item.id), Mark::Found, tr("registered"), kitName(item), {}, item.name()));
    }
    m_labels.clear();
    m_lines->setRows(rows);
    m_list->setVisible(true);
    m_tags->setVisible(true);
    say(counted(
        count,
        QT_TRANSLATE_N_NOOP("Words",
                            "%n item registered. Print its tag and fix it before the item goes to a boat."),
        QT_TRANSLATE_N_NOOP(
            "Words", "%n items registered. Print their tags and fix them before the kit goes to a boat.")));
    m_count->setValue(1);
    adapt();
    emit changed();
}

} // namespace app
