#pragma once

#include <QChartView>

#include <initializer_list>
#include <utility>
#include <vector>

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

    /// What stands in the plot's place while there is nothing to plot; empty: the plot is shown.
    void sayNothingYet(const QString& sentence);
    const QString& nothingYet() const { return m_nothingYet; }
    /// The words beneath the plot and those beside it: of each axis's marks those that have room.
    QStringList wordsAcross() const;
    QStringList wordsUp() const;

protected:
    /// What the axes count, beside them; `across` may be empty.
    void nameAxes(const QString& up, const QString& across = {});
    /// A place of an axis and what stands at it. The chart would cut its own words off where a plot is low.
    struct Tick {
        double at;
        QString words;
    };
    void setTicks(std::vector<Tick> ticks) { m_ticks = std::move(ticks); }
    void setTicksUp(std::vector<Tick> ticks) { m_ticksUp = std::move(ticks); }
    static std::vector<Tick> ticksTo(int most, int step); ///< numbers from 0 on
    /// Left free round the plot, besides what names and words of the axes take (pixels).
    void setRoom(const QMargins& room);
    /// Gives the series their tones; called for every change of theme.
    virtual void dressSeries(const Palette& palette) = 0;
    void dressAll();
    /// Both axes, and the series over them, which become the chart's; the last series is drawn on top.
    void addOver(QAbstractAxis* across, QAbstractAxis* up, std::initializer_list<QAbstractSeries*> series);
    /// A short text beside a place in the plot (scene coordinates), on a patch of ground, kept inside.
    void label(QPainter& painter, QPointF at, const QString& text, bool toLook = false) const;

    void drawForeground(QPainter* painter, const QRectF& rect) override;
    void changeEvent(QEvent* event) override;

private:
    static void dressAxis(QAbstractAxis& axis, const Palette& palette);
    void drawNames(QPainter& painter) const;
    void drawTicks(QPainter& painter) const;
    using Boxes = std::vector<std::pair<QRectF, QString>>;
    Boxes boxesAcross() const;
    Boxes boxesUp() const;

    std::vector<Tick> m_ticks;
    std::vector<Tick> m_ticksUp;
    QString m_nothingYet;
    QString m_up;
    QString m_across;
};

} // namespace app
