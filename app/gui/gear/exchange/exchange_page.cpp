#include "app/gui/gear/exchange/exchange_page.h"

#include "app/gui/gear/exchange/file_exchange_panel.h"
#include "app/gui/theme/type_scale.h"

#include <QVBoxLayout>

namespace app {

ExchangePage::ExchangePage(const GearTools& tools, QWidget* parent)
    : GearPage(tools, "exchangePage", parent)
    , m_files(new FileExchangePanel(tools, this)) {
    QVBoxLayout& layout = column(spaceUnit);
    layout.addWidget(m_files, 1);
}

void ExchangePage::refresh() {
    m_files->refresh();
}

} // namespace app
