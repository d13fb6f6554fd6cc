#include "app/gui/gear/replace/arrival_panel.h"

#include "app/gui/gear/kit/tag_delivery.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_kit.h"
#include "core/club/club_register.h"
#include "core/register/new_kit.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace app {

ArrivalPanel::ArrivalPanel(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "arrivalPanel", parent)
    , m_name(wordsLabel(this, "heading", "arrivalNameLabel"))
    , m_count(new QSpinBox(this))
    , m_place(new ChoiceBox(this))
    , m_made(new QLineEdit(this))
    , m_stamped(new QLineEdit(this))
    , m_registerButton(wordsButton(this, tr("Register it"), "arrivalRegisterButton", true))
    , m_tagsButton(wordsButton(this, tr("Save its tags as PDF…"), "arrivalTagsButton")) {
    build();
    connect(m_registerButton, &QPushButton::clicked, this, &ArrivalPanel::registerKit);
    connect(m_tagsButton, &QPushButton::clicked, this, [this] {
        saveTags(tools(), *this, m_codes, [this](const core::Result<QString>& saved) { sayDone(saved); });
    });
    setKit({}, {}, 1);
}

void ArrivalPanel::build() {
    m_count->setObjectName("arrivalCountBox");
    m_count->setRange(1, 1000);
    m_count->setButtonSymbols(QAbstractSpinBox::NoButtons);
    m_place->setObjectName("arrivalPlaceBox");
    m_made->setObjectName("arrivalMadeEdit");
    m_stamped->setObjectName("arrivalStampedEdit");
    for (QLineEdit* day : {m_made, m_stamped}) {
        day->setPlaceholderText(tr("like 2026-03"));
        day->setFixedWidth(190);
    }
    auto* first = new QHBoxLayout;
    first->setSpacing(spaceUnit);
    addWithWord(*first, tr("how many"), m_count);
    addWithWord(*first, tr("put at"), m_place);
    first->addStretch(1);
    auto* second = new QHBoxLayout;
    second->setSpacing(spaceUnit);
    addWithWord(*second, tr("made"), m_made);
    addWithWord(*second, tr("printed expiry"), m_stamped);
    second->addStretch(1);
    auto* third = new QHBoxLayout;
    third->setSpacing(spaceUnit);
    third->addWidget(m_registerButton);
    third->addWidget(m_tagsButton);
    third->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    layout->addWidget(m_name);
    for (QHBoxLayout* row : {first, second, third})
        layout->addLayout(row);
    layout->addWidget(saidLabel("arrivalSaidLabel"));
    layout->addStretch(1);
}

void ArrivalPanel::setKit(const std::string& kitType, const std::string& size, int count) {
    if (kitType == m_kitType && size == m_size && !kitType.empty()) return;
    m_kitType = kitType;
    m_size = size;
    m_codes.clear();
    m_count->setValue(count);
    const QString name = text(kitType);
    m_name->setText(size.empty() ? tr("New: %1").arg(name) : tr("New: %1, size %2").arg(name, text(size)));
    m_registerButton->setEnabled(!kitType.empty());
    m_tagsButton->setEnabled(false);
    say(QString());
}

void ArrivalPanel::refresh() {
    read([today = today()](core::Club& club) { return club.register_().placesHere(today); },
         [this](const std::vector<std::string>& places) {
             fillBox(*m_place, tr("no place yet"), texts(places));
         });
}

void ArrivalPanel::registerKit() {
    core::NewKit kit;
    kit.kitType = m_kitType;
    kit.size = m_size;
    kit.count = m_count->value();
    kit.place = m_place->currentData().toString().toStdString();
    kit.made = m_made->text().trimmed().toStdString();
    kit.stamped = m_stamped->text().trimmed().toStdString();
    m_registerButton->setEnabled(false);
    using Items = core::Result<std::vector<core::Item>>;
    doAct([kit, by = tools().officer ? tools().officer().toStdString() : std::string(),
           moment = tools().time()](core::Club& club) { return club.kit().registerKit(kit, by, moment); },
          [this](const Items& items) {
              m_registerButton->setEnabled(true);
              if (!items) {
                  sayError(items.error());
                  return;
              }
              m_codes.clear();
              for (const core::Item& item : *items)
                  m_codes.push_back(item.tag);
              m_tagsButton->setEnabled(true);
              say(counted(static_cast<int>(m_codes.size()),
                          QT_TRANSLATE_N_NOOP("Words", "%n item registered, with a tag of its own."),
                          QT_TRANSLATE_N_NOOP("Words", "%n items registered, each with a tag of its own.")));
              emit arrived();
          });
}

} // namespace app
