#pragma once

#include <QProxyStyle>

class QPainterPath;
class QRectF;

namespace app {

/// A tick as a line with a knee, for a box of that place; drawn with a pen about a seventh of its side wide.
QPainterPath tickIn(const QRectF& box);

/// Fusion with our own tick, in check boxes and before the lines of a menu that are chosen, and with a gap
/// between the focus ring and the dark ground of the usual button. In the tones of the current palette.
class WindowStyle : public QProxyStyle {
public:
    WindowStyle();

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget = nullptr) const override;
};

} // namespace app
