#include "app/gui/theme/window_style.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"

#include <QLabel>
#include <QPainter>
#include <QPainterPath>
#include <QStyleFactory>
#include <QStyleOption>

#include <algorithm>

namespace app {
namespace {

constexpr double ringWidth = 3; ///< as in the style sheet
constexpr double gapWidth = 3;

QRectF squareIn(const QRect& rect) {
    const double side = std::min(rect.width(), rect.height());
    return {QRectF(rect).center() - QPointF(side / 2, side / 2), QSizeF(side, side)};
}

void paintTick(QPainter& painter, const QRectF& box, const QColor& tone) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(tone, box.width() / 7, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawPath(tickIn(box));
}

void paintTickBox(QPainter& painter, const QRectF& box, bool isTicked, bool isEnabled) {
    const Palette& palette = currentPalette();
    const QColor& tone = isEnabled ? palette.ink : palette.quiet;
    painter.setPen(QPen(tone, 2, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.setBrush(palette.ground);
    painter.drawRect(box.adjusted(1, 1, -1, -1));
    if (isTicked) paintTick(painter, box, tone);
}

/// Within the ring, which the style sheet draws: on the button's own ground it would hardly be seen.
void paintGap(QPainter& painter, const QRectF& button) {
    const double from = ringWidth + gapWidth / 2;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(currentPalette().ground, gapWidth, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(button.adjusted(from, from, -from, -from));
    painter.restore();
}

} // namespace

QPainterPath tickIn(const QRectF& box) {
    const auto at = [&](double x, double y) {
        return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
    };
    QPainterPath tick(at(0.2, 0.5));
    tick.lineTo(at(0.42, 0.72));
    tick.lineTo(at(0.8, 0.26));
    return tick;
}

WindowStyle::WindowStyle()
    : QProxyStyle(QStyleFactory::create("Fusion")) {}

void WindowStyle::polish(QWidget* widget) {
    QProxyStyle::polish(widget);
    if (auto* label = qobject_cast<QLabel*>(widget)) label->setTextFormat(Qt::PlainText);
}

void WindowStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                                const QWidget* widget) const {
    if (element == PE_FrameFocusRect && widget && widget->property("role") == "usual")
        return paintGap(*painter, widget->rect());
    const bool isBox = element == PE_IndicatorCheckBox || element == PE_IndicatorItemViewItemCheck;
    if (!isBox && element != PE_IndicatorMenuCheckMark)
        return QProxyStyle::drawPrimitive(element, option, painter, widget);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const bool isOn = option->state & State_On;
    const bool isEnabled = option->state & State_Enabled;
    const QRectF box = squareIn(option->rect);
    const Palette& palette = currentPalette();
    if (isBox)
        paintTickBox(*painter, box, isOn, isEnabled);
    else if (isOn)
        paintTick(*painter, box,
                  option->state & State_Selected ? palette.ground
                  : isEnabled                    ? palette.ink
                                                 : palette.quiet);
    painter->restore();
}

} // namespace app
