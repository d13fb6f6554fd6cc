#include "app/gui/camera/label_places.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

namespace app {
namespace {

constexpr double outlineEdge = 4; ///< by which a drawn outline is larger than the tag
constexpr double labelGap = 3;    ///< between that outline and the label
constexpr double leaderFrom = 16; ///< from this distance on a line says whose the label is
constexpr int rings = 4;          ///< how many times a label may step back by its height
constexpr int rounds = 3;         ///< in which every label may make room for the others

/// What lies on one side of a line; `share` is negative on the other. Sutherland and Hodgman, "Reentrant
/// polygon clipping", 1974.
QPolygonF clipped(const QPolygonF& figure, const std::function<double(QPointF)>& share) {
    QPolygonF kept;
    for (int i = 0; i < figure.size(); ++i) {
        const QPointF from = figure[i];
        const QPointF to = figure[(i + 1) % figure.size()];
        const double a = share(from);
        const double b = share(to);
        if (a >= 0) kept << from;
        if ((a >= 0) != (b >= 0)) kept << from + (to - from) * (a / (a - b));
    }
    return kept;
}

double areaOf(const QPolygonF& figure) {
    double twice = 0;
    for (int i = 0; i < figure.size(); ++i) {
        const QPointF a = figure[i];
        const QPointF b = figure[(i + 1) % figure.size()];
        twice += a.x() * b.y() - b.x() * a.y();
    }
    return std::abs(twice) / 2;
}

QPointF nearestIn(const QRectF& box, const QPointF& point) {
    return {std::clamp(point.x(), box.left(), box.right()), std::clamp(point.y(), box.top(), box.bottom())};
}

QRectF movedInto(const QRectF& room, QRectF box) {
    box.moveLeft(std::clamp(box.left(), room.left(), std::max(room.left(), room.right() - box.width())));
    box.moveTop(std::clamp(box.top(), room.top(), std::max(room.top(), room.bottom() - box.height())));
    return box;
}

/// With the outline that is drawn around it.
QPolygonF outlined(const QPolygonF& corners) {
    const QPointF middle = corners.boundingRect().center();
    QPolygonF larger;
    for (const QPointF& corner : corners) {
        QLineF ray(middle, corner);
        ray.setLength(ray.length() + outlineEdge);
        larger << ray.p2();
    }
    return larger;
}

/// Below first, where it is looked for; then above and beside, then the same farther away.
std::vector<QRectF> candidatesOf(const LabelledTag& tag, const QRectF& room) {
    const QRectF bounds = tag.corners.boundingRect();
    const QSizeF size = tag.label;
    std::vector<QRectF> all;
    for (int ring = 0; ring < rings; ++ring) {
        const double away = labelGap + ring * size.height();
        const double middle = bounds.center().x() - size.width() / 2;
        const double below = bounds.bottom() + away;
        const double above = bounds.top() - away - size.height();
        const double right = bounds.right() + away;
        const double left = bounds.left() - away - size.width();
        const double level = bounds.center().y() - size.height() / 2;
        const double fromLeft = bounds.left();
        const double toRight = bounds.right() - size.width();
        for (const QPointF& corner :
             {QPointF(middle, below), QPointF(middle, above), QPointF(right, level), QPointF(left, level),
              QPointF(fromLeft, below), QPointF(toRight, below), QPointF(fromLeft, above),
              QPointF(toRight, above), QPointF(right, below), QPointF(left, below), QPointF(right, above),
              QPointF(left, above)})
            all.push_back(movedInto(room, QRectF(corner, size)));
    }
    return all;
}

/// What speaks against a place: what it covers weighs most, then how far away it is, then the habit of below.
double costOf(const QRectF& box, std::size_t own, std::size_t place, const std::vector<LabelledTag>& tags,
              const std::vector<QRectF>& labels) {
    double covered = 0;
    for (const LabelledTag& tag : tags)
        covered += coveredArea(box, tag.corners);
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const QRectF common = i == own ? QRectF() : box & labels[i];
        covered += common.width() * common.height();
    }
    const double share = covered / (box.width() * box.height());
    const double steps = QLineF(box.center(), tags[own].corners.boundingRect().center()).length() /
                         std::max(1.0, box.height());
    return 1000 * share + steps + 0.05 * static_cast<double>(place);
}

} // namespace

double coveredArea(const QRectF& box, const QPolygonF& figure) {
    if (!figure.boundingRect().intersects(box)) return 0;
    QPolygonF left = clipped(figure, [&](QPointF at) { return at.x() - box.left(); });
    left = clipped(left, [&](QPointF at) { return box.right() - at.x(); });
    left = clipped(left, [&](QPointF at) { return at.y() - box.top(); });
    return areaOf(clipped(left, [&](QPointF at) { return box.bottom() - at.y(); }));
}

std::vector<QRectF> labelPlaces(const std::vector<LabelledTag>& bare, const QRectF& room) {
    std::vector<LabelledTag> tags;
    for (const LabelledTag& tag : bare)
        tags.push_back({outlined(tag.corners), tag.label});
    std::vector<QRectF> labels(tags.size());
    for (int round = 0; round < rounds; ++round) {
        for (std::size_t own = 0; own < tags.size(); ++own) {
            if (tags[own].label.isEmpty()) continue;
            double least = std::numeric_limits<double>::max();
            QRectF best;
            const std::vector<QRectF> candidates = candidatesOf(tags[own], room);
            for (std::size_t place = 0; place < candidates.size(); ++place) {
                const double cost = costOf(candidates[place], own, place, tags, labels);
                if (cost >= least) continue;
                least = cost;
                best = candidates[place];
            }
            labels[own] = best;
        }
    }
    return labels;
}

QLineF leaderOf(const QRectF& label, const QPolygonF& corners) {
    const QPointF middle = corners.boundingRect().center();
    QLineF shortest;
    for (int i = 0; i < corners.size(); ++i) {
        const QPointF edge = (corners[i] + corners[(i + 1) % corners.size()]) / 2;
        for (const QPointF& end : {corners[i], edge}) {
            const QLineF line(nearestIn(label, end), end);
            if (shortest.isNull() || line.length() < shortest.length()) shortest = line;
        }
    }
    return label.contains(middle) || shortest.length() < leaderFrom ? QLineF() : shortest;
}

} // namespace app
