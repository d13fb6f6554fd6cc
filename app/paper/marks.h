#pragma once

#include <QRectF>

class QColor;
class QPainter;

namespace app {

/// The marks that go with a word, on the screen and on paper; never shown alone.
enum class Mark {
    StillToFind, ///< open ring
    Look,        ///< filled triangle
    Found,       ///< filled square
    NotAsked,    ///< short dash
};

/// Draws the mark in the middle of `box`, as large as fits. Leaves the painter as it was.
void paintMark(QPainter& painter, Mark mark, const QRectF& box, const QColor& tone);

/// The character that is most like it, for a text without pictures.
QChar characterOf(Mark mark);

} // namespace app
