#pragma once

#include <QList>
#include <QRectF>
#include <QString>
#include <QStringList>

class QWidget;

namespace support {

/// One run of letters as a widget paints it, in the widget's pixels.
struct PaintedText {
    QString words;
    QRectF box;  ///< of the ink
    QRectF room; ///< what of it is let through
};

/// All texts that the widget itself paints, without its children; nothing is drawn anywhere.
QList<PaintedText> textsPaintedBy(QWidget& widget);

/// What somebody in front of `root`, which is shown, would find badly laid out, each in words: a text that is
/// cut or ends in dots that are not its own, a widget that reaches out of its parent with nothing to scroll
/// by, a page that must be scrolled sideways, and two texts that stand over each other.
QStringList layoutFaultsIn(QWidget& root);

} // namespace support
