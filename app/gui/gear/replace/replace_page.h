#pragma once

#include "app/gui/widgets/gear_page.h"
#include "core/base/result.h"
#include "core/plan/lasting/kit_life.h"
#include "core/plan/replacement/replacement_plan.h"

#include <optional>
#include <vector>

class QButtonGroup;
class QComboBox;
class QLabel;
class QPushButton;

namespace app {

class ArrivalPanel;
class FlowLayout;
class LifePlot;
class PartStack;
class PlainTable;
class PlainTableModel;
class StockPlot;

/// What runs short when, what to order by which day, and the sheets of it; how long kit lasts here; and what
/// has arrived.
class ReplacePage : public GearPage {
    Q_OBJECT

public:
    explicit ReplacePage(GearTools tools, QWidget* parent = nullptr);

    void refresh() override;
    const std::optional<core::ReplacementPlan>& plan() const { return m_plan; }
    ArrivalPanel& arrival() { return *m_arrival; }

signals:
    void planned(); ///< a plan is shown
    void saved();   ///< or refused

protected:
    void showEvent(QShowEvent* event) override;

private:
    enum class Paper { Sheet, Csv, Calendar };
    struct Read;

    void build();
    QWidget* buildBeside();
    void addPart(FlowLayout& row, const QString& name, const char* objectName, QWidget* part);
    void take(const core::Result<Read>& read);
    void fillTable();
    void showRow(const QString& key);
    void showNothingYet();
    void showLife(const core::ReplacementRow& row);
    void save(Paper paper);
    const core::ReplacementRow* rowOf(const QString& key) const;

    QString m_club;
    std::optional<core::ReplacementPlan> m_plan;
    std::vector<core::KitLife> m_lives;
    QComboBox* m_months;
    QComboBox* m_confidence;
    QLabel* m_summary;
    QLabel* m_cost;
    PlainTableModel* m_rows;
    PlainTable* m_table;
    QLabel* m_chosen;
    QButtonGroup* m_choices;
    PartStack* m_parts;
    StockPlot* m_stock;
    QWidget* m_life;
    LifePlot* m_lifePlot;
    QLabel* m_lifeLabel;
    ArrivalPanel* m_arrival;
    std::vector<QPushButton*> m_papers;
};

/// "4 kinds of kit run short; 1 order is late. 2026: 464.00." and the like.
QString summaryOf(const core::ReplacementPlan& plan);

} // namespace app
