#include "app/gui/welcome_page.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {
WelcomePage::WelcomePage(QWidget* parent)
    : QWidget(parent)
    , m_said(wordsIn("look", {}, this))
    , m_name(new QLineEdit(this))
    , m_new(new QPushButton(tr("Start a new club file…"), this)) {
    setObjectName("welcomePage");
    m_said->setObjectName("welcomeSaidLabel");
    auto* open = new QPushButton(tr("Open the club's file…"), this);
    open->setObjectName("openClubButton");
    open->setProperty("role", "usual");
    m_name->setObjectName("clubNameEdit");
    m_name->setAccessibleName(tr("the club's name"));
    m_name->setPlaceholderText(tr("the club's name"));
    m_name->setMaximumWidth(480);
    m_new->setObjectName("newClubButton");
    m_new->setEnabled(false);

    auto* fresh = new QHBoxLayout;
    fresh->setSpacing(2 * spaceUnit);
    fresh->addWidget(m_name);
    fresh->addWidget(m_new);
    fresh->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(6 * spaceUnit, 6 * spaceUnit, 6 * spaceUnit, 6 * spaceUnit);
    layout->setSpacing(2 * spaceUnit);
    layout->addWidget(wordsIn("boatName", tr("No club file is open."), this));
    layout->addWidget(m_said);
    layout->addWidget(wordsIn("remark", tr("One file holds a club's boats, kit and record. Open it:"), this));
    layout->addWidget(open, 0, Qt::AlignLeft);
    layout->addSpacing(2 * spaceUnit);
    layout->addWidget(
        wordsIn("remark", tr("Or start one, and import the register into it from a folder of CSV:"), this));
    layout->addLayout(fresh);
    layout->addStretch(1);
    connect(open, &QPushButton::clicked, this, &WelcomePage::openPressed);
    connect(m_name, &QLineEdit::textChanged, this,
            [this](const QString& name) { m_new->setEnabled(!name.trimmed().isEmpty()); });
    connect(m_name, &QLineEdit::returnPressed, m_new, &QPushButton::click);
    connect(m_new, &QPushButton::clicked, this, [this] { emit newPressed(m_name->text().trimmed()); });
    QWidget::setTabOrder(open, m_name);
    QWidget::setTabOrder(m_name, m_new);
    setFocusProxy(open); // the usual way has the keyboard
}

void WelcomePage::say(const QString& sentence) {
    m_said->setText(sentence);
    m_said->setVisible(!sentence.isEmpty());
}

} // namespace app
