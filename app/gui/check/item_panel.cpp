#include "app/gui/check/item_panel.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/drafts.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/reason_words.h"
#include "app/text/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {

ItemPanel::ItemPanel(QWidget* parent)
    : QWidget(parent)
    , m_name(new QLabel(this))
    , m_codeLabel(new QLabel(this))
    , m_remark(new QLabel(this))
    , m_damage(new QLineEdit(this))
    , m_drafts(new Drafts(this))
    , m_wanting(wordsLabel(this, "footnote", "damageWantingLabel"))
    , m_withdraw(new QPushButton(tr("Withdraw it: damaged"), this))
    , m_happened(new QWidget(this))
    , m_takeBack(new QPushButton(tr("Take this scan back"), this)) {
    setObjectName("itemPanel");
    m_name->setProperty("role", "heading");
    m_codeLabel->setFont(fontOf(TextRole::Code));
    m_remark->setProperty("role", "look");
    m_remark->setWordWrap(true);
    m_damage->setObjectName("damageEdit");
    m_drafts->keep(*m_damage);
    m_damage->setAccessibleName(tr("what is damaged"));
    m_withdraw->setObjectName("withdrawButton");
    m_withdraw->setProperty("role", "usual");
    m_takeBack->setObjectName("takeBackButton");
    auto* damageLabel =
        new QLabel(tr("Damaged? Say in a sentence what is the matter. It then counts for no boat until "
                      "it is released."),
                   this);
    damageLabel->setProperty("role", "remark");
    damageLabel->setWordWrap(true);
    damageLabel->setBuddy(m_damage);
    auto* back = new QPushButton(tr("Back to the check"), this);
    back->setObjectName("itemBackButton");

    auto* buttons = new FlowLayout;
    buttons->addWidget(back);
    buttons->addWidget(m_takeBack);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(spaceUnit, 2 * spaceUnit, spaceUnit, spaceUnit);
    layout->setSpacing(spaceUnit);
    layout->addWidget(m_name);
    layout->addWidget(m_codeLabel);
    layout->addWidget(m_remark);
    layout->addSpacing(spaceUnit);
    layout->addWidget(damageLabel);
    layout->addWidget(m_damage);
    layout->addWidget(m_wanting);
    layout->addWidget(m_withdraw, 0, Qt::AlignRight);
    layout->addWidget(m_happened);
    layout->addSpacing(2 * spaceUnit);
    layout->addLayout(buttons);
    layout->addStretch(1);
    connect(m_damage, &QLineEdit::textChanged, this, &ItemPanel::adapt);
    connect(m_damage, &QLineEdit::returnPressed, this, [this] { m_withdraw->setFocus(Qt::TabFocusReason); });
    connect(m_withdraw, &QPushButton::clicked, this,
            [this] { emit withdrawPressed(m_code, m_damage->text().trimmed()); });
    connect(m_takeBack, &QPushButton::clicked, this, [this] { emit takeBackPressed(m_code); });
    connect(back, &QPushButton::clicked, this, &ItemPanel::backPressed);
}

void ItemPanel::begin(const CheckRow& row, bool toWithdraw, const QString& drafts) {
    m_code = row.code;
    clearEvents();
    m_name->setText(row.title);
    m_codeLabel->setText(row.aside);
    const QString remark = row.detail.isEmpty() ? row.remark : row.detail;
    m_remark->setText(remark);
    m_remark->setVisible(!remark.isEmpty());
    m_drafts->close();
    m_damage->clear();
    m_drafts->open(drafts);
    adapt();
    m_takeBack->setEnabled(row.mark != Mark::StillToFind);
    if (toWithdraw || !m_takeBack->isEnabled())
        m_damage->setFocus(Qt::OtherFocusReason);
    else
        m_takeBack->setFocus(Qt::OtherFocusReason);
}

void ItemPanel::setEvents(const QString& code, const QStringList& events) {
    if (code != m_code) return;
    m_happened->setVisible(!events.isEmpty());
    for (const QString& event : events) {
        auto* button = wordsButton(m_happened, withCapital(event), "happenedButton");
        connect(button, &QPushButton::clicked, this, [this, event] { emit happenedPressed(m_code, event); });
        m_happened->layout()->addWidget(button);
    }
}

void ItemPanel::clearEvents() {
    m_happened->hide();
    delete m_happened->layout();
    qDeleteAll(m_happened->findChildren<QWidget*>(Qt::FindDirectChildrenOnly));
    auto* row = new QHBoxLayout(m_happened);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(spaceUnit);
    row->addWidget(wordsIn("remark", tr("It was used or inflated, today:"), m_happened), 1);
}

void ItemPanel::adapt() {
    const QString wanting = wantingOfReason(m_damage->text());
    m_wanting->setText(wanting);
    m_withdraw->setEnabled(wanting.isEmpty());
}

} // namespace app
