#pragma once

#include "app/gui/widgets/gear_page.h"

namespace app {

class FileExchangePanel;

/// What other machines recorded: by a file that is carried, or over a district's server.
class ExchangePage : public GearPage {
    Q_OBJECT

public:
    explicit ExchangePage(const GearTools& tools, QWidget* parent = nullptr);

    FileExchangePanel& files() { return *m_files; }
    void refresh() override;

private:
    FileExchangePanel* m_files;
};

} // namespace app
