#pragma once

#include <QChartView>

#include <initializer_list>

class QAbstractAxis;
class QAbstractSeries;
class QPainter;

namespace app {

struct Palette;

/// A plot in the tones of the theme, without legend or ground of its own. Lines are told apart by their
/// strokes and fills by their patterns, so that it reads in grey.
class PlotView : public QChartView {
    Q_OBJECT

public:
    explicit PlotView(QWidget* parent = nullptr);

protected:
    /// Gives the series their tones; called for every change of theme.
    virtual void dressSeries(const Palette& palette) = 0;
    void dressAll();
    /// Both axes, and the series over them, which become the chart's; the last series is drawn on top.
    void addOver(QAbstractAxis* across, QAbstractAxis* up, std::initializer_list<QAbstractSeries*> series);
    /// A short text beside a place in the plot (scene coordinates), on a patch of ground, kept inside.
    void label(QPainter& painter, QPointF at, const QString& text, bool toLook = false) const;

    void changeEvent(QEvent* event) override;

private:
    static void dressAxis(QAbstractAxis& axis, const Palette& palette);
};

} // namespace app
