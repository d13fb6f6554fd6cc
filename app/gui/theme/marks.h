#pragma once

#include <QRectF>

class QColor;
class QPainter;
class QString;

namespace app {

struct Palette;

/// The marks that go with a word, on the screen and on paper; never shown alone.
enum class Mark {
    StillToFind, ///< open ring
    Look,        ///< filled triangle
    Found,       ///< filled square
    NotAsked,    ///< short dash
};

/// The word that says the mark aloud: "still to find", "look", "found", "not asked here".
QString wordOf(Mark mark);
QColor toneOf(Mark mark, const Palette& palette);

/// Draws the mark in the middle of `box`, as large as fits. Leaves the painter as it was.
void paintMark(QPainter& painter, Mark mark, const QRectF& box, const QColor& tone);

} // namespace app
