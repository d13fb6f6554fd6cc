#include "app/gui/gear/exchange/exchange_page.h"

#include "app/gui/gear/exchange/file_exchange_panel.h"
#include "app/gui/gear/exchange/hub_panel.h"
#include "app/gui/theme/type_scale.h"

#include <QHBoxLayout>
#include <QRadioButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace app {

ExchangePage::ExchangePage(const GearTools& given, QWidget* parent)
    : GearPage(given, "exchangePage", parent)
    , m_panels(new QStackedWidget(this))
    , m_files(new FileExchangePanel(given, this)) {
    QVBoxLayout& layout = column(spaceUnit);
    layout.setSpacing(0);
    m_panels->addWidget(m_files);
    if (tools().hub) addHub();
    layout.addWidget(m_panels, 1);
}

void ExchangePage::addHub() {
    m_hub = new HubPanel(tools(), this);
    m_panels->addWidget(m_hub);
    auto* byFile = new QRadioButton(tr("By stick or file"), this);
    byFile->setObjectName("exchangeFileChoice");
    m_byHub = new QRadioButton(tr("With the district"), this);
    m_byHub->setObjectName("exchangeHubChoice");
    auto* row = new QHBoxLayout;
    row->setSpacing(4 * spaceUnit);
    row->addWidget(byFile);
    row->addWidget(m_byHub);
    row->addStretch(1);
    static_cast<QVBoxLayout*>(layout())->addLayout(row);
    byFile->setChecked(true);
    connect(m_byHub, &QRadioButton::toggled, this, [this](bool isHub) {
        m_panels->setCurrentWidget(isHub ? static_cast<QWidget*>(m_hub) : m_files);
    });
}

void ExchangePage::showDistrict() {
    if (m_byHub) m_byHub->setChecked(true);
}

void ExchangePage::refresh() {
    m_files->refresh();
    if (m_hub) m_hub->refresh();
}

} // namespace app
