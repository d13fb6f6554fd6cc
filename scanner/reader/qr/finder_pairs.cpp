#include "scanner/reader/qr/finder_pairs.h"

#include "scanner/reader/image/correlation.h"
#include "scanner/reader/qr/qr_pattern.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace scanner::reader {
namespace {

constexpr double side = 14; // modules between finder centres of version 1

int levelAt(const ContrastMap& map, int x, int y) {
    return x >= 0 && y >= 0 && x < map.width && y < map.height ? map.row(y)[x] : 0;
}

/// The mean of two finders' shapes.
ModuleShape meanShape(const Finder& a, const Finder& b) {
    ModuleShape mean{};
    for (std::size_t i = 0; i < mean.size(); ++i)
        mean[i] = (a.shape[i] + b.shape[i]) / 2;
    return mean;
}

Point inPixels(const ModuleShape& shape, Point modules) {
    return {shape[0] * modules.x + shape[1] * modules.y, shape[2] * modules.x + shape[3] * modules.y};
}

/// A finder pattern with its light ring, drawn with axes `right` and `down` (pixels a module) and compared
/// with the map at many places.
class FinderTemplate {
public:
    FinderTemplate(const ContrastMap& map, Point right, Point down)
        : m_map(map) {
        int i = 0;
        for (int row = -reach; row <= reach; ++row)
            for (int column = -reach; column <= reach; ++column, ++i) {
                const int ring = std::max(std::abs(row), std::abs(column));
                const int x = static_cast<int>(std::lround(column * right.x + row * down.x)),
                          y = static_cast<int>(std::lround(column * right.y + row * down.y));
                m_taps[i] = {x, y, ring == 2 || ring == 4 ? 1 : -1};
                m_offsets[i] = static_cast<std::ptrdiff_t>(y) * map.width + x;
                m_wide = std::max(m_wide, std::abs(x));
                m_high = std::max(m_high, std::abs(y));
            }
    }

    double scoreAt(Point place) const {
        if (!(std::abs(place.x) < 1e6 && std::abs(place.y) < 1e6)) return 0;
        const int x = static_cast<int>(std::floor(place.x)), y = static_cast<int>(std::floor(place.y));
        Correlation<int> correlation;
        if (x >= m_wide && y >= m_high && x + m_wide < m_map.width && y + m_high < m_map.height) {
            const std::int8_t* middle = m_map.row(y) + x;
            for (int i = 0; i < count; ++i)
                correlation.add(middle[m_offsets[i]], m_taps[i].target);
        } else {
            for (const Tap& tap : m_taps)
                correlation.add(levelAt(m_map, x + tap.x, y + tap.y), tap.target);
        }
        return correlation.value(1);
    }

private:
    static constexpr int reach = 4, count = (2 * reach + 1) * (2 * reach + 1);
    struct Tap {
        int x, y, target;
    };

    const ContrastMap& m_map;
    std::array<Tap, count> m_taps{};
    std::array<std::ptrdiff_t, count> m_offsets{};
    int m_wide = 0, m_high = 0;
};

Point seekFinder(const FinderTemplate& pattern, Point expected, Point right, Point down, int sign) {
    Point best = expected;
    double bestScore = 0.2; // below this the expected place is as good
    const auto look = [&](Point from, double reach, double step) {
        for (double v = -reach; v <= reach; v += step)
            for (double u = -reach; u <= reach; u += step) {
                const Point at{from.x + u * right.x + v * down.x, from.y + u * right.y + v * down.y};
                const double score = sign * pattern.scoreAt(at) - 0.01 * std::hypot(u, v);
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
/// Nothing when the two that were found do not look like finders of a symbol that lies so.
std::optional<Homography> guessWith(const ContrastMap& map, std::array<Point, 3> places, int unknown,
                                    int sign) {
    constexpr double leastKnown = 0.3; // mean correlation of the two
    const Point right = plus(places[1], places[0], -1), down = plus(places[2], places[0], -1);
    const FinderTemplate pattern(map, {right.x / side, right.y / side}, {down.x / side, down.y / side});
    const double known =
        sign * (pattern.scoreAt(places[(unknown + 1) % 3]) + pattern.scoreAt(places[(unknown + 2) % 3]));
    if (known < 2 * leastKnown) return std::nullopt;
    places[unknown] = seekFinder(pattern, places[unknown], {right.x / side, right.y / side},
                                 {down.x / side, down.y / side}, sign);
    return affineThrough({Point{3.5, 3.5}, Point{3.5 + side, 3.5}, Point{3.5, 3.5 + side}}, places);
}

} // namespace

std::vector<PairGuess> guessFromPairs(const ContrastMap& map, const std::vector<Finder>& finders,
                                      std::size_t most, const TimeBudget& budget) {
    std::vector<PairGuess> guesses;
    const int count = static_cast<int>(finders.size());
    for (int i = 0; i < count && !budget.isSpent(); ++i)
        for (int k = i + 1; k < count; ++k) {
            const Finder& a = finders[i];
            const Finder& b = finders[k];
            if (a.negative != b.negative) continue;
            if (std::max(a.module, b.module) > 1.6 * std::min(a.module, b.module)) continue;
            const ModuleShape shape = meanShape(a, b);
            const Point between = inModules(shape, plus(b.centre, a.centre, -1));
            const double distance = std::hypot(between.x, between.y);
            const int sign = a.negative ? -1 : 1;
            const auto consider = [&](std::array<Point, 3> places, int unknown) {
                if (const auto guess = guessWith(map, places, unknown, sign)) {
                    const double correlation = correlationOnMap(map, qrPattern(1), *guess, a.negative);
                    if (correlation > 0.2) guesses.push_back({i, k, *guess, correlation, a.negative});
                }
            };
            const Point turned =
                inPixels(shape, {-between.y, between.x}); // a quarter turn from right to below
            if (std::abs(std::log(distance / side)) < 0.28) {
                consider({a.centre, b.centre, plus(a.centre, turned)}, 2);
                consider({b.centre, a.centre, plus(b.centre, turned, -1)}, 2);
                consider({a.centre, plus(a.centre, turned, -1), b.centre}, 1);
                consider({b.centre, plus(b.centre, turned), a.centre}, 1);
            } else if (std::abs(std::log(distance / (side * std::sqrt(2.0)))) < 0.28) {
                const Point middle = plus(a.centre, plus(b.centre, a.centre, -1), 0.5);
                consider({plus(middle, turned, -0.5), b.centre, a.centre}, 0);
                consider({plus(middle, turned, 0.5), a.centre, b.centre}, 0);
            }
        }
    std::stable_sort(guesses.begin(), guesses.end(),
                     [](const PairGuess& x, const PairGuess& y) { return x.correlation > y.correlation; });
    if (guesses.size() > most) guesses.resize(most);
    return guesses;
}

} // namespace scanner::reader
