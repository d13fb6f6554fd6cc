#include "app/gui/gear/kit/write_off_choice.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/text/cautions.h"
#include "app/text/register_words.h"
#include "app/text/text.h"
#include "core/register/sheets.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {

void offerReasons(ChoiceBox& box) {
    box.addItem(WriteOffChoice::tr("why?"), QString());
    for (const std::string_view reason : core::sheet(core::SheetId::Items).column("why").choices)
        box.addItem(writtenOffAs(std::string(reason)), text(std::string(reason)));
}

WriteOffChoice::WriteOffChoice(const QByteArray& prefix, QWidget* parent)
    : QWidget(parent)
    , m_question(wordsLabel(this, "look", prefix + "QuestionLabel"))
    , m_why(new ChoiceBox(this))
    , m_button(wordsButton(this, {}, prefix + "Button"))
    , m_keep(wordsButton(this, tr("Keep it"), prefix + "KeepButton")) {
    build(prefix);
    connect(m_why, &QComboBox::currentIndexChanged, this, &WriteOffChoice::keep);
    connect(m_button, &QPushButton::clicked, this, &WriteOffChoice::press);
    connect(m_keep, &QPushButton::clicked, this, &WriteOffChoice::clear);
    adapt();
}

void WriteOffChoice::build(const QByteArray& prefix) {
    m_why->setObjectName(prefix + "ReasonBox");
    m_why->setAccessibleName(tr("why it is written off"));
    offerReasons(*m_why);
    auto* row = new FlowLayout;
    row->addWidget(m_why);
    row->addWidget(m_button);
    row->addWidget(m_keep);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    layout->addWidget(m_question);
    layout->addLayout(row);
}

void WriteOffChoice::press() {
    if (m_second.press()) {
        m_second.clear();
        emit writeOffPressed(m_why->currentData().toString());
    }
    adapt();
}

/// Another reason is another question.
void WriteOffChoice::keep() {
    m_second.clear();
    adapt();
}

void WriteOffChoice::adapt() {
    const bool isAsked = m_second.isAsked();
    m_question->setText(tr("Write it off as %1? It counts nowhere from then on.").arg(m_why->currentText()) +
                        QLatin1Char(' ') + writeOffCaution());
    m_question->setVisible(isAsked);
    m_keep->setVisible(isAsked);
    m_button->setText(isAsked ? tr("Yes, write it off") : tr("Write it off"));
    m_button->setEnabled(m_why->currentIndex() > 0);
    emit asked(isAsked);
}

void WriteOffChoice::clear() {
    m_why->setCurrentIndex(0);
    keep();
}

} // namespace app
