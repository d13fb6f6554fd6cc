#include "app/gui/gear/kit/kit_several_panel.h"

#include "app/gui/gear/kit/kit_words.h"
#include "app/gui/gear/kit/tag_delivery.h"
#include "app/gui/gear/kit/write_off_choice.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/search_box.h"
#include "app/text/cautions.h"
#include "app/text/errors.h"
#include "app/text/outlook_sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club.h"
#include "core/club/club_kit.h"
#include "core/club/club_register.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

constexpr int mostEffectsSaid = 4;

/// The names that all of them have a size of: of several kit types there is none.
const std::string* kitTypeOfAll(const std::vector<core::Item>& items) {
    const bool isOne = std::all_of(items.begin(), items.end(), [&](const core::Item& item) {
        return item.kitType == items.front().kitType;
    });
    return items.empty() || !isOne ? nullptr : &items.front().kitType;
}

} // namespace

KitSeveralPanel::KitSeveralPanel(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "kitSeveralPanel", parent)
    , m_act(new ChoiceBox(this))
    , m_name(new SearchBox(this))
    , m_why(new ChoiceBox(this))
    , m_do(wordsButton(this, {}, "kitSeveralButton", true))
    , m_none(wordsButton(this, tr("Untick all"), "kitUntickButton"))
    , m_warnings(wordsLabel(this, "look", "kitSeveralWarningsLabel"))
    , m_effects(wordsLabel(this, "remark", "kitSeveralEffectsLabel"))
    , m_wait(typingWait(this)) {
    build();
    connectParts();
    hide();
}

void KitSeveralPanel::build() {
    m_act->setObjectName("kitSeveralActBox");
    m_act->setAccessibleName(tr("what to do with the items that are ticked"));
    m_act->addItem(tr("Move to…"), static_cast<int>(Act::Move));
    m_act->addItem(tr("Give to…"), static_cast<int>(Act::Give));
    m_act->addItem(tr("Size…"), static_cast<int>(Act::Size));
    m_act->addItem(tr("Write off…"), static_cast<int>(Act::WriteOff));
    m_act->addItem(tr("Tags…"), static_cast<int>(Act::Tags));
    m_name->setObjectName("kitSeveralNameBox");
    m_name->takeRoom(12);
    m_why->setObjectName("kitSeveralWhyBox");
    m_why->setAccessibleName(tr("why they are written off"));
    offerReasons(*m_why);
    auto* row = new FlowLayout;
    row->addWidget(m_act);
    row->addExpanding(m_name);
    row->addExpanding(m_why);
    row->addWidget(m_none);
    row->addWidget(m_do);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addLayout(row);
    layout->addWidget(m_warnings);
    layout->addWidget(m_effects);
    layout->addWidget(saidLabel("kitSeveralSaidLabel"));
}

void KitSeveralPanel::connectParts() {
    connect(m_act, &QComboBox::currentIndexChanged, this, [this] {
        m_name->setEditText({});
        showNames();
        adapt();
    });
    connect(m_name, &QComboBox::editTextChanged, this, &KitSeveralPanel::adapt);
    connect(m_why, &QComboBox::currentIndexChanged, this, &KitSeveralPanel::adapt);
    connect(m_do, &QPushButton::clicked, this, &KitSeveralPanel::press);
    connect(m_none, &QPushButton::clicked, this, &KitSeveralPanel::untickWanted);
    connect(m_wait, &QTimer::timeout, this, &KitSeveralPanel::plan);
}

KitSeveralPanel::Names KitSeveralPanel::readNames(core::Club& club, const std::vector<core::Item>& items,
                                                  core::CalendarDay today) {
    Names names;
    for (const core::Boat& boat : club.register_().boatsHere(today)) {
        names.boats.insert(boat.name);
        names.homes << text(boat.name);
    }
    for (const std::string& place : club.register_().placesHere(today)) {
        names.places.insert(place);
        if (!names.boats.contains(place)) names.homes << text(place);
    }
    for (const core::Person& person : club.register_().peopleHere(today))
        names.people << text(person.name);
    for (const core::KitType& kitType : club.register_().kitTypes()) {
        QStringList sizes;
        for (const core::Size& size : kitType.sizes)
            sizes << text(size.name);
        names.sizes.emplace_back(kitType.name, sizes);
    }
    for (const core::Item& item : items)
        if (auto row = club.register_().row(core::SheetId::Items, {item.id}))
            names.rows[item.id] = std::move(*row);
    return names;
}

