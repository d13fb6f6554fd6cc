#pragma once

#include "scanner/seen_code.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace scanner::reader {

/// The mean of the corners.
inline Point middleOf(const Quad& quad) {
    Point middle;
    for (const Point& p : quad)
        middle = {middle.x + p.x / 4, middle.y + p.y / 4};
    return middle;
}

/// Every corner times the factor: from the pixels of one size of a picture to those of another.
inline Quad scaled(Quad quad, double factor) {
    for (Point& p : quad)
        p = {p.x * factor, p.y * factor};
    return quad;
}

inline Quad moved(Quad quad, Point by) {
    for (Point& p : quad)
        p = {p.x + by.x, p.y + by.y};
    return quad;
}

inline double shortestSideOf(const Quad& quad) {
    double shortest = std::numeric_limits<double>::max();
    for (std::size_t i = 0; i < quad.size(); ++i) {
        const Point a = quad[i], b = quad[(i + 1) % quad.size()];
        shortest = std::min(shortest, std::hypot(b.x - a.x, b.y - a.y));
    }
    return shortest;
}

inline double areaOf(const Quad& quad) {
    double area = 0;
    for (std::size_t i = 0; i < quad.size(); ++i) {
        const Point a = quad[i], b = quad[(i + 1) % quad.size()];
        area += (a.x * b.y - b.x * a.y) / 2;
    }
    return std::abs(area);
}

/// The quadrilateral, and those of which one corner is put where the other three make a parallelogram.
inline std::array<Quad, 5> withOneCornerMoved(const Quad& quad) {
    std::array<Quad, 5> quads{quad, quad, quad, quad, quad};
    for (std::size_t i = 0; i < 4; ++i) {
        const Point a = quad[(i + 1) % 4], b = quad[(i + 3) % 4], far = quad[(i + 2) % 4];
        quads[i + 1][i] = {a.x + b.x - far.x, a.y + b.y - far.y};
    }
    return quads;
}

/// Whether the point lies in a convex quadrilateral or on its edge; the corners go either way round.
inline bool contains(const Quad& quad, Point p) {
    bool left = true, right = true;
    for (std::size_t i = 0; i < quad.size(); ++i) {
        const Point a = quad[i], b = quad[(i + 1) % quad.size()];
        const double side = (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
        left &= side >= 0;
        right &= side <= 0;
    }
    return left || right;
}

} // namespace scanner::reader
