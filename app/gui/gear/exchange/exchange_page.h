#pragma once

#include "app/gui/widgets/gear_page.h"

class QRadioButton;
class QStackedWidget;

namespace app {

class FileExchangePanel;
class HubPanel;

/// What other machines recorded: by a file that is carried, or over a district's server.
class ExchangePage : public GearPage {
    Q_OBJECT

public:
    explicit ExchangePage(const GearTools& tools, QWidget* parent = nullptr);

    FileExchangePanel& files() { return *m_files; }
    void refresh() override;
    void showDistrict();

private:
    void addHub();

    QStackedWidget* m_panels;
    FileExchangePanel* m_files;
    HubPanel* m_hub = nullptr; ///< null: there is none
    QRadioButton* m_byHub = nullptr;
};

} // namespace app
