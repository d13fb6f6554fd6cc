#include "app/gui/gear/due/due_chart.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/marks.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"

#include <QBarCategoryAxis>
#include <QBarSet>
#include <QChart>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QStackedBarSeries>
#include <QValueAxis>

#include <algorithm>
#include <array>
#include <cmath>

namespace app {
namespace {

constexpr int footRoom = 56; // month and year beneath the columns
constexpr int headRoom = 26; // the number above the fullest column
constexpr int swatch = 26;

/// Steps of 1, 2 or 5 times a power of ten, at most six of them.
int stepFor(int most) {
    int step = 1;
    for (int factor = 0; most / step > 6; ++factor)
        step = factor % 3 == 1 ? step / 2 * 5 : step * 2;
    return step;
}

} // namespace

QBrush patternOf(int kind, const QColor& tone) {
    static constexpr std::array<Qt::BrushStyle, mostKinds> patterns{
        Qt::SolidPattern,  Qt::BDiagPattern, Qt::NoBrush,   Qt::DiagCrossPattern,
        Qt::Dense4Pattern, Qt::HorPattern,   Qt::VerPattern};
    return {tone, patterns[static_cast<std::size_t>(kind) % patterns.size()]};
}

DueChart::DueChart(QWidget* parent)
    : PlotView(parent)
    , m_bars(new QStackedBarSeries(this))
    , m_across(new QBarCategoryAxis(this))
    , m_up(new QValueAxis(this)) {
    setObjectName("dueChart");
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("what falls due, month by month"));
    chart()->addSeries(m_bars);
    chart()->addAxis(m_across, Qt::AlignBottom);
    chart()->addAxis(m_up, Qt::AlignLeft);
    m_bars->attachAxis(m_across);
    m_bars->attachAxis(m_up);
    m_bars->setBarWidth(0.72);
    m_across->setGridLineVisible(false);
    nameAxes(tr("due days"));
}

void DueChart::setCalendar(const DueCalendar& calendar) {
    m_calendar = calendar;
    m_bars->clear();
    QStringList places;
    for (std::size_t i = 0; i < calendar.months.size(); ++i)
        places << QString::number(i);
    m_across->setCategories(places);
    for (int kind = 0; kind < calendar.kinds.size(); ++kind) {
        auto* bars = new QBarSet(calendar.kinds[kind]);
        for (const DueMonth& month : calendar.months)
            bars->append(month.counts[static_cast<std::size_t>(kind)]);
        m_bars->append(bars);
    }
    const int step = stepFor(calendar.most());
    m_up->setTickType(QValueAxis::TicksDynamic);
    m_up->setTickInterval(step);
    const int top = std::max(step, (calendar.most() + step - 1) / step * step);
    m_up->setRange(0, top);
    setTicksUp(ticksTo(top, step));
    setRoom(QMargins(wordRoom(), headRoom, keyWidth(), footRoom));
    sayNothingYet(calendar.kinds.isEmpty() ? tr("Nothing falls due here: no kit has a day to come, and none "
                                                "is overdue.")
                                           : QString());
    dressAll();
    say();
}

void DueChart::setMonth(int month) {
    m_month = std::clamp(month, 0, std::max(0, static_cast<int>(m_calendar.months.size()) - 1));
    say();
    scene()->update();
}

void DueChart::say() {
    if (m_calendar.months.empty()) return;
    if (!nothingYet().isEmpty()) return; // and it is described by that
    setAccessibleDescription(inWords(m_calendar.months[static_cast<std::size_t>(m_month)], m_calendar.kinds));
}

void DueChart::dressSeries(const Palette& palette) {
    const auto sets = m_bars->barSets();
    for (int kind = 0; kind < sets.size(); ++kind) {
        sets[kind]->setBrush(patternOf(kind, palette.ink));
        sets[kind]->setPen(QPen(palette.ink, 1.2));
    }
}

QRectF DueChart::columnBox(int month) const {
    const QRectF plot = chart()->plotArea();
    const double width =
        plot.width() / static_cast<double>(std::max<std::size_t>(1, m_calendar.months.size()));
    return {plot.left() + month * width, plot.top() - headRoom, width, plot.height() + headRoom + footRoom};
}

QRect DueChart::columnRect(int month) const {
    return mapFromScene(columnBox(month)).boundingRect();
}

void DueChart::drawForeground(QPainter* painter, const QRectF& rect) {
    PlotView::drawForeground(painter, rect);
    if (m_calendar.months.empty() || !nothingYet().isEmpty()) return;
    painter->save();
    drawMonths(*painter);
    drawKey(*painter);
    painter->restore();
}

