#pragma once

#include "app/gui/widgets/gear_page.h"
#include "core/club/club_exchange.h"

#include <vector>

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace app {

class RowList;
class RowListModel;

/// The district's server: how it stands with it, what came in from there, joining and leaving it.
class HubPanel : public GearPart {
    Q_OBJECT

public:
    explicit HubPanel(GearTools tools, QWidget* parent = nullptr);

    void refresh();

private:
    void build();
    void connectParts();
    void takePlace(const QString& url);
    void showNews();
    void join();
    void leave();

    bool m_isJoined = false;
    std::vector<core::LookAt> m_lookAt;
    QLabel* m_now;
    QLabel* m_place;
    QLabel* m_cameIn;
    RowListModel* m_lookLines;
    RowList* m_looks;
    QLabel* m_hint;
    QLineEdit* m_url;
    QCheckBox* m_private;
    QPushButton* m_leave;
    QPushButton* m_exchange;
    QPushButton* m_join;
};

} // namespace app
