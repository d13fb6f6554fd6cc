#pragma once

#include <QProxyStyle>

class QPainterPath;
class QRectF;

namespace app {

/// A tick as a line with a knee, for a box of that place; drawn with a pen about a seventh of its side wide.
QPainterPath tickIn(const QRectF& box);

/// Fusion with labels of plain text, with our own tick, in check boxes and before the lines of a menu that
/// are chosen, and with a gap between the focus ring and the dark ground of the usual button. In the tones of
/// the current palette.
class WindowStyle : public QProxyStyle {
public:
    WindowStyle();

    /// Every label shows its text as it is: what looks like HTML may be the name of a boat. Qt sends each
    /// widget here before it is shown first, tool tips and message boxes too.
    void polish(QWidget* widget) override;
    using QProxyStyle::polish;

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget = nullptr) const override;
};

} // namespace app
