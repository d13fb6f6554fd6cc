#pragma once

#include "scanner/seen_code.h"

#include <array>
#include <optional>

namespace scanner::reader {

/// A plane-to-plane projection. Maps symbol coordinates in modules, (0, 0) the outer corner of the first
/// module, to picture coordinates in pixels.
struct Homography {
    std::array<double, 9> m{1, 0, 0, 0, 1, 0, 0, 0, 1}; ///< row by row

    Point map(double u, double v) const {
        const double w = m[6] * u + m[7] * v + m[8];
        return {(m[0] * u + m[1] * v + m[2]) / w, (m[3] * u + m[4] * v + m[5]) / w};
    }
    Point map(Point p) const { return map(p.x, p.y); }
};

/// Derivative of the mapping at a point: {dx/du, dx/dv, dy/du, dy/dv}.
std::array<double, 4> derivativeAt(const Homography& h, Point at);

/// Pixels a module at a point, the geometric mean of both directions.
double modulePixelsAt(const Homography& h, Point at);

/// First b, then a.
Homography operator*(const Homography& a, const Homography& b);

/// Makes all lengths so many times as long.
inline Homography scaling(double times) {
    return {{times, 0, 0, 0, times, 0, 0, 0, 1}};
}

/// The affine mapping through three pairs of points; nullopt when the sources lie on a line.
std::optional<Homography> affineThrough(const std::array<Point, 3>& from, const std::array<Point, 3>& to);

/// The projection that takes `from` to `to`; nullopt when three of the points lie on a line.
std::optional<Homography> projectionThrough(const Quad& from, const Quad& to);

/// Takes the rectangle 0..width × 0..height, top left first and clockwise, to `corners`.
std::optional<Homography> rectangleTo(const Quad& corners, double width, double height);

/// Corners of the rectangle 0..width × 0..height as the mapping shows them: top left first, clockwise.
Quad cornersOf(const Homography& h, double width, double height);

/// Solves a·x = b in place by elimination with pivots, n ≤ 16, rows of `a` n apart; false when singular.
bool solve(double* a, double* b, int n);

} // namespace scanner::reader
