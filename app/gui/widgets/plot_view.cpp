#include "app/gui/widgets/plot_view.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"

#include <QAbstractAxis>
#include <QAbstractSeries>
#include <QChart>
#include <QEvent>
#include <QLegend>
#include <QPainter>

#include <algorithm>

namespace app {

PlotView::PlotView(QWidget* parent)
    : QChartView(new QChart, parent) {
    setRenderHint(QPainter::Antialiasing);
    setFrameShape(QFrame::NoFrame);
    setStyleSheet(QStringLiteral("background: transparent"));
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    chart()->legend()->hide();
    chart()->setBackgroundVisible(false);
    chart()->setMargins(QMargins(0, 0, 0, 0));
    chart()->setAnimationOptions(QChart::NoAnimation);
}

void PlotView::dressAxis(QAbstractAxis& axis, const Palette& palette) {
    axis.setLabelsFont(fontOf(TextRole::Footnote));
    axis.setTitleFont(fontOf(TextRole::Footnote));
    axis.setLabelsBrush(palette.ink);
    axis.setTitleBrush(palette.quiet);
    axis.setLinePen(QPen(palette.line, 1));
    axis.setGridLinePen(QPen(palette.line, 1, Qt::DotLine));
}

void PlotView::addOver(QAbstractAxis* across, QAbstractAxis* up,
                       std::initializer_list<QAbstractSeries*> series) {
    chart()->addAxis(across, Qt::AlignBottom);
    chart()->addAxis(up, Qt::AlignLeft);
    for (QAbstractSeries* each : series) {
        chart()->addSeries(each);
        each->attachAxis(across);
        each->attachAxis(up);
    }
}

void PlotView::dressAll() {
    const Palette& palette = currentPalette();
    for (QAbstractAxis* axis : chart()->axes())
        dressAxis(*axis, palette);
    dressSeries(palette);
    scene()->update();
}

void PlotView::label(QPainter& painter, QPointF at, const QString& text, bool toLook) const {
    const Palette& palette = currentPalette();
    painter.setFont(fontOf(TextRole::Footnote));
    QRectF box = painter.fontMetrics().boundingRect(text);
    box.moveTopLeft(at);
    box.adjust(-4, -1, 4, 1);
    const QRectF room = sceneRect();
    box.moveLeft(std::clamp(box.left(), room.left(), std::max(room.left(), room.right() - box.width())));
    box.moveTop(std::clamp(box.top(), room.top(), std::max(room.top(), room.bottom() - box.height())));
    painter.fillRect(box, palette.ground);
    painter.setPen(toLook ? palette.look : palette.ink);
    painter.drawText(box, Qt::AlignCenter, text);
}

void PlotView::changeEvent(QEvent* event) {
    QChartView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) dressAll();
}

} // namespace app
