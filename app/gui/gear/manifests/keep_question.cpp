#include "app/gui/gear/manifests/keep_question.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {

KeepQuestion::KeepQuestion(const QByteArray& prefix, QWidget* parent)
    : QWidget(parent)
    , m_question(wordsLabel(this, "remark", prefix + "QuestionLabel"))
    , m_keep(wordsButton(this, tr("Keep"), prefix + "KeepButton", true))
    , m_takeAway(wordsButton(this, tr("Remove"), prefix + "ReallyTakeAwayButton")) {
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(spaceUnit);
    // Where "Take it away" was pressed stands Keep: a second press in haste takes nothing away.
    buttons->addWidget(m_keep);
    buttons->addStretch(1);
    buttons->addWidget(m_takeAway);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    layout->addWidget(m_question);
    layout->addLayout(buttons);
    for (QPushButton* button : {m_keep, m_takeAway})
        button->setAutoDefault(true); // Enter answers as Space does
    connect(m_keep, &QPushButton::clicked, this, &KeepQuestion::kept);
    connect(m_takeAway, &QPushButton::clicked, this, &KeepQuestion::takenAway);
    hide();
}

void KeepQuestion::ask(const QString& question) {
    m_question->setText(question);
    m_takeAway->setAccessibleDescription(question);
    m_keep->setAccessibleDescription(question);
    show();
    m_keep->setFocus(Qt::OtherFocusReason);
}

void KeepQuestion::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        emit kept();
    else
        QWidget::keyPressEvent(event);
}

} // namespace app
