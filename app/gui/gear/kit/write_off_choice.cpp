#include "app/gui/gear/kit/write_off_choice.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"

#include <QHBoxLayout>
#include <QPushButton>

namespace app {

WriteOffChoice::WriteOffChoice(const QByteArray& prefix, QWidget* parent)
    : QWidget(parent)
    , m_why(new ChoiceBox(this))
    , m_button(wordsButton(this, tr("Write it off"), prefix + "Button")) {
    m_why->setObjectName(prefix + "ReasonBox");
    m_why->setAccessibleName(tr("why it is written off"));
    m_why->addItem(tr("why?"), QString());
    m_why->addItem(tr("lost"), "lost");
    m_why->addItem(tr("damaged"), "damaged");
    m_why->addItem(tr("worn"), "worn");
    m_why->addItem(tr("expired"), "expired");
    m_button->setEnabled(false);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(spaceUnit);
    row->addWidget(m_why);
    row->addWidget(m_button);
    connect(m_why, &QComboBox::currentIndexChanged, this,
            [this](int index) { m_button->setEnabled(index > 0); });
    connect(m_button, &QPushButton::clicked, this,
            [this] { emit writeOffPressed(m_why->currentData().toString()); });
}

void WriteOffChoice::clear() {
    m_why->setCurrentIndex(0);
}

} // namespace app
