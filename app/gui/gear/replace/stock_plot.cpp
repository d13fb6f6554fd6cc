#include "app/gui/gear/replace/stock_plot.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/text/plan_sentences.h"
#include "app/text/words.h"

#include <QChart>
#include <QDate>
#include <QDateTime>
#include <QDateTimeAxis>
#include <QLineSeries>
#include <QPainter>
#include <QValueAxis>

#include <algorithm>

namespace app {
namespace {

constexpr int monthTicks = 4; // and one at the end
constexpr int dayLine = 26;   ///< height of a day's words above the plot

double placeOf(core::CalendarDay day) {
    return static_cast<double>(QDate(day.year(), day.month(), day.day()).startOfDay().toMSecsSinceEpoch());
}

/// "Mar 2026"
QString monthInWords(core::CalendarDay day) {
    const QString words = inWords(day);
    return words.section(' ', -2, -2).left(3) + QLatin1Char(' ') + words.section(' ', -1);
}

} // namespace

StockPlot::StockPlot(QWidget* parent)
    : PlotView(parent)
    , m_stock(new QLineSeries(this))
    , m_wanted(new QLineSeries(this))
    , m_across(new QDateTimeAxis(this))
    , m_up(new QValueAxis(this)) {
    setObjectName("stockPlot");
    setAccessibleName(tr("stock and what is wanted, month by month"));
    setFocusPolicy(Qt::NoFocus);
    setMinimumHeight(160);
    addOver(m_across, m_up, {m_stock, m_wanted});
    m_across->setTickCount(monthTicks + 1);
    m_across->setGridLineVisible(false);
    nameAxes(tr("items"));
}

void StockPlot::setRow(const core::ReplacementRow& row, const core::ReplacementPlan& plan) {
    m_row = row;
    m_today = plan.today;
    sayNothingYet({});
    // Items leave at once, so the line falls in steps.
    QList<QPointF> stock;
    for (const core::ShortChance& chance : row.chances) {
        if (!stock.isEmpty()) stock << QPointF(placeOf(chance.day), stock.last().y());
        stock << QPointF(placeOf(chance.day), chance.counting);
    }
    m_stock->replace(stock);
    m_wanted->replace(QList<QPointF>{{placeOf(plan.today), static_cast<double>(row.wanted)},
                                     {placeOf(plan.end), static_cast<double>(row.wanted)}});
    m_across->setRange(QDateTime::fromMSecsSinceEpoch(static_cast<qint64>(placeOf(plan.today))),
                       QDateTime::fromMSecsSinceEpoch(static_cast<qint64>(placeOf(plan.end))));
    const int most = std::max({row.wanted, row.stock, 1});
    const int step = std::max(1, (most + 5) / 6);
    m_up->setTickType(QValueAxis::TicksDynamic);
    m_up->setTickInterval(step);
    m_up->setRange(0, (most / step + 1) * step);
    setTicksUp(ticksTo((most / step + 1) * step, step));
    std::vector<Tick> ticks;
    const int length = core::daysBetween(plan.today, plan.end);
    for (int i = 0; i <= monthTicks; ++i) {
        const core::CalendarDay day = plan.today.plusDays(length * i / monthTicks);
        ticks.push_back({placeOf(day), monthInWords(day)});
    }
    setTicks(std::move(ticks));
    setRoom(QMargins(0, 8 + dayLine * static_cast<int>(days().size()), 24, 0));
    setAccessibleDescription(
        tr("%1 in stock, %2 wanted; %3")
            .arg(row.stock)
            .arg(row.wanted)
            .arg(row.runsShort() ? shortInWords(row, plan.today) : orderInWords(row, plan)));
    dressAll();
}

void StockPlot::dressSeries(const Palette& palette) {
    m_stock->setPen(QPen(palette.ink, 3.5));
    m_wanted->setPen(QPen(palette.ink, 2, Qt::DashLine));
}

void StockPlot::drawForeground(QPainter* painter, const QRectF& rect) {
    PlotView::drawForeground(painter, rect);
    if (m_stock->count() == 0 || !nothingYet().isEmpty()) return;
    painter->save();
    const QPointF wanted = chart()->mapToPosition(m_wanted->at(1), m_wanted);
    label(*painter, {wanted.x() - 130, wanted.y() - 26}, tr("wanted %1").arg(m_row.wanted));
    const QPointF stock = chart()->mapToPosition(m_stock->at(0), m_stock);
    double stockLabel = stock.x() + 12;
    int line = 0;
    for (const Day& day : days()) {
        const double x = drawDay(*painter, day, line++);
        // The day's line would cross a label at the plot's beginning.
        if (x < stockLabel + 90) stockLabel = std::max(stockLabel, x + 8);
    }
    label(*painter, {stockLabel, stock.y() - 28}, tr("stock %1").arg(m_row.stock));
    painter->restore();
}

std::vector<StockPlot::Day> StockPlot::days() const {
    std::vector<Day> days;
    if (m_row.firstShort) days.push_back({*m_row.firstShort, shortInWords(m_row, m_today), true});
    if (m_row.orderBy && !m_row.late)
        days.push_back({*m_row.orderBy, tr("order by %1").arg(inWords(*m_row.orderBy)), false});
    return days;
}

/// A line through the plot, its words above it where no stock is drawn. Returns its place.
double StockPlot::drawDay(QPainter& painter, const Day& day, int line) const {
    const Palette& palette = currentPalette();
    const QRectF plot = chart()->plotArea();
    const double x =
        std::clamp(chart()->mapToPosition({placeOf(day.day), 0}, m_stock).x(), plot.left(), plot.right());
    const double top = plot.top() - dayLine * (line + 1);
    painter.setPen(day.toLook ? QPen(palette.look, 3) : QPen(palette.ink, 2, Qt::DotLine));
    painter.drawLine(QPointF(x, top + 4), QPointF(x, plot.bottom()));
    label(painter, {x + 8, top}, day.words, day.toLook);
    return x;
}

} // namespace app
