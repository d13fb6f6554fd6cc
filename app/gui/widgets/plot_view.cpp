#include "app/gui/widgets/plot_view.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"

#include <QAbstractAxis>
#include <QAbstractSeries>
#include <QChart>
#include <QEvent>
#include <QLegend>
#include <QMargins>
#include <QPainter>

#include <algorithm>

namespace app {
namespace {

constexpr int nameRoom = 26; // a line of the small type
constexpr int tickLength = 4;

} // namespace

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
    axis.setLabelsVisible(false); // see Tick
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

void PlotView::sayNothingYet(const QString& sentence) {
    m_nothingYet = sentence;
    chart()->setVisible(sentence.isEmpty());
    if (!sentence.isEmpty()) setAccessibleDescription(sentence);
    scene()->update();
}

void PlotView::nameAxes(const QString& up, const QString& across) {
    m_up = up;
    m_across = across;
}

std::vector<PlotView::Tick> PlotView::ticksTo(int most, int step) {
    std::vector<Tick> ticks;
    for (int at = 0; at <= most; at += step)
        ticks.push_back({static_cast<double>(at), QString::number(at)});
    return ticks;
}

void PlotView::setRoom(const QMargins& room) {
    const QFontMetrics metrics(fontOf(TextRole::Footnote));
    int width = 0;
    for (const Tick& tick : m_ticksUp)
        width = std::max(width, metrics.horizontalAdvance(tick.words) + 2 * tickLength);
    const int lines = (m_ticks.empty() ? 0 : 1) + (m_across.isEmpty() ? 0 : 1);
    chart()->setMargins(room + QMargins(nameRoom + width, 0, 0, lines * nameRoom));
}

PlotView::Boxes PlotView::boxesAcross() const {
    const QFontMetricsF metrics(fontOf(TextRole::Footnote));
    const double gap = metrics.horizontalAdvance(QLatin1Char('x'));
    Boxes boxes;
    for (const Tick& tick : m_ticks) {
        const double width = metrics.horizontalAdvance(tick.words);
        const QPointF at = chart()->mapToPosition({tick.at, 0}, chart()->series().constFirst());
        const double left = std::min(at.x() - width / 2, sceneRect().right() - width);
        if (!boxes.empty() && left < boxes.back().first.right() + gap) continue;
        boxes.emplace_back(QRectF(left, chart()->plotArea().bottom() + tickLength, width, nameRoom),
                           tick.words);
    }
    return boxes;
}

PlotView::Boxes PlotView::boxesUp() const {
    const double height = QFontMetricsF(fontOf(TextRole::Footnote)).height();
    const double right = chart()->plotArea().left() - tickLength;
    Boxes boxes;
    for (const Tick& tick : m_ticksUp) {
        const QPointF at = chart()->mapToPosition({0, tick.at}, chart()->series().constFirst());
        if (!boxes.empty() && at.y() + height / 2 > boxes.back().first.top()) continue;
        boxes.emplace_back(
            QRectF(sceneRect().left(), at.y() - height / 2, right - sceneRect().left(), height), tick.words);
    }
    return boxes;
}

QStringList PlotView::wordsAcross() const {
    QStringList words;
    for (const auto& [box, each] : boxesAcross())
        words << each;
    return words;
}

QStringList PlotView::wordsUp() const {
    QStringList words;
    for (const auto& [box, each] : boxesUp())
        words << each;
    return words;
}

void PlotView::drawTicks(QPainter& painter) const {
    painter.save();
    painter.setFont(fontOf(TextRole::Footnote));
    painter.setPen(currentPalette().ink);
    for (const auto& [box, words] : boxesAcross()) {
        painter.drawLine(QPointF(box.center().x(), box.top() - tickLength),
                         QPointF(box.center().x(), box.top()));
        painter.drawText(box, Qt::AlignCenter | Qt::TextDontClip, words);
    }
    for (const auto& [box, words] : boxesUp())
        painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter | Qt::TextDontClip, words);
    painter.restore();
}

void PlotView::drawNames(QPainter& painter) const {
    const QRectF plot = chart()->plotArea();
    painter.save();
    painter.setFont(fontOf(TextRole::Footnote));
    painter.setPen(currentPalette().quiet);
    painter.drawText(QRectF(plot.left(), sceneRect().bottom() - nameRoom, plot.width(), nameRoom),
                     Qt::AlignCenter, m_across);
    painter.translate(sceneRect().left(), plot.center().y());
    painter.rotate(-90);
    painter.drawText(QRectF(-plot.height() / 2, 0, plot.height(), nameRoom),
                     Qt::AlignCenter | Qt::TextDontClip, m_up);
    painter.restore();
}

void PlotView::drawForeground(QPainter* painter, const QRectF& rect) {
    QChartView::drawForeground(painter, rect);
    if (m_nothingYet.isEmpty()) {
        drawNames(*painter);
        drawTicks(*painter);
        return;
    }
    painter->save();
    painter->setFont(fontOf(TextRole::Remark));
    painter->setPen(currentPalette().quiet);
    painter->drawText(sceneRect(), Qt::AlignCenter | Qt::TextWordWrap, m_nothingYet);
    painter->restore();
}

void PlotView::changeEvent(QEvent* event) {
    QChartView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) dressAll();
}

} // namespace app
