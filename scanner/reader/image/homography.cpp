#include "scanner/reader/image/homography.h"

#include <cmath>
#include <utility>

namespace scanner::reader {

std::array<double, 4> derivativeAt(const Homography& h, Point at) {
    const double w = h.m[6] * at.x + h.m[7] * at.y + h.m[8];
    const Point p = h.map(at);
    return {(h.m[0] - p.x * h.m[6]) / w, (h.m[1] - p.x * h.m[7]) / w, (h.m[3] - p.y * h.m[6]) / w,
            (h.m[4] - p.y * h.m[7]) / w};
}

double modulePixelsAt(const Homography& h, Point at) {
    const auto d = derivativeAt(h, at);
    return std::sqrt(std::abs(d[0] * d[3] - d[1] * d[2]));
}

Homography operator*(const Homography& a, const Homography& b) {
    Homography product;
    for (int row = 0; row < 3; ++row)
        for (int column = 0; column < 3; ++column) {
            double sum = 0;
            for (int k = 0; k < 3; ++k)
                sum += a.m[row * 3 + k] * b.m[k * 3 + column];
            product.m[row * 3 + column] = sum;
        }
    return product;
}

std::optional<Homography> affineThrough(const std::array<Point, 3>& from, const std::array<Point, 3>& to) {
    double a[9], x[3], y[3], copy[9];
    for (int i = 0; i < 3; ++i) {
        a[i * 3] = copy[i * 3] = from[i].x;
        a[i * 3 + 1] = copy[i * 3 + 1] = from[i].y;
        a[i * 3 + 2] = copy[i * 3 + 2] = 1;
        x[i] = to[i].x;
        y[i] = to[i].y;
    }
    if (!solve(a, x, 3) || !solve(copy, y, 3)) return std::nullopt;
    return Homography{{x[0], x[1], x[2], y[0], y[1], y[2], 0, 0, 1}};
}

std::optional<Homography> projectionThrough(const Quad& from, const Quad& to) {
    double a[64]{}, b[8];
    for (int i = 0; i < 4; ++i) {
        const double u = from[i].x, v = from[i].y;
        double* forX = a + i * 16;
        double* forY = forX + 8;
        forX[0] = forY[3] = u;
        forX[1] = forY[4] = v;
        forX[2] = forY[5] = 1;
        forX[6] = -u * to[i].x;
        forX[7] = -v * to[i].x;
        forY[6] = -u * to[i].y;
        forY[7] = -v * to[i].y;
        b[i * 2] = to[i].x;
        b[i * 2 + 1] = to[i].y;
    }
    if (!solve(a, b, 8)) return std::nullopt;
    return Homography{{b[0], b[1], b[2], b[3], b[4], b[5], b[6], b[7], 1}};
}

std::optional<Homography> rectangleTo(const Quad& corners, double width, double height) {
    return projectionThrough({Point{0, 0}, Point{width, 0}, Point{width, height}, Point{0, height}}, corners);
}

Quad cornersOf(const Homography& h, double width, double height) {
    return {h.map(0, 0), h.map(width, 0), h.map(width, height), h.map(0, height)};
}

bool solve(double* a, double* b, int n) {
    for (int column = 0; column < n; ++column) {
        int pivot = column;
        for (int row = column + 1; row < n; ++row)
            if (std::abs(a[row * n + column]) > std::abs(a[pivot * n + column])) pivot = row;
        if (!(std::abs(a[pivot * n + column]) > 1e-12)) return false;
        if (pivot != column) {
            for (int k = 0; k < n; ++k)
                std::swap(a[pivot * n + k], a[column * n + k]);
            std::swap(b[pivot], b[column]);
        }
        for (int row = column + 1; row < n; ++row) {
            const double factor = a[row * n + column] / a[column * n + column];
            for (int k = column; k < n; ++k)
                a[row * n + k] -= factor * a[column * n + k];
            b[row] -= factor * b[column];
        }
    }
    for (int row = n - 1; row >= 0; --row) {
        for (int k = row + 1; k < n; ++k)
            b[row] -= a[row * n + k] * b[k];
        b[row] /= a[row * n + row];
    }
    return true;
}

} // namespace scanner::reader
