#include "app/gui/gear/replace/life_plot.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/text/plan_sentences.h"
#include "app/text/text.h"

#include <QAreaSeries>
#include <QChart>
#include <QLineSeries>
#include <QPainter>
#include <QValueAxis>

#include <algorithm>
#include <cmath>

namespace app {
namespace {

constexpr double daysOfYear = 365.25;

/// A curve that holds until the next step: two points for each.
void addStep(QList<QPointF>& points, double years, double share) {
    points << QPointF(years, points.isEmpty() ? 100 : points.last().y()) << QPointF(years, 100 * share);
}

/// How old the oldest is that the record knows: the curve says nothing beyond.
double yearsKnown(const core::SurvivalCurve& curve) {
    int known = 0;
    for (int step = 1 << 16; step > 0; step /= 2)
        if (curve.at(known + step)) known += step;
    return known / daysOfYear;
}

} // namespace

LifePlot::LifePlot(QWidget* parent)
    : PlotView(parent)
    , m_curve(new QLineSeries(this))
    , m_low(new QLineSeries(this))
    , m_high(new QLineSeries(this))
    , m_band(new QAreaSeries(m_high, m_low))
    , m_across(new QValueAxis(this))
    , m_up(new QValueAxis(this)) {
    setObjectName("lifePlot");
    setAccessibleName(tr("how long kit lasts here"));
    setFocusPolicy(Qt::NoFocus);
    setMinimumHeight(120);
    addOver(m_across, m_up, {m_band, m_curve});
    m_across->setTickType(QValueAxis::TicksDynamic);
    m_across->setGridLineVisible(false);
    m_up->setRange(0, 100);
    m_up->setTickCount(5);
    std::vector<Tick> shares;
    for (const int share : {0, 25, 50, 75, 100})
        shares.push_back({static_cast<double>(share), tr("%1 %").arg(share)});
    setTicksUp(std::move(shares));
    nameAxes(tr("lasting"), tr("years in service"));
}

void LifePlot::setLife(const core::KitLife& life) {
    m_life = life;
    sayNothingYet({});
    QList<QPointF> curve{{0, 100}}, low{{0, 100}}, high{{0, 100}};
    double years = 1;
    for (const core::SurvivalStep& step : life.curve.steps()) {
        years = step.days / daysOfYear;
        addStep(curve, years, step.lasting);
        addStep(low, years, step.low);
        addStep(high, years, step.high);
    }
    double most = std::max(years, yearsKnown(life.curve));
    for (const core::AllowedLife& allowed : life.allowed)
        most = std::max(most, allowed.months / 12.0);
    for (QList<QPointF>* points : {&curve, &low, &high})
        points->append({yearsKnown(life.curve), points->last().y()});
    m_curve->replace(curve);
    m_low->replace(low);
    m_high->replace(high);
    const int every = std::max(1, static_cast<int>(std::ceil(most / 12)));
    const int end = static_cast<int>(std::ceil(most + 0.25));
    m_across->setTickInterval(every);
    m_across->setRange(0, end);
    std::vector<Tick> ticks;
    for (int year = 0; year <= end; year += every)
        ticks.push_back({static_cast<double>(year), QString::number(year)});
    setTicks(std::move(ticks));
    setRoom(QMargins(0, 8, 24, 0));
    setAccessibleDescription(endingsInWords(life) + QStringLiteral("; ") + medianInWords(life));
    dressAll();
}

void LifePlot::dressSeries(const Palette& palette) {
    m_curve->setPen(QPen(palette.ink, 3.5));
    QColor tint = palette.found;
    tint.setAlphaF(0.22F);
    m_band->setBrush(tint);
    m_band->setPen(QPen(palette.found, 1, Qt::DotLine));
}

void LifePlot::drawForeground(QPainter* painter, const QRectF& rect) {
    PlotView::drawForeground(painter, rect);
    if (m_curve->count() == 0 || !nothingYet().isEmpty()) return;
    const Palette& palette = currentPalette();
    const QRectF plot = chart()->plotArea();
    painter->save();
    int line = 0;
    for (const core::AllowedLife& allowed : m_life.allowed) {
        const double x = chart()->mapToPosition({allowed.months / 12.0, 0}, m_curve).x();
        painter->setPen(QPen(palette.look, 3));
        painter->drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()));
        label(*painter, {x + 8, plot.top() + 4 + 28 * line++}, tr("rule: %1").arg(text(allowed.rule)), true);
    }
    painter->restore();
}

} // namespace app
