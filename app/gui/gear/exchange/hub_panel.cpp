#include "app/gui/gear/exchange/hub_panel.h"

#include "app/gui/club/hub_watch.h"
#include "app/gui/gear/exchange/exchange_words.h"
#include "app/gui/gear/exchange/look_leads.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/text/merge_sentences.h"
#include "app/text/text.h"
#include "core/club/club.h"
#include "core/club/club_hub.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {

HubPanel::HubPanel(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "hubPanel", parent)
    , m_now(wordsLabel(this, "heading", "hubNowLabel"))
    , m_place(wordsLabel(this, "quiet", "hubPlaceLabel"))
    , m_cameIn(wordsLabel(this, "remark", "hubCameInLabel"))
    , m_lookLines(new RowListModel(this))
    , m_looks(new RowList(*m_lookLines, this))
    , m_hint(wordsLabel(this, "remark", "hubHintLabel"))
    , m_url(wordsEdit(this, "hubUrlEdit", tr("where the district's server is"),
                      QStringLiteral("postgresql://club@server.example/tholepin")))
    , m_private(new QCheckBox(tr("People's measures go there, too"), this))
    , m_leave(wordsButton(this, tr("Exchange with it no more"), "hubLeaveButton"))
    , m_exchange(wordsButton(this, tr("Exchange now"), "hubExchangeButton"))
    , m_join(wordsButton(this, tr("Join it"), "hubJoinButton", true)) {
    build();
    connectParts();
    takePlace({});
}

void HubPanel::build() {
    m_private->setObjectName("hubPrivateBox");
    m_looks->setObjectName("hubLooks");
    m_looks->setAccessibleName(tr("what somebody must look at"));
    m_hint->setText(tr(
        "A district may keep a server with which all its clubs' machines exchange by themselves, whenever "
        "they "
        "reach it. Whoever keeps it says what to write here. The password stands in the file .pgpass of this "
        "computer's user, never here."));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(spaceUnit);
    buttons->addWidget(m_leave);
    buttons->addStretch(1);
    buttons->addWidget(m_exchange);
    buttons->addWidget(m_join);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, spaceUnit, 0, 0);
    layout->setSpacing(spaceUnit);
    for (QWidget* each : std::initializer_list<QWidget*>{m_now, m_place, m_cameIn})
        layout->addWidget(each);
    layout->addWidget(m_looks, 1);
    for (QWidget* each : std::initializer_list<QWidget*>{m_hint, m_url, m_private})
        layout->addWidget(each);
    layout->addStretch(0);
    layout->addWidget(saidLabel("hubSaidLabel"));
    layout->addLayout(buttons);
}

void HubPanel::connectParts() {
    connect(m_looks, &RowList::rowPressed, this, [this](const QString& key) {
        if (const std::size_t at = key.toUInt(); at < m_lookAt.size()) lookAt(m_lookAt[at], tools(), *this);
    });
    connect(m_url, &QLineEdit::textChanged, this,
            [this] { m_join->setEnabled(!m_url->text().trimmed().isEmpty()); });
    connect(m_url, &QLineEdit::returnPressed, this, [this] { m_join->setFocus(Qt::TabFocusReason); });
    connect(m_join, &QPushButton::clicked, this, &HubPanel::join);
    connect(m_leave, &QPushButton::clicked, this, &HubPanel::leave);
    connect(m_exchange, &QPushButton::clicked, this, [this] { tools().hub->exchangeNow(); });
    connect(tools().hub, &HubWatch::changed, this, &HubPanel::showNews);
}

void HubPanel::refresh() {
    read(
        [](core::Club& club) {
            const auto place = club.hub().place();
            return place ? QString::fromStdString(place->url) : QString();
        },
        [this](const QString& url) { takePlace(url); });
}

void HubPanel::takePlace(const QString& url) {
    m_isJoined = !url.isEmpty();
    m_place->setText(text(url));
    for (QWidget* each : std::initializer_list<QWidget*>{m_hint, m_url, m_private, m_join})
        each->setVisible(!m_isJoined);
    for (QWidget* each : std::initializer_list<QWidget*>{m_place, m_leave, m_exchange})
        each->setVisible(m_isJoined);
    m_join->setEnabled(!m_url->text().trimmed().isEmpty());
    showNews();
}

void HubPanel::showNews() {
    const HubNews& news = tools().hub->news();
    m_now->setText(m_isJoined ? inWords(news, today()) : tr("This file exchanges with no server."));
    m_cameIn->setText(news.cameIn.facts == 0
                          ? QString()
                          : tr("Came in since this file was opened here: %1.").arg(cameInWords(news.cameIn)));
    m_cameIn->setVisible(!m_cameIn->text().isEmpty());
    m_lookAt = news.cameIn.lookAt;
    std::vector<ListRow> rows;
    if (!m_lookAt.empty()) addSection(rows, "look", tr("to look at"), rowsOf(m_lookAt));
    m_lookLines->setRows(rows);
    m_looks->setVisible(!rows.empty());
}

void HubPanel::join() {
    say(tr("The server is being asked…"));
    write(
        [url = m_url->text().trimmed().toStdString(),
         isPrivate = m_private->isChecked()](core::Club& club, const std::string&, core::Moment) {
            return club.hub().join({url, isPrivate});
        },
        [this](core::Done) {
            say(tr("Joined: from now on it is exchanged with by itself."));
            m_url->clear();
            tools().hub->exchangeNow();
            refresh();
        });
}

void HubPanel::leave() {
    write([](core::Club& club, const std::string&, core::Moment) { return club.hub().leave(); },
          [this](core::Done) {
              say(tr("It is exchanged with no more. What the server has stays there."));
              tools().hub->exchangeNow();
              refresh();
          });
}

} // namespace app
