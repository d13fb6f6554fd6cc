#include "app/gui/gear/setup/fit_out_panel.h"

#include "app/gui/gear/kit/tag_delivery.h"
#include "app/gui/gear/manifests/side_scroll.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/leave_by_escape.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/answers/set_up.h"
#include "core/club/club_kit.h"
#include "core/club/club_register.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

const QString boatPrefix = QStringLiteral("boat:"), placePrefix = QStringLiteral("place:");

std::string nameIn(const QString& home, const QString& kind) {
    return home.startsWith(kind) ? home.mid(kind.size()).toStdString() : std::string();
}

} // namespace

FitOutPanel::FitOutPanel(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "fitOutPanel", parent)
    , m_home(new ChoiceBox(this))
    , m_summary(wordsLabel(this, "heading", "fitOutSummaryLabel"))
    , m_lines(new RowListModel(this))
    , m_list(new RowList(*m_lines, this))
    , m_title(wordsLabel(this, "heading", "fitOutTitleLabel"))
    , m_count(new QSpinBox(this))
    , m_size(new ChoiceBox(this))
    , m_person(new ChoiceBox(this))
    , m_serial(wordsEdit(this, "fitOutSerialEdit"))
    , m_register(wordsButton(this, {}, "fitOutRegisterButton", true))
    , m_tags(wordsButton(this, tr("Their tags as PDF…"), "fitOutTagsButton"))
    , m_back(wordsButton(this, tr("Back to what is to do"), "fitOutBackButton")) {
    build();
    connectParts();
    adapt();
}

void FitOutPanel::build() {
    m_list->setObjectName("fitOutList");
    m_list->setAccessibleName(tr("what is asked, and what is new"));
    m_list->setMinimumWidth(320); // a kit type and its numbers side by side, on a small screen too
    auto* body = new QHBoxLayout;
    body->setSpacing(3 * spaceUnit);
    body->addWidget(m_list, 11);
    body->addWidget(buildForm(), 10);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(spaceUnit);
    layout->addLayout(buildHead());
    layout->addWidget(m_summary);
    layout->addLayout(body, 1);
    layout->addWidget(saidLabel("fitOutSaidLabel"));
    layout->addLayout(buildFoot());
}

QLayout* FitOutPanel::buildHead() {
    m_home->setObjectName("fitOutHomeBox");
    m_home->takeRoom(12);
    auto* head = new FlowLayout;
    addWithWord(*head, tr("Fit out"), m_home);
    head->addStretch();
    head->addWidget(m_back);
    return head;
}

void FitOutPanel::addDay(QGridLayout& grid, const QString& word, const char* name, FitOutDraft::Field field) {
    QLineEdit* day = wordsEdit(this, name);
    m_days.push_back({day, field});
    addField(grid, word, day);
}

QWidget* FitOutPanel::buildForm() {
    m_count->setObjectName("fitOutCountBox");
    m_count->setRange(0, 1000);
    m_count->setButtonSymbols(QAbstractSpinBox::NoButtons);
    m_size->setObjectName("fitOutSizeBox");
    m_size->takeRoom(6);
    m_person->setObjectName("fitOutPersonBox");
    m_person->takeRoom(6);
    auto* form = new QWidget;
    auto* grid = new QGridLayout(form);
    grid->setContentsMargins(0, 0, spaceUnit, 0);
    grid->setVerticalSpacing(spaceUnit / 4); // all of it at 1280 × 800
    grid->setHorizontalSpacing(2 * spaceUnit);
    grid->setColumnStretch(1, 1);
    grid->addWidget(m_title, 0, 0, 1, 2);
    addField(*grid, tr("New ones"), m_count);
    addField(*grid, tr("Size"), m_size);
    addField(*grid, tr("Whose"), m_person);
    addDay(*grid, tr("Made"), "fitOutMadeEdit", &core::NewKit::made);
    addDay(*grid, tr("First use"), "fitOutFirstUseEdit", &core::NewKit::firstUse);
    addDay(*grid, tr("Stamped"), "fitOutStampedEdit", &core::NewKit::stamped);
    addField(*grid, tr("Serial"), m_serial);
    grid->setRowStretch(grid->rowCount(), 1);
    return new SideScroll(form, this);
}

QLayout* FitOutPanel::buildFoot() {
    auto* foot = new FlowLayout;
    foot->addWidget(m_tags);
    foot->addStretch();
    foot->addWidget(m_register);
    return foot;
}

