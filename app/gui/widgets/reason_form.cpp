#include "app/gui/widgets/reason_form.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/drafts.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/reason_words.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {

ReasonForm::ReasonForm(const QByteArray& prefix, const QString& question, const QString& does,
                       QWidget* parent)
    : QWidget(parent)
    , m_reason(wordsEdit(this, prefix + "ReasonEdit", question))
    , m_drafts(new Drafts(this))
    , m_wanting(wordsLabel(this, "footnote", prefix + "WantingLabel"))
    , m_button(wordsButton(this, does, prefix + "Button")) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    auto* asked = wordsIn("remark", question, this);
    asked->setBuddy(m_reason);
    layout->addWidget(asked);
    layout->addWidget(m_reason);
    layout->addWidget(m_wanting);
    layout->addWidget(m_button, 0, Qt::AlignRight);
    m_drafts->keep(*m_reason);
    connect(m_reason, &QLineEdit::textChanged, this, &ReasonForm::adapt);
    connect(m_reason, &QLineEdit::returnPressed, this, [this] { m_button->setFocus(Qt::TabFocusReason); });
    connect(m_button, &QPushButton::clicked, this, [this] { emit pressed(m_reason->text().trimmed()); });
    adapt();
}

void ReasonForm::begin(const QString& drafts) {
    m_drafts->close();
    m_reason->clear();
    m_drafts->open(drafts);
    adapt();
}

void ReasonForm::takeKeyboard() {
    m_reason->setFocus(Qt::OtherFocusReason);
}

void ReasonForm::adapt() {
    const QString wanting = wantingOfReason(m_reason->text());
    m_wanting->setText(wanting);
    m_button->setEnabled(wanting.isEmpty());
}

} // namespace app
