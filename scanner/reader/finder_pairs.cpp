#include "scanner/reader/finder_pairs.h"

#include "scanner/reader/straight_patch.h"

#include <algorithm>
#include <cmath>

namespace scanner::reader {
namespace {

constexpr double side = 14; // modules between finder centres of version 1

float nearest(const ContrastMap& map, double x, double y) {
    if (!(x >= 0 && y >= 0 && x < map.width && y < map.height)) return 0;
    return map.row(static_cast<int>(y))[static_cast<int>(x)];
}

/// Offset in pixels of a module offset in the mean of two finders' shapes.
Point shaped(const Finder& a, const Finder& b, Point modules) {
    const auto mean = [&](int i) { return (a.shape[i] + b.shape[i]) / 2; };
    return {mean(0) * modules.x + mean(1) * modules.y, mean(2) * modules.x + mean(3) * modules.y};
}

/// How far b is from a in modules, as both shapes tell.
Point modulesBetween(const Finder& a, const Finder& b) {
    double s[4];
    for (int i = 0; i < 4; ++i)
        s[i] = (a.shape[i] + b.shape[i]) / 2;
    const double determinant = s[0] * s[3] - s[1] * s[2];
    const double dx = b.centre.x - a.centre.x, dy = b.centre.y - a.centre.y;
    return {(s[3] * dx - s[1] * dy) / determinant, (s[0] * dy - s[2] * dx) / determinant};
}

/// Correlation of a finder pattern whose axes are `right` and `down` (pixels a module) with the map at a
/// place.
double finderScore(const ContrastMap& map, Point at, Point right, Point down, float sign) {
    double n = 0, s = 0, ss = 0, t = 0, tt = 0, st = 0;
    for (int row = -4; row <= 4; ++row)
        for (int column = -4; column <= 4; ++column) {
            const int ring = std::max(std::abs(row), std::abs(column));
            const double target = ring == 2 || ring == 4 ? 1 : -1;
            const double value = sign * nearest(map, at.x + column * right.x + row * down.x,
                                                at.y + column * right.y + row * down.y);
            n += 1;
            s += value;
            ss += value * value;
            t += target;
            tt += target * target;
            st += value * target;
        }
    const double vs = ss - s * s / n, vt = tt - t * t / n;
    return vs > 1 ? (st - s * t / n) / std::sqrt(vs * vt) : 0;
}

Point seekFinder(const ContrastMap& map, Point expected, Point right, Point down, float sign) {
    Point best = expected;
    double bestScore = 0.2; // below this the expected place is as good
    const auto look = [&](Point from, double reach, double step) {
        for (double v = -reach; v <= reach; v += step)
            for (double u = -reach; u <= reach; u += step) {
                const Point at{from.x + u * right.x + v * down.x, from.y + u * right.y + v * down.y};
                const double score = finderScore(map, at, right, down, sign) - 0.01 * std::hypot(u, v);
                if (score > bestScore) {
                    bestScore = score;
                    best = at;
                }
            }
    };
    look(expected, 4, 1);
    look(best, 0.5, 0.5);
    return best;
}

Point plus(Point a, Point b, double factor = 1) {
    return {a.x + factor * b.x, a.y + factor * b.y};
}

/// Builds the guess with corner, right and below finder at given places; the unknown one is sought first.
std::optional<Homography> guessWith(const ContrastMap& map, std::array<Point, 3> places, int unknown,
                                    float sign) {
    const Point right = plus(places[1], places[0], -1), down = plus(places[2], places[0], -1);
    places[unknown] = seekFinder(map, places[unknown], {right.x / side, right.y / side},
                                 {down.x / side, down.y / side}, sign);
    return affineThrough({Point{3.5, 3.5}, Point{3.5 + side, 3.5}, Point{3.5, 3.5 + side}}, places);
}

} // namespace

double quickCorrelation(const ContrastMap& map, const GridPattern& pattern, const Homography& toPicture,
                        bool negative) {
    const float sign = negative ? -1.0f : 1.0f;
    double n = 0, s = 0, ss = 0, t = 0, tt = 0, st = 0;
    for (int row = -1; row <= pattern.rows; ++row)
        for (int column = -1; column <= pattern.columns; ++column) {
            const double target = pattern.at(column, row);
            if (target == 0) continue;
            const Point p = toPicture.map(column + 0.5, row + 0.5);
            const double value = sign * nearest(map, p.x, p.y);
            n += 1;
            s += value;
            ss += value * value;
            t += target;
            tt += target * target;
            st += value * target;
        }
    const double vs = ss - s * s / n, vt = tt - t * t / n;
    return vs > 1 ? (st - s * t / n) / std::sqrt(vs * vt) : 0;
}

std::vector<PairGuess> guessFromPairs(const ContrastMap& map, const std::vector<Finder>& finders,
                                      std::size_t most) {
    std::vector<PairGuess> guesses;
    const int count = static_cast<int>(finders.size());
    for (int i = 0; i < count; ++i)
        for (int k = i + 1; k < count; ++k) {
            const Finder& a = finders[i];
            const Finder& b = finders[k];
            if (a.negative != b.negative) continue;
            if (std::max(a.module, b.module) > 1.6 * std::min(a.module, b.module)) continue;
            const Point between = modulesBetween(a, b);
            const double distance = std::hypot(between.x, between.y);
            const float sign = a.negative ? -1.0f : 1.0f;
            const auto consider = [&](std::array<Point, 3> places, int unknown) {
                if (const auto guess = guessWith(map, places, unknown, sign)) {
                    const double correlation = quickCorrelation(map, qrPattern(1), *guess, a.negative);
                    if (correlation > 0.2) guesses.push_back({i, k, *guess, correlation, a.negative});
                }
            };
            const Point turned = shaped(a, b, {-between.y, between.x}); // a quarter turn from right to below
            if (std::abs(std::log(distance / side)) < 0.28) {
                consider({a.centre, b.centre, plus(a.centre, turned)}, 2);
                consider({b.centre, a.centre, plus(b.centre, turned, -1)}, 2);
                consider({a.centre, plus(a.centre, turned, -1), b.centre}, 1);
                consider({b.centre, plus(b.centre, turned), a.centre}, 1);
            } else if (std::abs(std::log(distance / (side * std::sqrt(2.0)))) < 0.28) {
                const Point middle = plus(a.centre, plus(b.centre, a.centre, -1), 0.5);
                consider({plus(middle, turned, -0.5), a.centre, b.centre}, 0);
                consider({plus(middle, turned, 0.5), b.centre, a.centre}, 0);
            }
        }
    std::stable_sort(guesses.begin(), guesses.end(),
                     [](const PairGuess& x, const PairGuess& y) { return x.correlation > y.correlation; });
    if (guesses.size() > most) guesses.resize(most);
    return guesses;
}

} // namespace scanner::reader
