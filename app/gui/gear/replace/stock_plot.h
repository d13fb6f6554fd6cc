#pragma once

#include "app/gui/widgets/plot_view.h"
#include "core/plan/replacement/replacement_plan.h"

class QDateTimeAxis;
class QLineSeries;
class QValueAxis;

namespace app {

/// One kit's stock over the plan's months by the life rules alone, beside what is wanted; the first short day
/// and the order-by day as upright lines with their words.
class StockPlot : public PlotView {
    Q_OBJECT

public:
    explicit StockPlot(QWidget* parent = nullptr);

    void setRow(const core::ReplacementRow& row, const core::ReplacementPlan& plan);

protected:
    void dressSeries(const Palette& palette) override;
    void drawForeground(QPainter* painter, const QRectF& rect) override;

private:
    struct Day {
        core::CalendarDay day;
        QString words;
        bool toLook;
    };

    std::vector<Day> days() const; ///< those that the plot marks
    double drawDay(QPainter& painter, const Day& day, int line) const;

    core::ReplacementRow m_row;
    core::CalendarDay m_today = core::CalendarDay::fromNumber(1);
    QLineSeries* m_stock;
    QLineSeries* m_wanted;
    QDateTimeAxis* m_across;
    QValueAxis* m_up;
};

} // namespace app