void FitOutPanel::connectParts() {
    connect(m_back, &QPushButton::clicked, this, &FitOutPanel::leaveWanted);
    leaveByEscape(*this, [this] { emit leaveWanted(); });
    connect(m_home, &QComboBox::currentIndexChanged, this, [this] {
        say({});
        m_lines->setRows({}); // nothing is to be written for the home that was shown before
        m_draft = FitOutDraft();
        m_registered.clear(); // "their tags" would be of this home
        showForm();
        adapt();
        refresh();
    });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &FitOutPanel::showForm);
    connect(m_list, &RowList::rowPressed, this, [this] {
        QWidget* first = m_count->isEnabled() ? static_cast<QWidget*>(m_count) : m_days.front().edit;
        first->setFocus(Qt::OtherFocusReason);
    });
    const auto write = [this](auto act) {
        if (m_isFilling || current().isEmpty()) return;
        act();
        changed();
    };
    connect(m_count, &QSpinBox::valueChanged, this, [this, write](int count) {
        write([&] { m_draft.setCount(current(), count); });
        if (!m_isFilling && !current().isEmpty()) showForm(); // one thing has a serial, none has anything
    });
    connect(m_size, &QComboBox::currentIndexChanged, this, [this, write] {
        write([&] {
            m_draft.write(current(), &core::NewKit::size, m_size->currentData().toString().toStdString());
        });
    });
    connect(m_person, &QComboBox::currentIndexChanged, this, [this, write] {
        write([&] {
            m_draft.write(current(), &core::NewKit::person, m_person->currentData().toString().toStdString());
        });
    });
    connect(m_serial, &QLineEdit::textEdited, this, [this, write](const QString& serial) {
        write([&] { m_draft.writeSerial(current(), serial.trimmed().toStdString()); });
    });
    for (const DayEdit& day : m_days)
        connect(day.edit, &QLineEdit::textEdited, this,
                [this, write, field = day.field](const QString& text) {
                    write([&] { m_draft.write(current(), field, text.trimmed().toStdString()); });
                });
    connect(m_register, &QPushButton::clicked, this, &FitOutPanel::registerAll);
    connect(m_tags, &QPushButton::clicked, this, [this] {
        saveTags(tools(), *this, m_registered,
                 [this](const core::Result<QString>& saved) { sayDone(saved); });
    });
}

void FitOutPanel::show(const QString& boat) {
    say({});
    const QSignalBlocker quiet(m_home);
    if (!boat.isEmpty() && m_home->findData(boatPrefix + boat) < 0)
        m_home->addItem(text(boat), boatPrefix + boat);
    if (!boat.isEmpty()) m_home->setCurrentIndex(m_home->findData(boatPrefix + boat));
    refresh();
    m_list->setFocus(Qt::OtherFocusReason);
}

FitOutPanel::Read FitOutPanel::readHome(core::Club& club, std::string boat, std::string place,
                                        core::CalendarDay today) {
    const auto known = club.register_();
    Read read{known.boatsHere(today), known.placesHere(today), known.kitTypes(), known.peopleHere(today), {},
              std::move(boat),        std::move(place)};
    const auto is = [](const std::string& name) {
        return [&name](const auto& each) { return each.name == name; };
    };
    const bool isThere = std::any_of(read.boats.begin(), read.boats.end(), is(read.boat)) ||
                         std::find(read.places.begin(), read.places.end(), read.place) != read.places.end();
    if (!isThere) {
        read.place.clear();
        read.boat = read.boats.empty() ? std::string() : read.boats.front().name;
    }
    if (!read.place.empty()) {
        read.lines = club.kit().fitOutOfSpares();
    } else if (!read.boat.empty()) {
        if (auto boatNow = club.kit().fitOutOf(read.boat)) read.lines = std::move(boatNow->lines);
    }
    return read;
}

void FitOutPanel::refresh() {
    const QString home = m_home->currentData().toString();
    read([boat = nameIn(home, boatPrefix), place = nameIn(home, placePrefix),
          today = today()](core::Club& club) { return readHome(club, boat, place, today); },
         [this](Read read) { take(std::move(read)); });
}

void FitOutPanel::take(Read read) {
    {
        const QSignalBlocker quiet(m_home);
        m_home->clear();
        for (const core::Boat& boat : read.boats)
            m_home->addItem(text(boat.name), boatPrefix + QString::fromStdString(boat.name));
        for (const std::string& place : read.places)
            m_home->addItem(tr("spares at %1").arg(text(place)), placePrefix + QString::fromStdString(place));
        if (m_home->count() == 0) m_home->addItem(tr("no boat yet"), QString());
        const QString home = read.place.empty() ? boatPrefix + QString::fromStdString(read.boat)
                                                : placePrefix + QString::fromStdString(read.place);
        m_home->setCurrentIndex(std::max(0, m_home->findData(home)));
    }
    m_people = std::move(read.people);
    const auto boat = std::find_if(read.boats.begin(), read.boats.end(),
                                   [&](const core::Boat& each) { return each.name == read.boat; });
    m_boatClass = boat == read.boats.end() ? QString() : text(boat->boatClass);
    // What was written is kept as long as it is about the same.
    if (!m_draft.isOf(read.lines, read.boat, read.place))
        m_draft = FitOutDraft(std::move(read.lines), std::move(read.kitTypes), read.boat, read.place);
    showRows();
    if (!m_list->currentIndex().isValid() && m_lines->rowCount() > 0)
        m_list->setCurrentIndex(m_lines->index(0));
    showForm();
}

/// A class that was typed wrong has no list.
QString FitOutPanel::nothingAskedInWords() const {
    if (m_boatClass.isEmpty())
        return tr("This boat has no class, so nothing is asked of it: choose one under Register first.");
    return tr("Nothing is asked of class “%1” yet: write its list under Manifests first, or give the boat "
              "the "
              "right class under Register.")
        .arg(m_boatClass);
}

