#pragma once

#include "app/gui/widgets/gear_page.h"

class QButtonGroup;

namespace app {

class EvidencePanel;
class FlowLayout;
class HistoryPanel;
class PartStack;
class VerifyPanel;

/// The record: whether it is whole, what was aboard on a day, what was recorded of one boat, person or item.
class RecordPage : public GearPage {
    Q_OBJECT

public:
    explicit RecordPage(const GearTools& tools, QWidget* parent = nullptr);

    VerifyPanel& verifyPanel() { return *m_verify; }
    EvidencePanel& evidencePanel() { return *m_evidence; }
    HistoryPanel& historyPanel() { return *m_history; }
    void showPanel(QWidget& panel);
    void refresh() override;
    bool takeScan(const QString& text,
                  core::SeenBy how) override; ///< whose history is told, where that is shown

private:
    void addPanel(const QString& name, const char* objectName, QWidget& panel);

    VerifyPanel* m_verify;
    EvidencePanel* m_evidence;
    HistoryPanel* m_history;
    FlowLayout* m_row;
    QButtonGroup* m_choices;
    PartStack* m_panels;
};

} // namespace app
