#pragma once

#include "app/gui/widgets/plot_view.h"
#include "core/plan/lasting/kit_life.h"

class QAreaSeries;
class QLineSeries;
class QValueAxis;

namespace app {

/// The share of a kit that lasts longer than an age: the curve in steps with its band, and the age that each
/// rule allows as an upright line.
class LifePlot : public PlotView {
    Q_OBJECT

public:
    explicit LifePlot(QWidget* parent = nullptr);

    void setLife(const core::KitLife& life);

protected:
    void dressSeries(const Palette& palette) override;
    void drawForeground(QPainter* painter, const QRectF& rect) override;

private:
    core::KitLife m_life;
    QLineSeries* m_curve;
    QLineSeries* m_low;
    QLineSeries* m_high;
    QAreaSeries* m_band;
    QValueAxis* m_across;
    QValueAxis* m_up;
};

} // namespace app
