#pragma once

#include "app/gui/widgets/gear_page.h"
#include "core/base/result.h"
#include "core/plan/lasting/kit_life.h"
#include "core/plan/replacement/replacement_plan.h"

#include <optional>
#include <vector>

class QComboBox;
class QLabel;
class QPushButton;

namespace app {

class ArrivalPanel;
class BesideOrOver;
class PlainTable;
class PlainTableModel;
class ReplaceRowPanel;

/// What runs short when, what to order by which day, and the sheets of it. A row opens what is known of its
/// kit; where there is room, that stands beside the table from the beginning.
class ReplacePage : public GearPage {
    Q_OBJECT

public:
    explicit ReplacePage(GearTools tools, QWidget* parent = nullptr);

    void refresh() override;
    const std::optional<core::ReplacementPlan>& plan() const { return m_plan; }
    ArrivalPanel& arrival();

signals:
    void planned(); ///< a plan is shown
    void saved();   ///< or refused

protected:
    void showEvent(QShowEvent* event) override;

private:
    enum class Paper { Sheet, Csv, Calendar };
    struct Read;

    void build();
    QWidget* buildHead();
    QWidget* buildList();
    QLayout* buildFoot();
    void adaptToBody();
    void open();
    void take(const core::Result<Read>& read);
    void fillTable();
    void showRow(const QString& key);
    void save(Paper paper);
    const core::ReplacementRow* rowOf(const QString& key) const;

    QString m_club;
    std::optional<core::ReplacementPlan> m_plan;
    std::vector<core::KitLife> m_lives;
    QComboBox* m_months;
    QComboBox* m_confidence;
    QLabel* m_summary;
    QLabel* m_cost;
    QLabel* m_empty;
    QWidget* m_head = nullptr;
    PlainTableModel* m_rows;
    PlainTable* m_table;
    QPushButton* m_open;
    std::vector<QPushButton*> m_papers;
    ReplaceRowPanel* m_row;
    BesideOrOver* m_body;
    bool m_isAsked = false; ///< somebody opened or left the row: nothing opens or closes by itself
};

/// "4 kinds of kit run short; 1 order is late. 2026: 464.00." and the like.
QString summaryOf(const core::ReplacementPlan& plan);

} // namespace app
