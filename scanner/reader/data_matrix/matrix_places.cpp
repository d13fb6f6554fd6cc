#include "scanner/reader/data_matrix/matrix_places.h"

#include "scanner/reader/data_matrix/alternating_sides.h"
#include "scanner/reader/data_matrix/straight_edges.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace scanner::reader {
namespace {

/// A parallelogram over two sides, in places of the region.
struct Parallelogram {
    Quad corners;
    float score;
};

/// Columns and rows that cross, as the region shows them: the column is the left side or the right one, the
/// row the lower side or the upper one.
struct Crossing {
    const StraightEdge &column, &row;
    bool isLeft, isLow;

    Point point() const {
        double x = column.at, y = row.at;
        for (int i = 0; i < 3; ++i) {
            x = column.placeAt(y);
            y = row.placeAt(x);
        }
        return {x, y};
    }
};

/// Nothing unless the edges end where they cross, are about as long as each other, and lie so that what is
/// dark is between them.
std::optional<Parallelogram> over(const Crossing& sides) {
    constexpr double farthest = 8; // places from the end of an edge to the corner
    const auto& [column, row, isLeft, isLow] = sides;
    const Point corner = sides.point();
    const double top = isLow ? column.from : column.to, foot = isLow ? column.to : column.from;
    const double end = isLeft ? row.to : row.from, begin = isLeft ? row.from : row.to;
    if (std::abs(foot - corner.y) > farthest || std::abs(begin - corner.x) > farthest) return std::nullopt;
    const double high = std::abs(top - corner.y), wide = std::abs(end - corner.x);
    if (std::min(high, wide) < shortestEdge || std::max(high, wide) > 1.8 * std::min(high, wide))
        return std::nullopt;
    const Point up{column.placeAt(top), top}, along{end, row.placeAt(end)};
    const Point far{up.x + along.x - corner.x, up.y + along.y - corner.y};
    const float score = column.score + row.score;
    if (isLeft == isLow) return Parallelogram{{up, far, along, corner}, score};
    return Parallelogram{{along, far, up, corner}, score};
}

std::vector<Parallelogram> parallelogramsIn(const StraightRegion& region) {
    std::vector<Parallelogram> found;
    const StraightEdges columns = straightEdgesIn(region);
    if (columns.lightOnLeft.empty() && columns.lightOnRight.empty()) return found;
    const StraightEdges rows = straightEdgesIn(region.transposed());
    for (const bool isLeft : {true, false})
        for (const bool isLow : {true, false})
            for (const StraightEdge& column : isLeft ? columns.lightOnLeft : columns.lightOnRight)
                for (const StraightEdge& row : isLow ? rows.lightOnRight : rows.lightOnLeft)
                    if (const auto one = over({column, row, isLeft, isLow})) found.push_back(*one);
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.score > b.score; });
    constexpr std::size_t most = 6;
    if (found.size() > most) found.resize(most);
    return found;
}

} // namespace

std::vector<MatrixPlace> matrixPlacesIn(const PictureLevels& picture, const Quad& region, bool negative) {
    constexpr double least = 0.22; // of print that is no symbol one in ten has more
    std::vector<MatrixPlace> places;
    const auto straight = StraightRegion::of(picture, region, negative);
    if (!straight) return places;
    for (const Parallelogram& one : parallelogramsIn(*straight)) {
        const AlternatingSides sides = alternatingSides(*straight, one.corners);
        if (sides.share < least) continue;
        MatrixPlace place{{}, sides.sizes, sides.share};
        for (int i = 0; i < 4; ++i)
            place.corners[i] = straight->toPicture(one.corners[(i + sides.first) % 4]);
        places.push_back(place);
    }
    return places;
}

} // namespace scanner::reader
