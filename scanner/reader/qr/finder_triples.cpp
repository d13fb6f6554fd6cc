#include "scanner/reader/qr/finder_triples.h"

#include <algorithm>
#include <cmath>

namespace scanner::reader {
namespace {

/// A neighbour as one finder sees it, in modules of its own frame.
struct Neighbour {
    int finder;
    Point at;
    double distance;
};

Point inFrameOf(const Finder& from, const Finder& to) {
    return inModules(from.shape, {to.centre.x - from.centre.x, to.centre.y - from.centre.y});
}

double lengthSeenFrom(const Finder& from, const Finder& to) {
    const Point p = inFrameOf(from, to);
    return std::hypot(p.x, p.y);
}

std::vector<Neighbour> neighboursOf(const std::vector<Finder>& finders, int corner) {
    constexpr double nearest = 9, furthest = 40;
    std::vector<Neighbour> neighbours;
    const Finder& a = finders[corner];
    for (int i = 0; i < static_cast<int>(finders.size()); ++i) {
        const Finder& b = finders[i];
        if (i == corner || b.negative != a.negative) continue;
        const double apart = std::hypot(b.centre.x - a.centre.x, b.centre.y - a.centre.y);
        if (apart > 2 * furthest * std::max(a.module, b.module)) continue;
        const Point p = inFrameOf(a, b);
        const double distance = std::hypot(p.x, p.y), back = lengthSeenFrom(b, a);
        if (distance > nearest && distance < furthest && back > nearest && back < furthest &&
            std::max(distance, back) < 1.7 * std::min(distance, back))
            neighbours.push_back({i, p, (distance + back) / 2});
    }
    return neighbours;
}

} // namespace

std::vector<FinderTriple> findTriples(const std::vector<Finder>& finders) {
    std::vector<FinderTriple> triples;
    for (int corner = 0; corner < static_cast<int>(finders.size()); ++corner) {
        const auto neighbours = neighboursOf(finders, corner);
        for (const Neighbour& right : neighbours)
            for (const Neighbour& below : neighbours) {
                const double cross = right.at.x * below.at.y - right.at.y * below.at.x;
                if (cross <= 0) continue; // the other way round, or a mirror
                const double cosine =
                    (right.at.x * below.at.x + right.at.y * below.at.y) /
                    (std::hypot(right.at.x, right.at.y) * std::hypot(below.at.x, below.at.y));
                const double stretch = std::abs(std::log(right.distance / below.distance));
                if (std::abs(cosine) > 0.5 || stretch > 0.5) continue;
                const double distance = (right.distance + below.distance) / 2;
                const double diagonal = (lengthSeenFrom(finders[right.finder], finders[below.finder]) +
                                         lengthSeenFrom(finders[below.finder], finders[right.finder])) /
                                        2;
                const double skew = std::abs(std::log(diagonal / (distance * std::sqrt(2.0))));
                if (skew > 0.5) continue;
                const double unlikelySize = std::abs(std::log(distance / 14)) * 0.3;
                triples.push_back({corner, right.finder, below.finder, distance,
                                   std::abs(cosine) + stretch + skew + unlikelySize});
            }
    }
    std::stable_sort(triples.begin(), triples.end(),
                     [](const FinderTriple& a, const FinderTriple& b) { return a.doubt < b.doubt; });
    return triples;
}

std::optional<Homography> mappingOf(const std::vector<Finder>& finders, const FinderTriple& triple,
                                    int modules) {
    const double far = modules - 3.5;
    return affineThrough(
        {Point{3.5, 3.5}, Point{far, 3.5}, Point{3.5, far}},
        {finders[triple.corner].centre, finders[triple.right].centre, finders[triple.below].centre});
}

} // namespace scanner::reader