void FitOutPanel::showRows() {
    m_lines->setRows(m_draft.rows());
    const bool isSpares = m_home->currentData().toString().startsWith(placePrefix);
    if (m_home->currentData().toString().isEmpty())
        m_summary->setText(tr("There is no boat yet: write it first, then fit it out."));
    else if (m_draft.lines().empty())
        m_summary->setText(isSpares ? tr("The club wants no spares yet: write of a kit type how many.")
                                    : nothingAskedInWords());
    else
        m_summary->setText(isSpares ? tr("The spares of the club, wherever they lie")
                                    : tr("What the manifest asks, and what is there"));
    adapt();
}

QString FitOutPanel::current() const {
    return m_list->currentKey();
}

/// No size and no owner where the row is about several kit types, no serial where it is about several things.
void FitOutPanel::showForm() {
    const QScopedValueRollback<bool> filling(m_isFilling, true);
    const QString key = current();
    const int things = key.isEmpty() ? 0 : m_draft.countOf(key);
    m_title->setText(key.isEmpty() ? QString() : m_draft.titleOf(key));
    m_count->setEnabled(!key.isEmpty() && m_draft.hasNumber(key));
    m_count->setValue(things);
    const auto hintOf = [&](FitOutDraft::Field field) {
        return m_draft.differs(key, field) ? tr("not the same for all") : tr("2026-03, say");
    };
    for (const DayEdit& day : m_days) {
        day.edit->setEnabled(things > 0);
        const QString written = key.isEmpty() ? QString() : text(m_draft.read(key, day.field));
        if (day.edit->text().trimmed() != written) day.edit->setText(written);
        if (!key.isEmpty()) day.edit->setPlaceholderText(hintOf(day.field));
    }
    m_serial->setEnabled(things == 1);
    const QString serial = key.isEmpty() ? QString() : text(m_draft.serialOf(key));
    if (m_serial->text().trimmed() != serial) m_serial->setText(serial);
    m_serial->setPlaceholderText(things > 1 ? tr("one by one") : QString());
    showChoices(key.isEmpty() || things == 0 ? nullptr : m_draft.kitTypeOf(key));
}

void FitOutPanel::showChoices(const core::KitType* type) {
    m_size->clear();
    const bool hasSizes = type && !type->sizes.empty();
    m_size->addItem(hasSizes ? tr("no size yet") : tr("has no sizes"), QString());
    if (hasSizes)
        for (const core::Size& size : type->sizes)
            m_size->addItem(text(size.name), QString::fromStdString(size.name));
    m_size->setEnabled(hasSizes);
    m_person->clear();
    m_person->addItem(type && type->personal ? tr("nobody's yet") : tr("nobody's own"), QString());
    if (type && type->personal)
        for (const core::Person& person : m_people)
            m_person->addItem(text(person.name), QString::fromStdString(person.name));
    m_person->setEnabled(type && type->personal);
    if (!type) return;
    const auto choose = [](QComboBox& box, const std::string& name) {
        box.setCurrentIndex(std::max(0, box.findData(QString::fromStdString(name))));
    };
    choose(*m_size, m_draft.read(current(), &core::NewKit::size));
    choose(*m_person, m_draft.read(current(), &core::NewKit::person));
}

/// Rows come and go with the number; the list stays on the same one.
void FitOutPanel::changed() {
    const QString key = current();
    m_lines->setRows(m_draft.rows());
    if (const int row = m_lines->indexOfKey(key); row >= 0 && current() != key)
        m_list->setCurrentIndex(m_lines->index(row));
    adapt();
}

void FitOutPanel::adapt() {
    const int count = m_draft.count();
    m_register->setText(counted(count, QT_TRANSLATE_N_NOOP("Words", "Register %n item"),
                                QT_TRANSLATE_N_NOOP("Words", "Register %n items")));
    m_register->setEnabled(count > 0);
    m_tags->setVisible(!m_registered.empty());
}

void FitOutPanel::registerAll() {
    const std::string by = officer();
    if (by.empty()) return;
    m_register->setEnabled(false);
    doAct([kit = m_draft.kit(), by,
           moment = tools().time()](core::Club& club) { return club.kit().registerAll(kit, by, moment); },
          [this](const core::Result<std::vector<std::vector<core::Item>>>& items) {
              adapt();
              if (!items) return sayError(items.error());
              showRegistered(*items);
          });
}

void FitOutPanel::showRegistered(const std::vector<std::vector<core::Item>>& items) {
    m_registered.clear();
    for (const auto& each : items)
        for (const core::Item& item : each)
            m_registered.push_back(item.tag);
    say(counted(
        static_cast<int>(m_registered.size()),
        QT_TRANSLATE_N_NOOP("Words",
                            "%n item registered. Print its tag and fix it before the item goes to a boat."),
        QT_TRANSLATE_N_NOOP(
            "Words", "%n items registered. Print their tags and fix them before the kit goes to a boat.")));
    m_draft = {}; // a second press registers nothing of it again
    refresh();
    adapt();
}

} // namespace app
