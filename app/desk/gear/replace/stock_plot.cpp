#include "app/desk/gear/replace/stock_plot.h"

#include "app/common/plan_sentences.h"
#include "app/common/words.h"
#include "app/desk/look/dress.h"
#include "app/desk/look/palette.h"

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

double placeOf(core::CalendarDay day) {
    return static_cast<double>(QDate(day.year(), day.month(), day.day()).startOfDay().toMSecsSinceEpoch());
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
    setMinimumHeight(120);
    chart()->addAxis(m_across, Qt::AlignBottom);
    chart()->addAxis(m_up, Qt::AlignLeft);
    for (QLineSeries* series : {m_stock, m_wanted}) {
        chart()->addSeries(series);
        series->attachAxis(m_across);
        series->attachAxis(m_up);
    }
    m_across->setFormat(QStringLiteral("MMM yyyy"));
    m_across->setTickCount(5);
    m_across->setGridLineVisible(false);
    m_up->setLabelFormat(QStringLiteral("%d"));
    m_up->setTitleText(tr("items"));
    chart()->setMargins(QMargins(0, 8, 24, 0));
}

void StockPlot::setRow(const core::ReplacementRow& row, const core::ReplacementPlan& plan) {
    m_row = row;
    m_today = plan.today;
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
    if (m_stock->count() == 0) return;
    painter->save();
    const QPointF wanted = chart()->mapToPosition(m_wanted->at(1), m_wanted);
    label(*painter, {wanted.x() - 130, wanted.y() - 26}, tr("wanted %1").arg(m_row.wanted));
    const QPointF stock = chart()->mapToPosition(m_stock->at(0), m_stock);
    label(*painter, {stock.x() + 12, stock.y() - 28}, tr("stock %1").arg(m_row.stock));
    if (m_row.firstShort) drawDay(*painter, *m_row.firstShort, shortInWords(m_row, m_today), 1, true);
    if (m_row.orderBy && !m_row.late)
        drawDay(*painter, *m_row.orderBy, tr("order by %1").arg(inWords(*m_row.orderBy)), 0, false);
    painter->restore();
}

void StockPlot::drawDay(QPainter& painter, core::CalendarDay day, const QString& words, int line,
                        bool toLook) const {
    const Palette& palette = currentPalette();
    const QRectF plot = chart()->plotArea();
    const double x =
        std::clamp(chart()->mapToPosition({placeOf(day), 0}, m_stock).x(), plot.left(), plot.right());
    painter.setPen(toLook ? QPen(palette.look, 3) : QPen(palette.ink, 2, Qt::DotLine));
    painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()));
    label(painter, {x + 8, plot.bottom() - 30 - 28 * line}, words, toLook);
}

} // namespace app
