#pragma once

#include "app/gui/widgets/gear_page.h"
#include "core/answers/set_up.h"

#include <vector>

class QLabel;
class QPushButton;

namespace app {

class FitOutPanel;
class PartStack;
class SetUpRow;

/// What a new club has still to do, each a press away, in any order; and the panel that fits a boat out.
class SetUpPage : public GearPage {
    Q_OBJECT

public:
    explicit SetUpPage(GearTools tools, QWidget* parent = nullptr);

    void refresh() override;
    void showFitOut(const QString& boat = {}); ///< empty: the first that lacks something
    void showSteps();

private:
    QWidget* buildSteps();
    void take(const std::vector<core::SetUpTick>& ticks);
    void press(core::SetUpStep step);
    void adaptAway();

    std::vector<core::SetUpTick> m_ticks;
    std::vector<SetUpRow*> m_rows;
    QLabel* m_summary;
    QPushButton* m_spreadsheet;
    QPushButton* m_away;
    PartStack* m_stack;
    FitOutPanel* m_fitOut;
};

} // namespace app