void DueChart::drawMonths(QPainter& painter) const {
    const Palette& palette = currentPalette();
    const QRectF plot = chart()->plotArea();
    const double perDay = plot.height() / m_up->max();
    int yearBefore = 0;
    for (int i = 0; i < static_cast<int>(m_calendar.months.size()); ++i) {
        const DueMonth& month = m_calendar.months[static_cast<std::size_t>(i)];
        const QRectF box = columnBox(i);
        const auto count = static_cast<int>(month.rows.size());
        painter.setFont(fontOf(TextRole::Footnote));
        painter.setPen(palette.ink);
        if (count > 0)
            painter.drawText(QRectF(box.left(), plot.bottom() - count * perDay - 24, box.width(), 22),
                             Qt::AlignCenter | Qt::TextDontClip, QString::number(count));
        drawMonthName(painter, box, month);
        if (month.year != yearBefore) {
            painter.setPen(palette.quiet);
            painter.setFont(fontOf(TextRole::Footnote));
            painter.drawText(QRectF(box.left(), plot.bottom() + 30, 80, 24), Qt::AlignLeft | Qt::TextDontClip,
                             QString::number(month.year));
        }
        yearBefore = month.year;
    }
    // What has passed stands apart.
    const double apart = columnBox(1).left();
    painter.setPen(QPen(palette.ink, 2));
    painter.drawLine(QPointF(apart, plot.top() - headRoom + 4), QPointF(apart, plot.bottom()));
    const QRectF chosen = columnBox(m_month).adjusted(1, 2, -1, -28);
    painter.setPen(QPen(hasFocus() ? palette.focus : palette.ink, hasFocus() ? 3 : 1.5));
    painter.drawRect(chosen);
}

/// What has passed has a mark there and its word beneath, where no year is.
void DueChart::drawMonthName(QPainter& painter, const QRectF& column, const DueMonth& month) const {
    const Palette& palette = currentPalette();
    const double top = chart()->plotArea().bottom() + 6;
    const QFont font = fontOf(TextRole::Footnote);
    painter.setPen(palette.ink);
    if (month.year == 0) {
        paintMark(painter, Mark::Look, QRectF(column.center().x() - 8, top + 2, 16, 16), palette.look);
        painter.setFont(font);
        painter.drawText(QRectF(column.right() - 80, top + 24, 76, 24), Qt::AlignRight | Qt::TextDontClip,
                         month.shortName);
        return;
    }
    // Where columns are narrow the first letter must do; the chosen month's name stands beneath in full.
    const bool isNarrow = QFontMetricsF(font).horizontalAdvance(QStringLiteral("May ")) > column.width();
    painter.setFont(font);
    painter.drawText(QRectF(column.left(), top, column.width(), 24), Qt::AlignCenter | Qt::TextDontClip,
                     isNarrow ? month.shortName.left(1) : month.shortName);
}

/// The word beneath the first column ends there; where it is long the plot begins further to the right.
int DueChart::wordRoom() const {
    constexpr int axisRoom = 64; // of the numbers and the title
    const QFontMetrics metrics(fontOf(TextRole::Footnote));
    const QString word = m_calendar.months.empty() ? QString() : m_calendar.months.front().shortName;
    return std::max(0, metrics.horizontalAdvance(word) - axisRoom);
}

int DueChart::keyWidth() const {
    const QFontMetrics metrics(fontOf(TextRole::Footnote));
    int width = 0;
    for (const QString& kind : m_calendar.kinds)
        width = std::max(width, metrics.horizontalAdvance(kind) + metrics.horizontalAdvance(" 00"));
    return swatch + 4 * spaceUnit + width;
}

/// In the order of the stack, the top one first.
void DueChart::drawKey(QPainter& painter) const {
    const Palette& palette = currentPalette();
    const QRectF plot = chart()->plotArea();
    const auto kinds = static_cast<int>(m_calendar.kinds.size());
    const double line = std::min(30.0, (plot.height() + footRoom) / std::max(1, kinds));
    const double left = plot.right() + 2 * spaceUnit;
    painter.setFont(fontOf(TextRole::Footnote));
    for (int i = 0; i < kinds; ++i) {
        const int kind = kinds - 1 - i;
        const QRectF box(left, plot.top() + i * line + (line - 20) / 2, swatch, 20);
        painter.setPen(QPen(palette.ink, 1.2));
        painter.setBrush(patternOf(kind, palette.ink));
        painter.drawRect(box);
        painter.setBrush(Qt::NoBrush);
        painter.drawText(QRectF(box.right() + spaceUnit, plot.top() + i * line, 400, line),
                         Qt::AlignLeft | Qt::AlignVCenter,
                         tr("%1 %2").arg(m_calendar.kinds[kind]).arg(m_calendar.totalOf(kind)));
    }
}

void DueChart::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left:
        return setMonth(m_month - 1);
    case Qt::Key_Right:
        return setMonth(m_month + 1);
    case Qt::Key_Home:
        return setMonth(0);
    case Qt::Key_End:
        return setMonth(static_cast<int>(m_calendar.months.size()) - 1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        emit monthPressed(m_month);
        return;
    default:
        event->ignore();
    }
}

void DueChart::mousePressEvent(QMouseEvent* event) {
    for (int i = 0; i < static_cast<int>(m_calendar.months.size()); ++i)
        if (columnRect(i).contains(event->pos())) {
            setMonth(i);
            emit monthPressed(i);
            return;
        }
}

void DueChart::focusInEvent(QFocusEvent* event) {
    PlotView::focusInEvent(event);
    scene()->update();
}

void DueChart::focusOutEvent(QFocusEvent* event) {
    PlotView::focusOutEvent(event);
    scene()->update();
}

void DueChart::resizeEvent(QResizeEvent* event) {
    PlotView::resizeEvent(event);
    scene()->update();
}

} // namespace app