void KitSeveralPanel::setItems(std::vector<core::Item> items) {
    m_items = std::move(items);
    setVisible(!m_items.empty());
    if (!m_items.empty()) look();
    say({});
    adapt();
}

/// Names, and the rows as they are: what another changes from now on is not written over.
void KitSeveralPanel::look() {
    read([items = m_items, today = today()](core::Club& club) { return readNames(club, items, today); },
         [this](Names names) {
             m_names = std::move(names);
             showNames();
         });
}

KitSeveralPanel::Act KitSeveralPanel::act() const {
    return static_cast<Act>(m_act->currentData().toInt());
}

void KitSeveralPanel::showNames() {
    const bool isNamed = act() == Act::Move || act() == Act::Give || act() == Act::Size;
    m_name->setVisible(isNamed);
    m_why->setVisible(act() == Act::WriteOff);
    QStringList names = act() == Act::Move ? m_names.homes : m_names.people;
    if (act() == Act::Size) {
        names.clear();
        const std::string* kitType = kitTypeOfAll(m_items);
        for (const auto& [type, sizes] : m_names.sizes)
            if (kitType && *kitType == type) names = sizes;
    }
    m_name->setNames(names);
    m_name->setAccessibleName(act() == Act::Move   ? tr("the boat or place that they are moved to")
                              : act() == Act::Give ? tr("whose they are from now on; empty: nobody's")
                                                   : tr("their size"));
    m_name->lineEdit()->setPlaceholderText(act() == Act::Move   ? tr("boat or place")
                                           : act() == Act::Give ? tr("person; empty: nobody's")
                                                                : tr("size"));
}

QString KitSeveralPanel::doesInWords() const {
    const int n = static_cast<int>(m_items.size());
    switch (act()) {
    case Act::Move:
        return counted(n, QT_TRANSLATE_N_NOOP("Words", "Move %n item"),
                       QT_TRANSLATE_N_NOOP("Words", "Move %n items"));
    case Act::Give:
        return counted(n, QT_TRANSLATE_N_NOOP("Words", "Give %n item"),
                       QT_TRANSLATE_N_NOOP("Words", "Give %n items"));
    case Act::Size:
        return counted(n, QT_TRANSLATE_N_NOOP("Words", "Set the size of %n item"),
                       QT_TRANSLATE_N_NOOP("Words", "Set the size of %n items"));
    case Act::WriteOff:
        if (m_second.isAsked())
            return counted(n, QT_TRANSLATE_N_NOOP("Words", "Yes, write off %n item"),
                           QT_TRANSLATE_N_NOOP("Words", "Yes, write off %n items"));
        return counted(n, QT_TRANSLATE_N_NOOP("Words", "Write off %n item"),
                       QT_TRANSLATE_N_NOOP("Words", "Write off %n items"));
    case Act::Tags:
        break;
    }
    return counted(n, QT_TRANSLATE_N_NOOP("Words", "Save the tag of %n item"),
                   QT_TRANSLATE_N_NOOP("Words", "Save the tags of %n items"));
}

void KitSeveralPanel::adapt() {
    m_second.clear();
    m_do->setText(doesInWords());
    const QString typed = m_name->currentText().trimmed();
    const bool isReady = act() == Act::WriteOff                     ? m_why->currentIndex() > 0
                         : act() == Act::Move || act() == Act::Size ? !typed.isEmpty()
                                                                    : true;
    m_do->setEnabled(isReady && !m_items.empty());
    m_warnings->hide();
    m_effects->hide();
    ++m_question;
    if (m_do->isEnabled() && act() != Act::Tags && act() != Act::WriteOff)
        m_wait->start();
    else
        m_wait->stop();
}

