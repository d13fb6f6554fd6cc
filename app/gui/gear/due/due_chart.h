#pragma once

#include "app/gui/gear/due/due_calendar.h"
#include "app/gui/widgets/plot_view.h"

class QBarCategoryAxis;
class QStackedBarSeries;
class QValueAxis;

namespace app {

/// The calendar as columns, stacked by kind, each kind with a pattern of its own and its name beside it.
/// Left, right, Home and End choose a month, Enter or a press opens it.
class DueChart : public PlotView {
    Q_OBJECT

public:
    explicit DueChart(QWidget* parent = nullptr);

    void setCalendar(const DueCalendar& calendar);
    int month() const { return m_month; }
    void setMonth(int month);
    /// Where a month's column stands, in the widget's coordinates.
    QRect columnRect(int month) const;

signals:
    void monthPressed(int month); ///< its place in the calendar, from 0

protected:
    void dressSeries(const Palette& palette) override;
    void drawForeground(QPainter* painter, const QRectF& rect) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void say();
    QRectF columnBox(int month) const; ///< in the scene
    void drawMonths(QPainter& painter) const;
    void drawMonthName(QPainter& painter, const QRectF& column, const DueMonth& month) const;
    void drawKey(QPainter& painter) const;
    int wordRoom() const;
    int keyWidth() const;

    DueCalendar m_calendar;
    int m_month = 0;
    QStackedBarSeries* m_bars;
    QBarCategoryAxis* m_across;
    QValueAxis* m_up;
};

/// The pattern of a kind in a tone, by its place.
QBrush patternOf(int kind, const QColor& tone);

} // namespace app
