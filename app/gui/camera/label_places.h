#pragma once

#include <QLineF>
#include <QPolygonF>
#include <QRectF>
#include <QSizeF>

#include <vector>

namespace app {

/// A tag in the picture and the box of words that names it; all in one measure, pixels of the screen.
struct LabelledTag {
    QPolygonF corners; ///< convex
    QSizeF label;      ///< empty: it has none
};

/// Where each label stands: beside its tag, in the room, over as little as can be of the tags and of the
/// other labels. One box for each tag, in their order; a null one where there is no label. Pure.
std::vector<QRectF> labelPlaces(const std::vector<LabelledTag>& tags, const QRectF& room);

/// From a label to its tag where it had to move away from it; null when it stands close enough by itself.
QLineF leaderOf(const QRectF& label, const QPolygonF& corners);

/// How much of the box a convex figure covers.
double coveredArea(const QRectF& box, const QPolygonF& figure);

} // namespace app