core::CellTexts KitSeveralPanel::cells() const {
    const std::string typed = m_name->currentText().trimmed().toStdString();
    if (act() == Act::Give) return {{"person", typed}};
    if (act() == Act::Size) return {{"size", typed}};
    const auto isIt = [&](const std::string& name) { return core::foldName(name) == core::foldName(typed); };
    const bool isBoat = std::any_of(m_names.boats.begin(), m_names.boats.end(), isIt);
    return isBoat ? core::CellTexts{{"boat", typed}, {"place", {}}}
                  : core::CellTexts{{"boat", {}}, {"place", typed}};
}

core::RegisterEdit KitSeveralPanel::edit() const {
    core::RegisterEdit edit{core::SheetId::Items, {}};
    for (const core::Item& item : m_items) {
        const auto seen = m_names.rows.find(item.id);
        edit.rows.push_back({{{"code", item.id}},
                             cells(),
                             seen == m_names.rows.end() ? std::nullopt : std::optional(seen->second)});
    }
    return edit;
}

void KitSeveralPanel::plan() {
    ask([edit = edit(),
         moment = tools().time()](core::Club& club) { return club.register_().plan(edit, moment); },
        [this, question = m_question](const core::Result<core::EditPlan>& plan) {
            if (question != m_question || !plan) return;
            m_warnings->setText(warningsInLines(plan->warnings, mostEffectsSaid));
            m_effects->setText(effectsInLines(plan->effects, today(), mostEffectsSaid));
            for (QLabel* label : {m_warnings, m_effects})
                label->setVisible(!label->text().isEmpty());
        });
}

void KitSeveralPanel::press() {
    if (act() == Act::WriteOff) return writeOff();
    if (act() != Act::Tags) return writeRows();
    std::vector<std::string> codes;
    for (const core::Item& item : m_items)
        codes.push_back(item.id);
    saveTags(tools(), *this, codes, [this](const core::Result<QString>& saved) { sayDone(saved); });
}

void KitSeveralPanel::writeRows() {
    const std::string by = officer();
    if (by.empty()) return;
    doAct([edit = edit(), by,
           moment = tools().time()](core::Club& club) { return club.register_().write(edit, by, moment); },
          [this](const core::Result<core::EditPlan>& done) {
              if (done) return takeWritten(*done);
              sayError(done.error());
              look(); // it may be of something that was changed meanwhile
          });
}

/// The first that is refused, by its tag: none of them was written.
void KitSeveralPanel::takeWritten(const core::EditPlan& done) {
    if (!done.rejected.empty()) {
        const core::RejectedRow& first = done.rejected.front();
        const auto at = static_cast<std::size_t>(std::max(1, first.row) - 1);
        const core::Item& item = m_items[std::min(at, m_items.size() - 1)];
        say(tr("Nothing was changed. %1 %2: %3.")
                .arg(kitName(item), codeInWords(item.tag), rejectionInWords(first.reason)),
            true);
        return;
    }
    const int n = static_cast<int>(m_items.size());
    emit changed(counted(n, QT_TRANSLATE_N_NOOP("Words", "%n item is changed."),
                         QT_TRANSLATE_N_NOOP("Words", "%n items are changed.")));
}

void KitSeveralPanel::writeOff() {
    if (!m_second.isAsked()) {
        if (officer().empty()) return;
        m_second.press();
        m_do->setText(doesInWords());
        say(tr("Write them off as %1? They count nowhere from then on.").arg(m_why->currentText()) + ' ' +
                writeOffCaution(),
            true);
        return;
    }
    if (!m_second.press()) return; // the second half of a double click
    std::vector<std::string> codes;
    for (const core::Item& item : m_items)
        codes.push_back(item.id);
    write([codes, why = m_why->currentData().toString().toStdString()](
              core::Club& club, const std::string& by,
              core::Moment moment) { return club.kit().writeOffAll(codes, why, by, moment); },
          [this](core::Done) {
              emit changed(tr("Written off. Take them out of the boats and destroy their tags; their history "
                              "stays."));
          });
}

} // namespace app
