#include "app/gui/check/signed_panel.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/flow_layout.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {

SignedPanel::SignedPanel(QWidget* parent)
    : QWidget(parent)
    , m_sentence(new QLabel(this))
    , m_urgent(new QLabel(this))
    , m_said(new QLabel(this))
    , m_done(new QPushButton(tr("Back to the boats"), this)) {
    setObjectName("signedPanel");
    m_sentence->setObjectName("signedLabel");
    m_sentence->setProperty("role", "heading");
    m_urgent->setProperty("role", "look");
    m_said->setProperty("role", "quiet");
    for (QLabel* label : {m_sentence, m_urgent, m_said})
        label->setWordWrap(true);
    auto* print = new QPushButton(tr("Print the sheet…"), this);
    print->setObjectName("printSheetButton");
    auto* save = new QPushButton(tr("Save the sheet as PDF…"), this);
    save->setObjectName("savePrintoutButton");
    m_done->setObjectName("signedDoneButton");
    m_done->setProperty("role", "usual");

    auto* sheets = new FlowLayout;
    sheets->addWidget(print);
    sheets->addWidget(save);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(spaceUnit, 2 * spaceUnit, spaceUnit, spaceUnit);
    layout->setSpacing(spaceUnit);
    layout->addWidget(m_sentence);
    layout->addWidget(m_urgent);
    layout->addSpacing(spaceUnit);
    layout->addLayout(sheets);
    layout->addWidget(m_said);
    layout->addSpacing(spaceUnit);
    layout->addWidget(m_done, 0, Qt::AlignLeft);
    layout->addStretch(1);
    connect(print, &QPushButton::clicked, this, &SignedPanel::printPressed);
    connect(save, &QPushButton::clicked, this, &SignedPanel::savePressed);
    connect(m_done, &QPushButton::clicked, this, &SignedPanel::donePressed);
}

void SignedPanel::begin(const QString& sentence, const QString& urgent) {
    m_sentence->setText(sentence);
    m_urgent->setText(urgent);
    m_urgent->setVisible(!urgent.isEmpty());
    m_said->clear();
    m_done->setFocus(Qt::OtherFocusReason);
}

void SignedPanel::say(const QString& sentence) {
    m_said->setText(sentence);
}

} // namespace app
