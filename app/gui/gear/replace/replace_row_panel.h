#pragma once

#include <QWidget>

#include <vector>

class QButtonGroup;
class QLabel;
class QPushButton;

namespace core {
struct KitLife;
struct ReplacementPlan;
struct ReplacementRow;
} // namespace core

namespace app {

class ArrivalPanel;
class FlowLayout;
class LifePlot;
class PartStack;
class StockPlot;
struct GearTools;

/// What is shown of one row of the plan: how its stock falls, how long such kit lasts here, and what of it
/// has arrived.
class ReplaceRowPanel : public QWidget {
    Q_OBJECT

public:
    explicit ReplaceRowPanel(const GearTools& tools, QWidget* parent = nullptr);

    void showRow(const core::ReplacementRow& row, const core::ReplacementPlan& plan,
                 const std::vector<core::KitLife>& lives);
    void showNothingYet(const QString& sentence); ///< of a club that wants no kit yet
    void addBack(QPushButton* back);              ///< before the choices
    void takeKeyboard();                          ///< to the choice that holds
    ArrivalPanel& arrival() { return *m_arrival; }

private:
    void build();
    void addPart(const QString& name, const char* objectName, QWidget* part);
    void showLife(const core::ReplacementRow& row, const std::vector<core::KitLife>& lives);

    FlowLayout* m_row; ///< of the choices
    QLabel* m_chosen;
    QButtonGroup* m_choices;
    PartStack* m_parts;
    StockPlot* m_stock;
    QWidget* m_life;
    LifePlot* m_lifePlot;
    QLabel* m_lifeLabel;
    ArrivalPanel* m_arrival;
};

} // namespace app
